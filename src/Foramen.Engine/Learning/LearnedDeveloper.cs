using System.Globalization;
using Foramen.Engine.Bath;

namespace Foramen.Engine.Learning;

/// <summary>A developer after the user's own sheets have spoken. Immutable.</summary>
/// <param name="Profile">What to reckon with: learned where the data say enough, else as before.</param>
/// <param name="Parameters">Each parameter.</param>
/// <param name="FirstTones">Observations.</param>
/// <param name="Bottles">That they were made in.</param>
public sealed record LearnedDeveloper(DeveloperProfile Profile, IReadOnlyList<LearnedParameter> Parameters, int FirstTones, int Bottles)
{
    /// <summary>The learned parameter that moved furthest against its first uncertainty; null while all are assumed.</summary>
    public LearnedParameter? MovedMost => Parameters.Where(one => !one.IsAssumed).MaxBy(one => Math.Abs(one.Moved));

    /// <summary>What moved it, in one sentence.</summary>
    public string Sentence => (FirstTones, MovedMost) switch
    {
        (0, _) => "No first tone has been seen in this developer yet, so all is assumed from handbooks and common practice.",
        (_, null) => $"{Seen} too little yet, so all is still assumed from handbooks and common practice.",
        (_, var most) => string.Create(
            CultureInfo.InvariantCulture,
            $"{Seen} most of {NameOf(most.Parameter)}: {most.Value.Middle:0.0##} ({most.Value.Low:0.0##} to {most.Value.High:0.0##}) instead of {most.Before:0.0##}."),
    };

    private string Seen => string.Create(
        CultureInfo.InvariantCulture,
        $"{FirstTones} first {(FirstTones == 1 ? "tone" : "tones")} in {Bottles} {(Bottles == 1 ? "bottle" : "bottles")} {(FirstTones == 1 ? "says" : "say")}");

    private static string NameOf(DeveloperParameter parameter) => parameter switch
    {
        DeveloperParameter.AppearanceFactor => "its factor from first tone to full time",
        DeveloperParameter.Capacity => "the m² that a litre lasts for",
        DeveloperParameter.OpenLoss => "the part lost per hour in the open",
        _ => "how many times faster it is 10 °C warmer",
    };
}
