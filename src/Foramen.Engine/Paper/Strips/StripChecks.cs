using Foramen.Engine.Light;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Paper;

/// <summary>What strips cannot tell is refused, with the strip that would tell it.</summary>
internal static class StripChecks
{
    /// <summary>How far beyond its patches a strip may speak, lg exposure (an assumption: half a stop).</summary>
    public const double Extrapolation = 0.15;

    private const double NoChange = 0.15;
    private const double WidestStops = 1.0;

    public static void Before(StripRows rows, PaperKind kind)
    {
        var lit = rows.Patches.Where(row => double.IsFinite(row.LgExposure)).ToList();
        if (lit.Count < 3 && rows.Seen.Count + lit.Count < 3)
        {
            throw new RefusalException(
                $"The strip has {lit.Count} exposed {(lit.Count == 1 ? "patch" : "patches")} with a reading; give at least 3 densities, or the first tone, the last tone and a match by eye.");
        }

        if (lit.Count < 3)
        {
            return;
        }

        var meanX = lit.Average(row => row.LgExposure);
        var darkens = lit.Sum(row => (row.LgExposure - meanX) * row.Density) > 0;
        if (lit.Max(row => row.Density) - lit.Min(row => row.Density) > 2 * NoChange && darkens != (kind == PaperKind.NegativeWorking))
        {
            throw new RefusalException(
                kind == PaperKind.NegativeWorking
                    ? "The patches get lighter with more light, which negative-working paper does not do; either it is direct-positive paper or the steps are listed in reverse order."
                    : "The patches get darker with more light, which direct-positive paper does not do; either it is negative-working paper or the steps are listed in reverse order.");
        }
    }

    public static void After(StripPosterior posterior, IReadOnlyList<Strip> strips, PaperSensitivity sensitivity)
    {
        if (Complaint(posterior, strips) is { } complaint)
        {
            var advice = StripAdvice.From(posterior, strips, sensitivity, StripGoal.Curve);
            throw new RefusalException($"{complaint} {advice.Describe()}");
        }
    }

    private static string? Complaint(StripPosterior posterior, IReadOnlyList<Strip> strips)
    {
        var rows = posterior.Rows;
        var lit = rows.Patches.Where(row => double.IsFinite(row.LgExposure)).ToList();
        var disbelieved = posterior.Weights.Count(weight => weight < 0.4);
        if (lit.Count >= 4 && (disbelieved * 3 > posterior.Weights.Count || TurnsBack(lit)))
        {
            return "The densities do not follow the order of the steps, so some are out of order or misread.";
        }

        var negative = posterior.Kind == PaperKind.NegativeWorking;
        if (rows.Seen.Count == 0 && lit.Max(row => row.Density) - lit.Min(row => row.Density) < NoChange)
        {
            var dark = lit.Average(row => row.Density) > Math.Exp(posterior.Prior.LnMinimumDensity.Mean) + (0.4 * Math.Exp(posterior.Prior.LnNetDensity.Mean));
            return dark == negative
                ? "All patches look alike, as after far too much light."
                : "All patches look alike, as after far too little light.";
        }

        if (rows.Seen.Count == 0 && lit.Count(row => IsBetween(posterior.Shape, row.Density)) < 2)
        {
            return "The strip goes from one end of the paper to the other between two patches, so it shows neither speed nor contrast.";
        }

        var (least, most) = rows.Exposures;
        var mid = StripIndex.LgMidTone(posterior.Shape);
        if (mid < least - Extrapolation || mid > most + Extrapolation)
        {
            return mid > most
                ? "No patch got enough light for a mid-tone, so the speed cannot be told."
                : "Every patch got more light than a mid-tone needs, so the speed cannot be told.";
        }

        var (_, sd) = posterior.Propagate(free => StripIndex.LgMidTone(posterior.ShapeAt(free)));
        var light = strips.Min(strip => strip.LightSpread.Value);
        var own = Math.Sqrt(Math.Max(0, Math.Pow(sd / Math.Log10(2), 2) - (light * light)));
        return 1.645 * own > WidestStops
            ? FormattableString.Invariant($"The patches leave the speed open by ± {1.645 * own:0.0} stops, too much to be of use.")
            : null;
    }

    private static bool IsBetween(CurveShape shape, double density)
    {
        var share = (density - shape.Min) / shape.Net;
        return share is > 0.04 and < 0.96;
    }

    // A bad patch makes one step against the order, beyond its spread; where more than a third of the steps are, the list is in disorder.
    private static bool TurnsBack(List<PatchRow> lit)
    {
        var (against, steps) = (0, 0);
        foreach (var strip in lit.GroupBy(row => row.Strip))
        {
            var ordered = strip.OrderBy(row => row.LgExposure).ToList();
            var up = Math.Sign(ordered[^1].Density - ordered[0].Density);
            for (var i = 1; i < ordered.Count; i++)
            {
                var spread = Math.Sqrt((ordered[i].Spread * ordered[i].Spread) + (ordered[i - 1].Spread * ordered[i - 1].Spread));
                steps++;
                against += up * (ordered[i].Density - ordered[i - 1].Density) < -3 * spread ? 1 : 0;
            }
        }

        return against >= 2 && against * 3 > steps;
    }
}
