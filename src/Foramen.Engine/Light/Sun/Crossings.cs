using Foramen.Engine.Quantities;

namespace Foramen.Engine.Light;

/// <summary>Finds where a smooth function of time crosses a level, double crossings near a peak included.</summary>
internal static class Crossings
{
    /// <summary>Two crossings in less than two such steps are found by the peak between them.</summary>
    private const double StepDays = 15.0 / 1440;

    /// <summary>Close enough: a tenth of a second.</summary>
    private const double ToleranceDays = 0.1 / 86400;

    /// <summary>Instants at which <paramref name="height"/> passes zero, in order, and whether it is rising there.</summary>
    public static List<(double At, bool Rising)> Of(Func<double, double> height, double from, double to)
    {
        var steps = Math.Max(2, (int)Math.Ceiling((to - from) / StepDays));
        var times = new List<double>(steps + 8);
        var heights = new List<double>(steps + 8);
        for (var i = 0; i <= steps; i++)
        {
            var time = from + ((to - from) * i / steps);
            times.Add(time);
            heights.Add(height(time));
        }

        AddPeaks(height, times, heights);
        var crossings = new List<(double At, bool Rising)>();
        for (var i = 1; i < times.Count; i++)
        {
            if ((heights[i - 1] < 0) != (heights[i] < 0))
            {
                crossings.Add((Bisect(height, times[i - 1], times[i]), heights[i - 1] < 0));
            }
        }

        return crossings;
    }

    private static void AddPeaks(Func<double, double> height, List<double> times, List<double> heights)
    {
        for (var i = times.Count - 2; i > 0; i--)
        {
            var (before, here, after) = (heights[i - 1], heights[i], heights[i + 1]);
            var sign = here >= before && here >= after ? 1 : here <= before && here <= after ? -1 : 0;
            if (sign == 0 || (before < 0) != (here < 0) || (after < 0) != (here < 0))
            {
                continue;
            }

            var peak = GoldenSection.Summit(time => sign * height(time), times[i - 1], times[i + 1], ToleranceDays);
            var at = peak > times[i] ? i + 1 : i;
            times.Insert(at, peak);
            heights.Insert(at, height(peak));
        }
    }

    private static double Bisect(Func<double, double> height, double from, double to)
    {
        var below = height(from) < 0;
        while (to - from > ToleranceDays)
        {
            var middle = (from + to) / 2;
            if (height(middle) < 0 == below)
            {
                from = middle;
            }
            else
            {
                to = middle;
            }
        }

        return (from + to) / 2;
    }
}
