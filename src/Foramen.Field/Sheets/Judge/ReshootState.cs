using Foramen.Engine.Exposure;
using Foramen.Engine.Learning;
using Foramen.Engine.Quantities;
using Foramen.Field.Learning;
using Foramen.Journal.Bodies;
using Foramen.Journal.Learning;

namespace Foramen.Field.Sheets.Judge;

/// <summary>What a judged sheet taught, and what to do with the next one in the same light.</summary>
public sealed class ReshootState
{
    private readonly LearnedPlan plan;
    private readonly Lessons lessons;
    private readonly Bag bag;
    private readonly PrintJudged judgement;
    private readonly SheetExposure given;
    private readonly MishapRates mishaps;

    // As much work as all that the journal teaches, and asked for by few.
    private readonly Lazy<(double, double)> before;

    private ReshootState(LearnedPlan plan, SheetExposure given, PrintJudged judgement, MishapRates mishaps, Lazy<(double, double)> before, Lessons lessons, Bag bag)
    {
        this.before = before;
        this.mishaps = mishaps;
        this.plan = plan;
        this.given = given;
        this.judgement = judgement;
        this.lessons = lessons;
        this.bag = bag;
        Advice = Ask();
    }

    /// <summary>The advice, with what is said to be left.</summary>
    public ReshootAdvice Advice { get; private set; }

    /// <summary>How much lighter than by the label such a sheet was expected before this one, stops.</summary>
    public (double Mean, double Spread) Before => before.Value;

    /// <summary>How much lighter it is expected now, stops.</summary>
    public (double Mean, double Spread) After { get; private init; }

    /// <summary>The sheets that moved it most.</summary>
    public IReadOnlyList<LessonLine> Why { get; private init; } = [];

    /// <summary>The card of a judged sheet.</summary>
    /// <returns>Null where the sheet says nothing of its exposure: no tone, no camera, no plan.</returns>
    public static ReshootState? Of(SheetState state, Lessons lessons, Bag bag)
    {
        if (state.Sheet is not { Judgement: { } judged } sheet)
        {
            return null;
        }

        try
        {
            var ledger = state.Session.Ledger;
            var basis = SheetLesson.BasisOf(ledger, sheet);
            var given = SheetLesson.GivenExposure(sheet, basis);
            var doublings = basis.Paper.DoublingsTo(given.Time);
            var after = lessons.Beliefs;
            var before = new Lazy<(double, double)>(() => Pair(after.Without(judged.Order.Id.ToString()).Expect(basis.Conditions, doublings)));
            return new ReshootState(after.Plan(basis), given, judged.Body, lessons.All.MishapsOf(sheet), before, lessons, bag)
            {
                After = Pair(after.Expect(basis.Conditions, doublings)),
                Why = LessonLine.Of(ledger, lessons.All, after, basis.Conditions, doublings),
            };
        }
        catch (RefusalException)
        {
            // The Ledger says of each judged sheet why it teaches nothing; here the plain correction of the time is shown instead.
            return null;
        }

        static (double, double) Pair((Stops Mean, Stops Spread) expected) => (expected.Mean.Value, expected.Spread.Value);
    }

    /// <summary>Says what is left, and asks again.</summary>
    public void Say(int? sheetsLeft, int subjectsLeft)
    {
        bag.SheetsLeft = sheetsLeft;
        bag.SubjectsLeft = subjectsLeft;
        Advice = Ask();
    }

    private ReshootAdvice Ask() => ReshootAdvice.For(
        plan,
        given,
        judgement.Keeper,
        SheetLesson.LossesOf(judgement),
        judgement.Causes?.Contains(MishapCause.Light) ?? false,
        mishaps,
        bag.SheetsLeft ?? 0,
        bag.SubjectsLeft,
        Probability.FromFraction(lessons.HitRate));
}
