using Foramen.Engine.Exposure;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using Foramen.Journal.Fold;
using Foramen.Journal.Kit;

namespace Foramen.Journal.Motions;

/// <summary>The moving regions of a sheet for the Engine: as they are expected to move, and as they did by what was touched during the exposure.</summary>
/// <remarks>Limit: where a device's clock was set back during the exposure, touches after that lie wrong by as much.</remarks>
public static class SheetMotions
{
    /// <summary>Where and how.</summary>
    /// <exception cref="RefusalException">A region that cannot be worked with.</exception>
    public static IReadOnlyList<MovingRegion> Regions(Sheet sheet) => [.. sheet.Motions.Select(motion => motion.Body.Definition.ToRegion())];

    /// <summary>When, as expected; in the order of <see cref="Regions"/>.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="exposure">The planned exposure, more than nothing.</param>
    /// <exception cref="RefusalException">One that stops before it begins.</exception>
    public static IReadOnlyList<MotionCourse> Expected(Sheet sheet, Duration exposure)
        => [.. sheet.Motions.Select(motion => motion.Body.Definition.Expected(exposure))];

    /// <summary>When, as it went: by the touches where there are any, and otherwise as expected; in the order of <see cref="Regions"/>.</summary>
    /// <param name="sheet">A sheet whose hole was opened.</param>
    /// <param name="failure">The paper's law, which says what light was worth when.</param>
    /// <param name="planned">The planned time at the metered light.</param>
    /// <param name="now">Now; what is still open counts up to it.</param>
    /// <exception cref="RefusalException">No light fell on the sheet.</exception>
    public static IReadOnlyList<MotionCourse> AsItWent(Sheet sheet, FailureLaw failure, Duration planned, DateTimeOffset now)
    {
        var record = sheet.TallyAt(now);
        var tally = ExposureTally.For(failure, planned);
        var opened = sheet.HoleEvents.Find(one => one.Kind == HoleEventKind.Opened) is { } opening ? opening.At.AddSeconds(-opening.SecondsAgo) : now;
        return
        [
            .. sheet.Motions.Select(motion => Touches(sheet, motion.Body.Motion, opened) is { Count: > 0 } touches && record.Segments.Count > 0
                ? MotionCourse.Of(record.Segments.SelectMany(segment => Spells(segment, touches, tally)))
                : motion.Body.Definition.Expected(Duration.FromSeconds(Math.Max(0.01, record.ElapsedSeconds)))),
        ];
    }

    /// <summary>Whether a region moves at an instant, by the touches; as if from the start where there are none.</summary>
    public static bool MovesAt(Sheet sheet, Ulid motion, DateTimeOffset now)
    {
        var touches = Touches(sheet, motion, now);
        return touches.Count == 0
            ? sheet.Motions.Find(one => one.Body.Motion == motion)?.Body.Definition.MovesFrom is not > 0
            : Moves(touches, 0);
    }

    // Seconds after an instant, and what it did from then on.
    private static List<(double Seconds, bool Moves)> Touches(Sheet sheet, Ulid motion, DateTimeOffset since) =>
    [
        .. sheet.MotionTouches
            .Where(touch => touch.Motion == motion)
            .Select(touch => ((touch.Happened - since).TotalSeconds, touch.Started))
            .OrderBy(touch => touch.TotalSeconds),
    ];

    // Before the first touch it did the opposite.
    private static bool Moves(List<(double Seconds, bool Moves)> touches, double at)
        => touches.FindLastIndex(touch => touch.Seconds <= at) is >= 0 and var last ? touches[last].Moves : !touches[0].Moves;

    private static IEnumerable<MotionSpell> Spells(TallySegment segment, List<(double Seconds, bool Moves)> touches, ExposureTally tally)
    {
        var (from, end) = (segment.StartSeconds, segment.StartSeconds + segment.Seconds);
        var worth = segment.Covered ? 0 : 1 / tally.FullTimeAt(Stops.FromValue(Math.Clamp(segment.LightStops, -20, 20))).Seconds;
        MotionSpell Spell(double begin, double stop) => new(Duration.FromSeconds(stop - begin), worth * (stop - begin), Moves(touches, begin));
        foreach (var (seconds, _) in touches.Where(touch => touch.Seconds > segment.StartSeconds && touch.Seconds < segment.StartSeconds + segment.Seconds))
        {
            yield return Spell(from, seconds);
            from = seconds;
        }

        yield return Spell(from, end);
    }
}
