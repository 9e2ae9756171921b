using Foramen.Engine.Exposure;
using Foramen.Engine.Quantities;
using Foramen.Journal.Bodies;

namespace Foramen.Journal.Fold;

/// <summary>
/// What the light did while the hole was open, up to an instant: the input of the Engine's tally. Time is what the clock of the entries says
/// from one entry to the next; where it went back between two, that stretch counts as nothing and <see cref="ClockWentBack"/> is set, so that
/// the photographer can be asked.
/// </summary>
/// <remarks>
/// Limit: a clock set forward looks like time that passed. An entry that says "a minute ago" is put that much before its own instant, but never
/// before the opening it belongs to.
/// </remarks>
public sealed record TallyRecord
{
    private static readonly TallyRecord Nothing = new();

    /// <summary>Spans without gaps from the first opening on, oldest first; none empty. Between a closing and a new opening it is covered.</summary>
    public IReadOnlyList<TallySegment> Segments { get; private init; } = [];

    /// <summary>Whether the hole has ever been opened.</summary>
    public bool WasOpened { get; private init; }

    /// <summary>Whether the hole is open now (it may be covered).</summary>
    public bool IsOpen { get; private init; }

    /// <summary>Whether it is covered now; false when closed.</summary>
    public bool IsCovered { get; private init; }

    /// <summary>The light now, or when it was closed, against the metered light, stops.</summary>
    public double LightStops { get; private init; }

    /// <summary>Whether the clock was set back somewhere, so that the time is too short by an unknown amount.</summary>
    public bool ClockWentBack { get; private init; }

    /// <summary>Seconds from the first opening to the last closing, or to now while open.</summary>
    public double ElapsedSeconds => Segments.Count == 0 ? 0 : Segments[^1].StartSeconds + Segments[^1].Seconds;

    /// <summary>The segments for the Engine's tally.</summary>
    public IEnumerable<LightSpan> Spans => Segments.Select(segment => segment.ToSpan());

    /// <summary>The record of these events up to now.</summary>
    /// <param name="events">Events of one sheet, in the journal's order.</param>
    /// <param name="now">Now, by this device's clock; a hole that is still open counts up to it.</param>
    public static TallyRecord Of(IReadOnlyList<HoleEvent> events, DateTimeOffset now)
    {
        if (!events.Any(e => e.Kind == HoleEventKind.Opened))
        {
            return Nothing;
        }

        var moments = Timeline(events, out var clock, out var wentBack);
        if (now < events[^1].At)
        {
            wentBack = true;
        }

        clock += Math.Max(0, (now - events[^1].At).TotalSeconds);

        var segments = new List<TallySegment>();
        double? start = null;
        var from = 0.0;
        var open = false;
        var stops = 0.0;
        LightWord? word = null;
        foreach (var (moment, e) in moments)
        {
            if (start is null)
            {
                if (e.Kind != HoleEventKind.Opened)
                {
                    continue;
                }

                (start, from) = (moment, moment);
            }

            AddSegment(from, moment);
            from = moment;
            open = e.Kind != HoleEventKind.Closed && (open || e.Kind == HoleEventKind.Opened);
            if (e.Kind != HoleEventKind.Closed)
            {
                stops = e.LightStops;
                word = e.Light;
            }
        }

        if (open)
        {
            AddSegment(from, clock);
        }

        return new TallyRecord
        {
            Segments = segments,
            WasOpened = true,
            IsOpen = open,
            IsCovered = open && word == LightWord.Covered,
            LightStops = stops,
            ClockWentBack = wentBack,
        };

        void AddSegment(double begin, double end)
        {
            // Half a year with the hole open is a forgotten sheet; the Engine takes no longer times.
            var seconds = Math.Min(Duration.Max, end - begin);
            if (start is { } zero && seconds > 0)
            {
                segments.Add(new TallySegment(begin - zero, seconds, stops, !open || word == LightWord.Covered, word));
            }
        }
    }

    // Every event at its moment on one clock that never runs backwards, sorted by moment; ties keep the journal's order.
    private static IEnumerable<(double Moment, HoleEvent Event)> Timeline(IReadOnlyList<HoleEvent> events, out double clock, out bool wentBack)
    {
        var moments = new List<(double, HoleEvent)>(events.Count);
        clock = 0;
        wentBack = false;
        var opened = double.NegativeInfinity;
        var closed = double.NegativeInfinity;
        for (var i = 0; i < events.Count; i++)
        {
            var e = events[i];
            if (i > 0)
            {
                var passed = (e.At - events[i - 1].At).TotalSeconds;
                wentBack |= passed < 0;
                clock += Math.Max(0, passed);
            }

            // What is said after a closing of the light before it reaches back past the closing, but not past the opening.
            var moment = Math.Max(e.Kind == HoleEventKind.Opened ? closed : opened, clock - e.SecondsAgo);
            moments.Add((moment, e));
            opened = e.Kind == HoleEventKind.Opened ? moment : opened;
            closed = e.Kind == HoleEventKind.Closed ? moment : closed;
        }

        return moments.OrderBy(pair => pair.Item1);
    }
}
