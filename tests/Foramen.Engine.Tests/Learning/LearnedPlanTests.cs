using Foramen.Engine.Exposure;
using Foramen.Engine.Learning;
using Foramen.Engine.Light;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using static Foramen.Engine.Tests.Exposure.ExposureExamples;
using static Foramen.Engine.Tests.Learning.LearningExamples;

namespace Foramen.Engine.Tests.Learning;

public class LearnedPlanTests
{
    private static PlanBasis Basis { get; } = new()
    {
        Paper = Positive,
        Light = LightColour.Noon,
        Tones = [Tone("wall", Rendering.Mid, 2200), Tone("elevator", Rendering.TexturedHighlight, 5500)],
        Conditions = new SheetConditions { Box = "box", Camera = "Box A", Sky = "noon" },
    };

    [Fact]
    public void Without_evidence_the_plan_is_the_label_s()
    {
        var learned = Beliefs.From([], Now).Plan(Basis);
        var labelled = new ExposurePlanner(Foramen.Engine.Paper.PaperResponse.Of(Positive, LightColour.Noon), Basis.Tones, Basis.Flash, Basis.Errors);
        Assert.Equal(labelled.Recommend().Exposure.Time.Seconds, learned.Planner.Recommend().Exposure.Time.Seconds, 0.01);
    }

    // Lighter than foretold by a stop on every sheet: half the exposure, t·2^(−1/p) with p = 0.9 and what was learned of it.
    [Fact]
    public void A_paper_that_comes_out_a_stop_light_gets_about_half_the_exposure()
    {
        var sheets = Enumerable.Range(0, 30).Select(i => Sheet($"{i:00}", 1) with { Doublings = 0, SheetsInBottle = 0, Tones = [LearningExamples.Tone(1, 0.3)] });
        var before = Beliefs.From([], Now).Plan(Basis).Planner.Recommend().Exposure.Time.Seconds;
        var after = Beliefs.From(sheets, Now).Plan(Basis).Planner.Recommend().Exposure.Time.Seconds;
        Assert.InRange(Math.Log2(after / before), -1.25, -0.85);
    }

    [Fact]
    public void Evidence_raises_the_odds_and_the_shares_are_shares()
    {
        var sheets = Enumerable.Range(0, 20).Select(i => Sheet($"{i:00}", 0.1) with { Doublings = 0, SheetsInBottle = 0 }).ToList();
        var (ignorant, taught) = (Odds([]), Odds(sheets));
        Assert.True(taught.Total.Fraction > ignorant.Total.Fraction + 0.1);
        Assert.Equal(1, taught.Shares.Sum(share => share.Share), 1e-9);
        Assert.True(taught.Total.Fraction <= taught.Tones.Fraction);
        Assert.Contains(taught.Shares, share => share.Part == OddsPart.Frame && share.OddsWithout > taught.Total);
        Assert.Equal(taught.Total.Fraction / (1 - taught.Mishaps.Frame.Fraction), taught.Shares.Single(share => share.Part == OddsPart.Frame).OddsWithout.Fraction, 1e-9);

        SheetOdds Odds(IReadOnlyList<Evidence> evidence)
        {
            var plan = Beliefs.From(evidence, Now).Plan(Basis);
            return SheetOdds.Of(plan.Planner.Forecast(plan.Planner.Likeliest()), MishapRates.From([]));
        }
    }

    // One sheet a stop light moves a box that was measured to a tenth of a stop hardly, one that nobody knows by much; and each is as sure as it was said to be.
    [Fact]
    public void A_box_that_is_known_well_is_moved_less()
    {
        var (known, unknown) = (Moved(0.1), Moved(1.0));
        Assert.InRange(known, -0.05, 0.1);
        Assert.True(unknown > known + 0.3);
        Assert.True(Spread(0.1) < Spread(1.0));

        static SheetConditions Box(double spread) => Basis.Conditions with { LabelSpread = Stops.FromValue(spread) };
        static double Moved(double spread) => Beliefs.From([Sheet("00", 1) with { Doublings = 0, SheetsInBottle = 0, LabelSpread = Stops.FromValue(spread) }], Now)
            .Of(new BeliefKey(BeliefKind.Speed, "box")).Mean.Value;
        static double Spread(double spread) => Beliefs.From([], Now).Plan(Basis with { Conditions = Box(spread) }).Errors.Paper.Value;
    }

    [Fact]
    public void The_likeliest_exposure_has_no_worse_odds_than_the_recommended_one()
    {
        var planner = Beliefs.From([], Now).Plan(Basis).Planner;
        var recommended = planner.Recommend();
        Assert.True(planner.OddsFor(planner.Likeliest()).Fraction >= recommended.Odds.Fraction - 1e-9);
        Assert.Equal(recommended.Odds.Fraction, planner.OddsFor(recommended.Exposure).Fraction, 1e-12);
    }

    [Fact]
    public void The_reshoot_card_takes_back_what_was_too_light()
    {
        var given = Beliefs.From([], Now).Plan(Basis).Planner.Recommend().Exposure;
        var sheet = Sheet("a", 1) with { Doublings = 0, SheetsInBottle = 0 };
        var plan = Beliefs.From([sheet], Now).Plan(Basis);
        var card = Card(plan, given, false, [SheetLoss.Frame], 5, 2);
        Assert.True(card.ChangesTime);
        Assert.InRange(card.Change.Value, -1.1, -0.3);
        Assert.True(card.Reframe);
        Assert.False(card.Wait);
        Assert.True(card.Odds.Total > card.OddsUnchanged);
        Assert.True(card.IsWorthASheet);
        Assert.False(Card(plan, given, true, [], 5, 2).IsWorthASheet);
        Assert.False(Card(plan, given, false, [], 0, 2).IsWorthASheet);
        Assert.True(Card(plan, given, false, [], 2, 2).WorthElsewhere > Card(plan, given, false, [], 3, 2).WorthElsewhere);
    }

    private static ReshootAdvice Card(LearnedPlan plan, SheetExposure given, bool keeper, SheetLoss[] losses, int sheets, int subjects)
        => ReshootAdvice.For(plan, given, keeper, losses, false, MishapRates.From([]), sheets, subjects, Probability.FromFraction(0.5));
}
