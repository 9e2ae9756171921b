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
    private Dictionary<Ulid, KnownLesson> known = [];
    private KnownGear gear = new();

    /// <summary>The evidence; its id is the judging entry's.</summary>
    public required IReadOnlyList<Evidence> Evidence { get; init; }

    /// <summary>The sheet of each piece of evidence.</summary>
    public required IReadOnlyDictionary<string, Ulid> SheetOf { get; init; }

    /// <summary>Why a judged sheet teaches nothing of its tones.</summary>
    public required IReadOnlyList<string> LeftOut { get; init; }

    /// <summary>Every judged sheet, oldest judgement first: whether it is a keeper.</summary>
    public required IReadOnlyList<bool> Keepers { get; init; }

    /// <summary>What spoilt each judged sheet besides its tones.</summary>
    public required IReadOnlyList<IReadOnlyList<SheetLoss>> Losses { get; init; }

    /// <summary>Judged sheets whose plan stated odds.</summary>
    public required IReadOnlyList<ForecastOutcome> Outcomes { get; init; }

    /// <summary>Frames with a margin, judged: the smallest margin in percent, and whether the frame spoilt the sheet.</summary>
    public required IReadOnlyList<(double MarginPercent, bool Cut)> Frames { get; init; }

    /// <summary>How many judged sheets were worked out.</summary>
    public int Known => known.Count;

    /// <summary>Whether every judged sheet is among them; not so of <see cref="Begun"/>.</summary>
    public bool IsWhole { get; private init; }

    /// <summary>How often anything but the tones spoils a sheet.</summary>
    public MishapRates Mishaps => MishapRates.From(Losses);

    /// <summary>The aiming error.</summary>
    public AimingBelief Aiming => AimingBelief.From(Frames);

    /// <summary>What else may spoil a sheet: its own frame's margin against the aiming error where it has one, the rates otherwise.</summary>
    public MishapRates MishapsOf(Sheet sheet) => SheetLesson.MarginOf(sheet) is { } margin ? Mishaps.ForFrame(Aiming.ChanceOfCut(margin)) : Mishaps;

    /// <summary>How good the stated odds were; null where none were stated.</summary>
    public ForecastScores? Scores => ForecastScores.Of(Outcomes);

    /// <summary>The beliefs.</summary>
    /// <param name="asOf">Now; older evidence counts for less.</param>
    public Beliefs BeliefsAsOf(DateTimeOffset asOf) => Beliefs.From(Evidence, asOf);

    /// <summary>The lessons of a ledger.</summary>
    /// <param name="ledger">The ledger.</param>
    /// <param name="before">Lessons of an earlier state of it: a sheet of which nothing has changed since is not worked out again. The result is the same without.</param>
    public static LedgerLessons Of(Ledger ledger, LedgerLessons? before = null) => Begun(ledger, before, int.MaxValue);

    /// <summary>Some of the lessons of a ledger: those known before and so many more. Given as those before, the next are worked out, until they are whole.</summary>
    /// <param name="ledger">The ledger.</param>
    /// <param name="before">Lessons of it, or of an earlier state of it, whole or begun.</param>
    /// <param name="most">How many sheets to work out at most.</param>
    public static LedgerLessons Begun(Ledger ledger, LedgerLessons? before, int most)
    {
        var judged = ledger.Sheets.All
            .Where(sheet => sheet is { Withdrawn: false, Judgement: not null })
            .OrderBy(sheet => sheet.Judgement!.Order)
            .ToList();
        var evidence = new List<Evidence>(judged.Count);
        var sheetOf = new Dictionary<string, Ulid>(judged.Count, StringComparer.Ordinal);
        var leftOut = new List<string>();
        var gear = before?.gear ?? new KnownGear();
        var left = most;
        var whole = true;
        var known = new Dictionary<Ulid, KnownLesson>(judged.Count);
        foreach (var sheet in judged)
        {
            var earlier = before?.known.GetValueOrDefault(sheet.Id);
            var lesson = left > 0 || earlier is not null ? KnownLesson.Of(ledger, sheet, gear, earlier) : null;
            if (lesson is null)
            {
                whole = false;
                continue;
            }

            left -= ReferenceEquals(lesson, earlier) ? 0 : 1;
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
            Evidence = evidence.AsReadOnly(),
            SheetOf = sheetOf.AsReadOnly(),
            LeftOut = leftOut.AsReadOnly(),
            Keepers = [.. judged.Select(sheet => sheet.Judgement!.Body.Keeper)],
            Losses = [.. judged.Select(sheet => SheetLesson.LossesOf(sheet.Judgement!.Body))],
            Outcomes = [.. judged
                .Where(sheet => sheet.Plan?.Body.Odds is not null)
                .Select(sheet => new ForecastOutcome(Probability.FromFraction(sheet.Plan!.Body.Odds!.Value), sheet.Judgement!.Body.Keeper))],
            Frames = [.. judged.Select(SheetLesson.FrameOf).OfType<(double, bool)>()],
            known = known,
            gear = gear,
            IsWhole = whole,
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
