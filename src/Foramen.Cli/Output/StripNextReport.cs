using Foramen.Engine.Paper;

namespace Foramen.Cli.Output;

/// <summary>The strip to make next.</summary>
/// <param name="Sentence">In words.</param>
/// <param name="FirstSeconds">First patch.</param>
/// <param name="StepStops">From patch to patch.</param>
/// <param name="Patches">How many.</param>
/// <param name="DimmerStops">How much less light than on the first strip.</param>
/// <param name="SpreadNow">Doubt now: stops, or of the exponent.</param>
/// <param name="SpreadAfter">Doubt to be expected after it.</param>
internal sealed record StripNextReport(
    string Sentence, double FirstSeconds, double StepStops, int Patches, double DimmerStops, double SpreadNow, double SpreadAfter)
{
    public static StripNextReport Of(StripAdvice advice) => new(
        advice.Describe(),
        advice.Plan.Steps[0].Total.Seconds,
        advice.Plan.Ratio.Value,
        advice.Plan.Steps.Count,
        advice.Dimmer.Value,
        advice.SpreadNow,
        advice.SpreadAfter);
}
