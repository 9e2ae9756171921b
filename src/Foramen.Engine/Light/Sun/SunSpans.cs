using Foramen.Engine.Quantities;

namespace Foramen.Engine.Light;

/// <summary>
/// Finds the spans in which something that depends on where the sun stands is so: coarse steps, peaks and dips between them looked into, bounds to a
/// tenth of a second. Nights are leapt over: the sun's elevation changes by no more than 15.1° in an hour.
/// </summary>
public static class SunSpans
{
    private const double FastestDegreesPerDay = 15.1 * 24;

    private const double ToleranceDays = 0.1 / 86400;

    /// <summary>The spans in order of time, cut at both ends of the search.</summary>
    /// <param name="from">Beginning of the search; its offset is given to all spans.</param>
    /// <param name="to">End of the search, up to 400 days later.</param>
    /// <param name="place">The observer.</param>
    /// <param name="height">Zero or more while it is so, less than zero while not; as smooth as it can be. It must be below zero whenever the sun's true elevation is below <paramref name="lowest"/>.</param>
    /// <param name="lowest">Elevation below which it is never so.</param>
    /// <param name="step">Coarse step, 1 to 60 minutes; 15 minutes if left out. Spans and gaps shorter than that are found where <paramref name="height"/> is smooth.</param>
    /// <exception cref="RefusalException">Outside 1950 to 2050, the wrong way round, or too long.</exception>
    public static IReadOnlyList<LightWindow> Find(
        DateTimeOffset from, DateTimeOffset to, GeographicPosition place, Func<SkyPosition, double> height, Angle lowest, TimeSpan? step = null)
    {
        Guard.Within((to - from).TotalDays, 0, 400, "the span of time", "days");
        var coarse = Guard.Within((step ?? TimeSpan.FromMinutes(15)).TotalMinutes, 1, 60, "the step", "min") / 1440;
        var track = SunTrack.Over(from, to);
        var observer = new Observer(place);
        var air = Atmosphere.At(place);
        var start = AstronomicalTime.From(from).DaysUniversal;
        var length = (to - from).TotalDays;
        double At(double days) => height(track.Sight(observer, start + days).Seen(air));

        var (times, heights) = Sample(track, observer, air, start, length, coarse, height, lowest.Degrees);
        var spans = new List<LightWindow>();
        double? since = heights[0] >= 0 ? 0 : null;
        for (var i = 1; i < times.Count; i++)
        {
            if (heights[i - 1] < 0 != heights[i] < 0)
            {
                var bound = Bound(At, times[i - 1], heights[i - 1], times[i], heights[i]);
                if (since is { } begun)
                {
                    spans.Add(Span(begun, bound));
                    since = null;
                }
                else
                {
                    since = bound;
                }
            }
        }

        if (since is { } open && length > open)
        {
            spans.Add(Span(open, length));
        }

        return spans;

        LightWindow Span(double begun, double ended) => new(from + TimeSpan.FromDays(begun), from + TimeSpan.FromDays(ended));
    }

    private static (List<double> Times, List<double> Heights) Sample(
        SunTrack track, Observer observer, Atmosphere air, double start, double length, double coarse, Func<SkyPosition, double> height, double lowest)
    {
        var times = new List<double>((int)(length / coarse) + 2);
        var heights = new List<double>(times.Capacity);
        double At(double days) => height(track.Sight(observer, start + days).Seen(air));
        for (var time = 0.0; ;)
        {
            var sight = track.Sight(observer, start + time);
            var under = lowest - sight.TrueElevationDegrees;
            times.Add(time);
            heights.Add(under > 0 ? -1 - under : height(sight.Seen(air)));
            AddTurn(At, times, heights);

            // Told this way round, for a height that is no number ends it too.
            if (!(time < length))
            {
                return (times, heights);
            }

            time = Math.Min(length, time + Math.Max(coarse, under / FastestDegreesPerDay));
        }
    }

    /// <summary>Where the last three heights have one sign and turn in the middle, the turn itself is put between them if it has the other sign.</summary>
    private static void AddTurn(Func<double, double> height, List<double> times, List<double> heights)
    {
        var last = times.Count - 1;
        if (last < 2)
        {
            return;
        }

        var (before, here, after) = (heights[last - 2], heights[last - 1], heights[last]);
        if (before < 0 != here < 0 || after < 0 != here < 0)
        {
            return;
        }

        var sign = here < 0 ? 1 : -1;
        if (sign * here < sign * before || sign * here < sign * after)
        {
            return;
        }

        // Between the samples a tent rises above the middle one by no more than half of how far its neighbours fall off, a smooth hill by a quarter of that.
        if ((sign * here) + (0.75 * sign * ((2 * here) - before - after)) < 0)
        {
            return;
        }

        var (a, b) = (times[last - 2], times[last]);
        var (c, d) = (a + (GoldenSection.Share * (b - a)), b - (GoldenSection.Share * (b - a)));
        var (atC, atD) = (sign * height(c), sign * height(d));
        for (var i = 0; i < 16 && atC < 0 && atD < 0; i++)
        {
            if (atC > atD)
            {
                (b, d, atD) = (d, c, atC);
                c = a + (GoldenSection.Share * (b - a));
                atC = sign * height(c);
            }
            else
            {
                (a, c, atC) = (c, d, atD);
                d = b - (GoldenSection.Share * (b - a));
                atD = sign * height(d);
            }
        }

        var (turn, value) = atC > atD ? (c, atC) : (d, atD);
        if (value >= 0)
        {
            var at = turn > times[last - 1] ? last : last - 1;
            times.Insert(at, turn);
            heights.Insert(at, sign * value);
        }
    }

    /// <summary>The Illinois form of false position (M. Dowell and P. Jarratt, BIT 11, 168, 1971), with a halving after each two steps that gained little.</summary>
    private static double Bound(Func<double, double> height, double from, double atFrom, double to, double atTo)
    {
        var below = atFrom < 0;
        for (var step = 1; to - from > ToleranceDays; step++)
        {
            var share = step % 3 == 0 || atTo == atFrom ? 0.5 : Math.Clamp(atFrom / (atFrom - atTo), 0, 1);

            // A little towards the other end, so that the bound is closed in on from both sides.
            var inward = ToleranceDays / 2;
            var middle = Math.Clamp(from + (share * (to - from)), from + inward, to - inward);
            var value = height(middle);
            if (value < 0 == below)
            {
                (from, atFrom, atTo) = (middle, value, atTo / 2);
            }
            else
            {
                (to, atTo, atFrom) = (middle, value, atFrom / 2);
            }
        }

        return (from + to) / 2;
    }
}
