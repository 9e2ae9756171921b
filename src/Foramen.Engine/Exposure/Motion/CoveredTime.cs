using Foramen.Engine.Paper;
using Foramen.Engine.Scene;

namespace Foramen.Engine.Exposure;

/// <summary>
/// What a time is worth for a point that is covered for part of it. Coverings shorter than a second are averaged as light, for the emulsion cannot tell them from an even
/// light (J. H. Webb, JOSA 23, 157, 1933); longer ones add as progress ∫ dt/T(I) by the paper's failure law, as in the tally. Where to draw the line is an assumption.
/// </summary>
internal static class CoveredTime
{
    public const double FastSeconds = 1;

    /// <summary>Metered seconds of the bare background's light that the point gets in a time by the clock.</summary>
    public static double MeteredSeconds(FailureLaw law, double seconds, Covering covering)
        => MeteredSeconds(law, seconds, covering.Share, covering.LuminanceRatio, covering.AtATime.Seconds < FastSeconds);

    public static double MeteredSeconds(FailureLaw law, double seconds, double share, double ratio, bool fast)
    {
        var bare = law.MeteredSecondsFor(seconds);
        if (fast)
        {
            return bare * (1 + (share * (ratio - 1)));
        }

        if (ratio <= 0)
        {
            return law.MeteredSecondsFor((1 - share) * seconds);
        }

        // The worth r is where ∫ dt/T(I) = 1, with T for the background needing r and for what covers it r/ratio.
        double Progress(double worth) => ((1 - share) * seconds / law.SecondsNeeded(worth)) + (share * seconds / law.SecondsNeeded(worth / ratio));
        var (low, high) = (Math.Min(1, ratio) * bare, Math.Max(1, ratio) * bare);
        for (var i = 0; i < 60 && high - low > 1e-12 * high; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = Progress(middle) > 1 ? (middle, high) : (low, middle);
        }

        return (low + high) / 2;
    }
}
