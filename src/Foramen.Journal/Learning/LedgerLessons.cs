using System.Collections.Immutable;
using Foramen.Engine.Learning;
using Foramen.Engine.Quantities;
using Foramen.Journal.Fold;

namespace Foramen.Journal.Learning;

/// <summary>
/// What a ledger teaches: every judged sheet as evidence, what spoilt sheets, which odds were stated and what became of them. A function of the ledger alone; a
/// sheet that cannot be used is listed with the reason and changes nothing else.
/// </summary>
public sealed record LedgerLessons
{
    /// <summary>The evidence; its id is the judging entry's.</summary>
    public required ImmutableList<Evidence> Evidence { get; init; }

    /// <summary>The sheet of each piece of evidence.</summary>
    public required ImmutableDictionary<string, Ulid> SheetOf { get; init; }

    /// <summary>Why a judged sheet teaches nothing of its tones.</summary>
    public required ImmutableList<string> LeftOut { get; init; }

    /// <summary>Every judged sheet, oldest judgement first: whether it is a keeper.</summary>
    public required ImmutableList<bool> Keepers { get; init; }

    /// <summary>What spoilt each judged sheet besides its tones.</summary>
    public required ImmutableList<IReadOnlyList<SheetLoss>> Losses { get; init; }

    /// <summary>Judged sheets whose plan stated odds.</summary>
    public required ImmutableList<ForecastOutcome> Outcomes { get; init; }

    /// <summary>Frames with a margin, judged: the smallest margin in percent, and whether the frame spoilt the sheet.</summary>
    public required ImmutableList<(double MarginPercent, bool Cut)> Frames { get; init; }

    /// <summary>How often anything but the tones spoils a sheet.</summary>
    public MishapRates Mishaps => MishapRates.From(Losses);

    /// <summary>The aiming error.</summary>
    public AimingBelief Aiming => AimingBelief.From(Frames);

    /// <summary>How good the stated odds were; null where none were stated.</summary>
    public ForecastScores? Scores => ForecastScores.Of(Outcomes);

    /// <summary>The beliefs.</summary>
    /// <param name="asOf">Now; older evidence counts for less.</param>
    public Beliefs BeliefsAsOf(DateTimeOffset asOf) => Beliefs.From(Evidence, asOf);

    /// <summary>The lessons of a ledger.</summary>
    public static LedgerLessons Of(Ledger ledger)
    {
        var judged = ledger.Sheets.All
            .Where(sheet => sheet is { Withdrawn: false, Judgement: not null })
            .OrderBy(sheet => sheet.Judgement!.Order)
            .ToList();
        var evidence = ImmutableList.CreateBuilder<Evidence>();
        var sheetOf = ImmutableDictionary.CreateBuilder<string, Ulid>();
        var leftOut = ImmutableList.CreateBuilder<string>();
        foreach (var sheet in judged)
        {
            try
            {
                var lesson = SheetLesson.Of(ledger, sheet);
                evidence.Add(lesson);
                sheetOf[lesson.Id] = sheet.Id;
            }
            catch (RefusalException refusal)
            {
                leftOut.Add($"{sheet.Started?.Body.Name ?? "A sheet without a name"}: {refusal.Message}");
            }
        }

        return new LedgerLessons
        {
            Evidence = evidence.ToImmutable(),
            SheetOf = sheetOf.ToImmutable(),
            LeftOut = leftOut.ToImmutable(),
            Keepers = [.. judged.Select(sheet => sheet.Judgement!.Body.Keeper)],
            Losses = [.. judged.Select(sheet => SheetLesson.LossesOf(sheet.Judgement!.Body))],
            Outcomes = [.. judged
                .Where(sheet => sheet.Plan?.Body.Odds is not null)
                .Select(sheet => new ForecastOutcome(Probability.FromFraction(sheet.Plan!.Body.Odds!.Value), sheet.Judgement!.Body.Keeper))],
            Frames = [.. judged.Select(SheetLesson.FrameOf).OfType<(double, bool)>()],
        };
    }
}
