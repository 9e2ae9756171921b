namespace Foramen.Journal.Fold;

/// <summary>What is under way on a sheet and must not be disturbed.</summary>
public static class Running
{
    /// <summary>Whether anything is under way on any sheet.</summary>
    public static bool Any(Ledger ledger) => ledger.Sheets.All.Any(Is);

    /// <summary>Whether the hole is open, or a flash or a bath is under way.</summary>
    public static bool Is(Sheet sheet) => !sheet.Withdrawn && (HoleIsOpen(sheet) || FlashIsOn(sheet) || BathIsOn(sheet));

    /// <summary>Whether the hole is open (it may be covered).</summary>
    public static bool HoleIsOpen(Sheet sheet) => !sheet.HoleEvents.IsEmpty && sheet.HoleEvents[^1].Kind != HoleEventKind.Closed;

    /// <summary>Whether a flash has begun and not ended.</summary>
    public static bool FlashIsOn(Sheet sheet) => !sheet.Flashes.IsEmpty && sheet.Flashes[^1].Running;

    /// <summary>Whether the sheet is in a bath.</summary>
    public static bool BathIsOn(Sheet sheet) => sheet.Bath is { Finished: null, Steps.IsEmpty: false };
}
