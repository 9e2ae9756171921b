using Foramen.Field.Sheets.Expose;
using Foramen.Field.Sheets.Flash;
using Foramen.Field.Sheets.Process;
using Foramen.Field.Storage;
using Foramen.Field.Time;
using Foramen.Journal.Bodies;
using Foramen.Journal.Fold;

namespace Foramen.Field.Sheets;

/// <summary>An open hole, a flash or a bath of one of the user's sheets.</summary>
/// <param name="Sheet">The sheet.</param>
/// <param name="Step">Where it is looked after: Flash, Expose or Process.</param>
/// <param name="Bath">The bath; null where it is none.</param>
/// <param name="Due">When its time is over if the light stays as it is; null while that is open: the hole is covered, nothing was planned, or the clock was set back.</param>
/// <param name="Cues">When the hands are called, before it is due.</param>
public sealed record RunningThing(Sheet Sheet, SheetStep Step, BathKind? Bath, DateTimeOffset? Due, IReadOnlyList<DateTimeOffset> Cues)
{
    /// <summary>Who left something for so long has forgotten it, and knows it from the list of sheets; it calls nobody any more.</summary>
    public static TimeSpan Forgotten { get; } = TimeSpan.FromHours(12);

    /// <summary>The address of the page that looks after it.</summary>
    public string Address => $"sheet/{Sheet.Id}/{SheetPage.StepName(Step)}";

    /// <summary>All that runs now.</summary>
    public static IReadOnlyList<RunningThing> Of(JournalSession session, Clock clock)
    {
        var now = clock.Now;
        var all = new List<RunningThing>();
        foreach (var sheet in session.Ledger.Sheets.All.Where(Running.Is))
        {
            var state = new SheetState(session, clock);
            state.Show(sheet.Id);
            if (Running.HoleIsOpen(sheet) && now - sheet.HoleEvents[^1].At < Forgotten + Forgotten)
            {
                var standing = new ExposeState(state).StandingAt(now);
                all.Add(new RunningThing(
                    sheet, SheetStep.Expose, null, standing is { ClockWentBack: false, LeftSeconds: { } left } ? now.AddSeconds(left - standing.OverSeconds) : null, []));
            }

            if (new FlashState(state).TimeAt(now) is { } flash)
            {
                all.Add(new RunningThing(sheet, SheetStep.Flash, null, DueOf(flash), []));
            }

            if (StepTime.OfBath(sheet, now) is { } bath)
            {
                var kind = sheet.Bath!.Steps[^1].Body.Step;
                all.Add(new RunningThing(
                    sheet, SheetStep.Process, kind, DueOf(bath), bath.ClockWentBack ? [] : [.. BathCues.Starts(kind, bath.PlannedSeconds).Select(seconds => bath.Since.AddSeconds(seconds))]));
            }
        }

        all.RemoveAll(thing => now - thing.Due > Forgotten);
        return all;
    }

    private static DateTimeOffset? DueOf(StepTime time) => time.ClockWentBack ? null : time.Since.AddSeconds(time.PlannedSeconds);
}
