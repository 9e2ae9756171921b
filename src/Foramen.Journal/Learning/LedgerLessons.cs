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
    private ImmutableDictionary<Ulid, KnownLesson> known = ImmutableDictionary<Ulid, KnownLesson>.Empty;

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
    /// <param name="ledger">The ledger.</param>
    /// <param name="before">Lessons of an earlier state of it: a sheet of which nothing has changed since is not worked out again. The result is the same without.</param>
    public static LedgerLessons Of(Ledger ledger, LedgerLessons? before = null)
    {
        var judged = ledger.Sheets.All
            .Where(sheet => sheet is { Withdrawn: false, Judgement: not null })
            .OrderBy(sheet => sheet.Judgement!.Order)
            .ToList();
        var evidence = ImmutableList.CreateBuilder<Evidence>();
        var sheetOf = ImmutableDictionary.CreateBuilder<string, Ulid>();
        var leftOut = ImmutableList.CreateBuilder<string>();
        var gear = new KnownGear();
        var known = ImmutableDictionary.CreateBuilder<Ulid, KnownLesson>();
        foreach (var sheet in judged)
        {
            var lesson = KnownLesson.Of(ledger, sheet, gear, before?.known.GetValueOrDefault(sheet.Id));
            known[sheet.Id] = lesson;
            if (lesson.Evidence is { } teaches)
            {
                evidence.Add(teaches);
                sheetOf[teaches.Id] = sheet.Id;
            }
            else
            {
                leftOut.Add($"{sheet.Started?.Body.Name ?? "A sheet without a name"}: {lesson.Refusal}");
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
            known = known.ToImmutable(),
        };
    }

    /// <summary>What a sheet taught, and all that it was worked out from.</summary>
    private sealed record KnownLesson(Sheet Sheet, object? Paper, object? Camera, double ProcessedBefore, Evidence? Evidence, string? Refusal)
    {
        public static KnownLesson Of(Ledger ledger, Sheet sheet, KnownGear gear, KnownLesson? before)
        {
            var started = sheet.Started?.Body;
            object? paper = started?.Paper is { } box ? ledger.Papers.Find(box) : null;
            object? camera = started?.Camera is { } which ? ledger.Cameras.Find(which) : null;
            var processed = SheetLesson.ProcessedBefore(ledger, sheet);
            if (before is not null && ReferenceEquals(before.Sheet, sheet) && ReferenceEquals(before.Paper, paper) && ReferenceEquals(before.Camera, camera) && before.ProcessedBefore == processed)
            {
                return before;
            }

            try
            {
                return new KnownLesson(sheet, paper, camera, processed, SheetLesson.Of(ledger, sheet, gear), null);
            }
            catch (RefusalException refusal)
            {
                return new KnownLesson(sheet, paper, camera, processed, null, refusal.Message);
            }
        }
    }
}
