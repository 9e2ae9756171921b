using Foramen.Engine.Learning;
using Foramen.Field.Components;
using Foramen.Journal;
using Foramen.Journal.Fold;
using Foramen.Journal.Learning;

namespace Foramen.Field.Learning;

/// <summary>One sheet that moved an expectation.</summary>
/// <param name="Sheet">The sheet.</param>
/// <param name="Name">Its name.</param>
/// <param name="MovedStops">How much lighter a sheet is expected because of it.</param>
/// <param name="Believed">How far it was believed, 0 to 1.</param>
public sealed record LessonLine(Ulid Sheet, string Name, double MovedStops, double Believed)
{
    // A twentieth of a stop is nothing that anyone would want explained.
    private const double WorthSaying = 0.05;

    /// <summary>The sheets that moved the expectation under these conditions most.</summary>
    /// <param name="ledger">The ledger.</param>
    /// <param name="lessons">What it teaches.</param>
    /// <param name="beliefs">What is believed after it.</param>
    /// <param name="conditions">What bears on the sheet at hand.</param>
    /// <param name="doublings">Doublings of its time from the one the label's speed was found at.</param>
    public static IReadOnlyList<LessonLine> Of(Ledger ledger, LedgerLessons lessons, Beliefs beliefs, SheetConditions conditions, double doublings)
        => [.. beliefs.Why(conditions, doublings)
            .Where(one => Math.Abs(one.Moved.Value) >= WorthSaying)
            .Select(one => (Influence: one, Sheet: lessons.SheetOf.TryGetValue(one.Evidence.Id, out var id) ? ledger.Sheets.Find(id) : null))
            .Where(pair => pair.Sheet is not null)
            .Select(pair => new LessonLine(pair.Sheet!.Id, SheetSummary.NameOf(ledger, pair.Sheet), pair.Influence.Moved.Value, pair.Influence.Weight))];
}
