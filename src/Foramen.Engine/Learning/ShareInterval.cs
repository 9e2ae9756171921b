using Foramen.Engine.Quantities;

namespace Foramen.Engine.Learning;

/// <summary>An interval for a share that was counted.</summary>
/// <param name="Low">Lower end.</param>
/// <param name="High">Upper end.</param>
public readonly record struct ShareInterval(Probability Low, Probability High)
{
    private const double NinetyFivePercent = 1.959963984540054;

    /// <summary>The score interval at 95 % (E. B. Wilson, J. Am. Stat. Assoc. 22, 209, 1927): sensible for few sheets too.</summary>
    /// <param name="hits">How many, 0 or more.</param>
    /// <param name="of">Of how many, at least 1.</param>
    public static ShareInterval Wilson(int hits, int of)
    {
        Guard.Within(of, 1, int.MaxValue, "the number of sheets");
        Guard.Within(hits, 0, of, "the number of keepers");
        var (share, z2) = (hits / (double)of, NinetyFivePercent * NinetyFivePercent);
        var middle = (share + (z2 / (2 * of))) / (1 + (z2 / of));
        var half = NinetyFivePercent / (1 + (z2 / of)) * Math.Sqrt((share * (1 - share) / of) + (z2 / (4.0 * of * of)));
        return new ShareInterval(
            Probability.FromFraction(Math.Max(0, middle - half)), Probability.FromFraction(Math.Min(1, middle + half)));
    }
}
