using Foramen.Field.Texts;
using Foramen.Journal;
using Foramen.Journal.Bodies;
using Foramen.Journal.Fold;

namespace Foramen.Field.Components;

/// <summary>What a card says of a sheet.</summary>
/// <param name="Id">The sheet.</param>
/// <param name="Name">Its name, or its number.</param>
/// <param name="Gear">Camera and paper.</param>
/// <param name="State">What is next, or how it came out.</param>
/// <param name="StepAddress">The step to go on with, as in an address.</param>
/// <param name="PictureHash">The picture to show.</param>
/// <param name="Upright">Whether the picture stands.</param>
/// <param name="IsRunning">Whether something is under way.</param>
public sealed record SheetSummary(
    Ulid Id, string Name, string Gear, string State, string StepAddress, string? PictureHash, bool Upright, bool IsRunning)
{
    /// <summary>The summary of a sheet of a ledger.</summary>
    public static SheetSummary Of(Ledger ledger, Sheet sheet)
    {
        var step = sheet.Step;
        var gear = string.Join(" · ", new[] { ledger.CameraOf(sheet)?.Body.Name, ledger.PaperOf(sheet)?.Body.Name }.Where(name => name is not null));
        var state = Running.Is(sheet) ? $"{Words.Steps.Name(step)}: {Words.Sheets.Running.ToLowerInvariant()}"
            : sheet.Judgement is { } judged ? judged.Body.Keeper ? Words.Sheets.Keeper : Words.Sheets.NotKept
            : Words.Steps.Next(step);
        return new SheetSummary(
            sheet.Id,
            NameOf(ledger, sheet),
            gear,
            state,
            Words.Steps.Name(step == SheetStep.Done ? SheetStep.Judge : step).ToLowerInvariant(),
            sheet.PictureHash,
            sheet.Frame?.Body.Orientation == SheetOrientation.Upright,
            Running.Is(sheet));
    }

    /// <summary>A sheet's name, or its number among all sheets.</summary>
    public static string NameOf(Ledger ledger, Sheet sheet)
        => sheet.Started?.Body.Name is { Length: > 0 } name
            ? name
            : sheet.IsAnothers ? Words.Sheets.Another
            : Words.Sheets.Numbered(ledger.NumberOf(sheet.Id));
}
