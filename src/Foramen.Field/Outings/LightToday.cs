using Foramen.Engine.Exposure;
using Foramen.Engine.Quantities;
using Foramen.Journal.Fold;

namespace Foramen.Field.Outings;

/// <summary>What today's tallies saw of sun and cloud.</summary>
public static class LightToday
{
    // Less than this against the metered light counts as cloud, stops; thin cloud is about one.
    private const double CloudStops = -0.75;

    /// <summary>Spans of sun and cloud that ended while a hole was open today; the last of each tally has no known end and is left out.</summary>
    /// <param name="ledger">The ledger.</param>
    /// <param name="now">Now.</param>
    /// <param name="sunNow">Whether the sun is out.</param>
    /// <param name="nowFor">How long that has lasted.</param>
    public static LightSoFar Of(Ledger ledger, DateTimeOffset now, bool sunNow, Duration nowFor)
    {
        var (suns, clouds) = (new List<Duration>(), new List<Duration>());
        foreach (var sheet in ledger.Sheets.All.Where(sheet => !sheet.Withdrawn && sheet.HoleEvents.Any(e => e.At.ToOffset(now.Offset).Date == now.Date)))
        {
            var spans = Spans(sheet.TallyAt(now).Segments);
            foreach (var (sun, seconds) in spans.SkipLast(1))
            {
                (sun ? suns : clouds).Add(Duration.FromSeconds(seconds));
            }
        }

        return new LightSoFar(suns, clouds, sunNow, nowFor);
    }

    private static List<(bool Sun, double Seconds)> Spans(IReadOnlyList<TallySegment> segments)
    {
        var spans = new List<(bool Sun, double Seconds)>();
        foreach (var segment in segments.Where(segment => !segment.Covered && segment.Seconds > 0))
        {
            var sun = segment.LightStops > CloudStops;
            if (spans.Count > 0 && spans[^1].Sun == sun)
            {
                spans[^1] = (sun, spans[^1].Seconds + segment.Seconds);
            }
            else
            {
                spans.Add((sun, segment.Seconds));
            }
        }

        return spans;
    }
}
