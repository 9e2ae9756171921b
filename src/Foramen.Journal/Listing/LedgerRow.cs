using Foramen.Engine.Light;
using Foramen.Engine.Quantities;
using Foramen.Journal.Bodies;
using Foramen.Journal.Fold;
using Foramen.Journal.Learning;

namespace Foramen.Journal.Listing;

/// <summary>A sheet as one line of the ledger: what was planned, what was done, how it came out. What was never written down is null.</summary>
public sealed record LedgerRow
{
    /// <summary>The sheet.</summary>
    public required Ulid Sheet { get; init; }

    /// <summary>Its number among all sheets, from 1.</summary>
    public required int Number { get; init; }

    /// <summary>What it is called.</summary>
    public string? Name { get; init; }

    /// <summary>When it was loaded, in local time.</summary>
    public DateTimeOffset? LoadedAt { get; init; }

    /// <summary>The outing.</summary>
    public string? Outing { get; init; }

    /// <summary>The place of the sheet, or else of its outing.</summary>
    public string? Place { get; init; }

    /// <summary>The camera.</summary>
    public string? Camera { get; init; }

    /// <summary>The box of paper.</summary>
    public string? Paper { get; init; }

    /// <summary>The kind of light its tones were read in.</summary>
    public string? Light { get; init; }

    /// <summary>Time planned, s.</summary>
    public double? PlannedSeconds { get; init; }

    /// <summary>Flash planned, s.</summary>
    public double? FlashSeconds { get; init; }

    /// <summary>Odds of a keeper in the plan, 0 to 1.</summary>
    public double? Odds { get; init; }

    /// <summary>Time the hole was open, s.</summary>
    public double? OpenSeconds { get; init; }

    /// <summary>Whether it is a keeper.</summary>
    public bool? Keeper { get; init; }

    /// <summary>How much lighter than wanted it came out, mean over its judged tones, stops.</summary>
    public double? LighterByStops { get; init; }

    /// <summary>What went wrong.</summary>
    public IReadOnlyList<MishapCause> Causes { get; init; } = [];

    /// <summary>What was noted of the judgement, or of the sheet.</summary>
    public string? Note { get; init; }

    /// <summary>All sheets of a ledger that were not withdrawn and are not somebody else's, oldest first.</summary>
    public static IReadOnlyList<LedgerRow> All(Ledger ledger)
        => [.. ledger.Sheets.All.Where(sheet => !sheet.IsAnothers).Select((sheet, index) => (sheet, index)).Where(pair => !pair.sheet.Withdrawn).Select(pair => Of(ledger, pair.sheet, pair.index + 1))];

    /// <summary>One sheet of a ledger.</summary>
    public static LedgerRow Of(Ledger ledger, Sheet sheet) => Of(ledger, sheet, ledger.NumberOf(sheet.Id));

    private static LedgerRow Of(Ledger ledger, Sheet sheet, int number)
    {
        var started = sheet.Started?.Body;
        var outing = started?.Outing is { } id ? ledger.Outings.Find(id)?.Started?.Body : null;
        var judged = sheet.Judgement?.Body;
        return new LedgerRow
        {
            Sheet = sheet.Id,
            Number = number,
            Name = started?.Name,
            LoadedAt = sheet.Started?.At,
            Outing = outing?.Name,
            Place = (started?.Place ?? outing?.Place) is { } place ? ledger.Places.Find(place)?.Body.Name : null,
            Camera = ledger.CameraOf(sheet)?.Body.Name,
            Paper = ledger.PaperOf(sheet)?.Body.Name,
            Light = SheetLesson.KelvinOf(sheet) is >= 1500 and <= 25_000 and var kelvin ? SheetLesson.SkyOf(LightColour.FromTemperature(ColourTemperature.FromKelvin(kelvin))) : null,
            PlannedSeconds = sheet.Plan?.Body.ExposureSeconds,
            FlashSeconds = sheet.Plan?.Body.FlashSeconds,
            Odds = sheet.Plan?.Body.Odds,
            OpenSeconds = sheet.HoleEvents.IsEmpty || sheet.HoleEvents[^1].Kind != HoleEventKind.Closed ? null : sheet.TallyAt(sheet.HoleEvents[^1].At).ElapsedSeconds,
            Keeper = judged?.Keeper,
            LighterByStops = judged?.Tones is { Count: > 0 } tones ? tones.Average(tone => tone.LighterByStops) : null,
            Causes = judged?.Causes ?? [],
            Note = judged?.Note ?? started?.Note,
        };
    }
}
