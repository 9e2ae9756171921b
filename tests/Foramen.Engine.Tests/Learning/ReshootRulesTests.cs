using Foramen.Engine.Exposure;
using Foramen.Engine.Learning;
using Foramen.Engine.Light;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using static Foramen.Engine.Tests.Exposure.ExposureExamples;
using static Foramen.Engine.Tests.Learning.LearningExamples;

namespace Foramen.Engine.Tests.Learning;

/// <summary>The re-shoot card rule by rule, each from both sides.</summary>
public class ReshootRulesTests
{
    private static readonly MishapRates Usual = MishapRates.From([]);

    private static readonly Probability Half = Probability.FromFraction(0.5);

    private static readonly PlanBasis Basis = new()
    {
        Paper = Positive,
        Light = LightColour.Noon,
        Tones =
        [
            Exposure.ExposureExamples.Tone("doorway", Rendering.OpenShadow, 150),
            Exposure.ExposureExamples.Tone("wall", Rendering.Mid, 2000),
            Exposure.ExposureExamples.Tone("elevator", Rendering.TexturedHighlight, 8000),
        ],
        Conditions = new SheetConditions { Box = "box", Camera = "Box A", Sky = "noon" },
        Flash = FlashSetup.AtSurface(OnSheet(10_000)),
    };

    private static readonly LearnedPlan Flashed = Beliefs.From([Sheet("a", 0.4) with { Doublings = 0, SheetsInBottle = 0 }], Now).Plan(Basis);

    private static readonly LearnedPlan Plain = Beliefs.From([Sheet("a", 0.4) with { Doublings = 0, SheetsInBottle = 0 }], Now)
        .Plan(Basis with { Flash = FlashSetup.None, Tones = [Basis.Tones[1]] });

    private static readonly SheetExposure Best = Flashed.Planner.Likeliest();

    [Fact]
    public void This_scene_asks_for_a_flash() => Assert.True(Best.Flash.Seconds > 0);

    // What changes is the light the sheet counts, not the clock: by the learned law one stop.
    [Fact]
    public void The_change_is_counted_in_metered_time()
    {
        var law = Plain.Paper.Failure;
        var next = Plain.Planner.Likeliest();
        var half = new SheetExposure(Duration.FromSeconds(law.SecondsNeeded(law.MeteredSecondsFor(next.Time.Seconds) / 2)), default);
        var card = Card(Plain, half);
        Assert.Equal(1, card.Change.Value, 1e-6);
        Assert.Equal(half, card.Given);
        Assert.Equal(next, card.Next);
    }

    [Theory]
    [InlineData(0.2, true)]
    [InlineData(-0.2, true)]
    [InlineData(0.199, false)]
    [InlineData(-0.199, false)]
    [InlineData(0, false)]
    public void A_fifth_of_a_stop_is_the_least_that_is_worth_saying(double stops, bool said)
        => Assert.Equal(said, (Card(Plain, Plain.Planner.Likeliest()) with { Change = Stops.FromValue(stops) }).ChangesTime);

    // Half a stop of flash, √2 times as long, is the least that is worth saying; beginning one or leaving it out always is.
    [Theory]
    [InlineData(1, false)]
    [InlineData(1.40, false)]
    [InlineData(1.43, true)]
    [InlineData(1 / 1.40, false)]
    [InlineData(1 / 1.43, true)]
    [InlineData(0, true)]
    public void A_flash_changes_where_it_is_begun_or_given_half_a_stop_otherwise(double factor, bool changes)
        => Assert.Equal(changes, Card(Flashed, Best with { Flash = Duration.FromSeconds(Best.Flash.Seconds * factor) }).ChangesFlash);

    [Fact]
    public void A_flash_that_the_next_sheet_cannot_have_is_left_out()
    {
        var next = Plain.Planner.Likeliest();
        Assert.Equal(0, next.Flash.Seconds);
        Assert.True(Card(Plain, next with { Flash = Duration.FromSeconds(12) }).ChangesFlash);
        Assert.False(Card(Plain, next).ChangesFlash);
    }

    // The odds of the same again: with the flash where one can be given, without it where none can.
    [Fact]
    public void The_odds_unchanged_are_those_of_what_was_given_as_far_as_it_can_be_given_again()
    {
        var given = Best with { Flash = Duration.FromSeconds(Best.Flash.Seconds / 2) };
        var none = Usual.NoMishap.Fraction;
        Assert.NotEqual(Flashed.Planner.OddsFor(given), Flashed.Planner.OddsFor(given with { Flash = default }));
        Assert.Equal(Flashed.Planner.OddsFor(given).Fraction * none, Card(Flashed, given).OddsUnchanged.Fraction, 1e-12);
        Assert.Equal(Plain.Planner.OddsFor(given with { Flash = default }).Fraction * none, Card(Plain, given).OddsUnchanged.Fraction, 1e-12);
        Assert.Equal(Plain.Planner.OddsFor(given with { Flash = default }).Fraction * none, Card(Plain, given with { Flash = default }).OddsUnchanged.Fraction, 1e-12);
    }

    [Theory]
    [InlineData(null, false, false, false)]
    [InlineData(null, true, false, true)]
    [InlineData(SheetLoss.Motion, false, false, true)]
    [InlineData(SheetLoss.Motion, true, false, true)]
    [InlineData(SheetLoss.Frame, false, true, false)]
    [InlineData(SheetLoss.Process, false, false, false)]
    public void What_spoilt_a_sheet_says_whether_to_frame_anew_or_to_wait(SheetLoss? loss, bool lightChanged, bool reframe, bool wait)
    {
        var card = Card(Plain, Plain.Planner.Likeliest(), losses: loss is { } one ? [one] : [], lightChanged: lightChanged);
        Assert.Equal(reframe, card.Reframe);
        Assert.Equal(wait, card.Wait);
    }

    // h for a subject still to come, h·(1 − h) for a second try there, nothing where none is wanted; h is 0.4.
    [Theory]
    [InlineData(3, 3, 0.4)]
    [InlineData(1, 3, 0.4)]
    [InlineData(4, 3, 0.24)]
    [InlineData(4, 0, 0)]
    [InlineData(0, 0, 0)]
    public void A_sheet_is_worth_elsewhere_what_it_could_become_there(int sheets, int subjects, double worth)
        => Assert.Equal(worth, Card(Plain, Plain.Planner.Likeliest(), sheets: sheets, subjects: subjects, hitRate: Probability.FromFraction(0.4)).WorthElsewhere.Fraction, 1e-12);

    [Fact]
    public void It_is_worth_a_sheet_where_the_odds_are_better_than_elsewhere_and_not_where_they_are_the_same()
    {
        var odds = Card(Plain, Plain.Planner.Likeliest()).Odds.Total;
        Assert.InRange(odds.Fraction, 0.01, 0.99);
        Assert.True(Worth(odds.Fraction - 1e-6));
        Assert.False(Worth(odds.Fraction));
        Assert.False(Worth(odds.Fraction + 1e-6));

        bool Worth(double elsewhere) => Card(Plain, Plain.Planner.Likeliest(), sheets: 2, subjects: 2, hitRate: Probability.FromFraction(elsewhere)).IsWorthASheet;
    }

    [Fact]
    public void Without_a_sheet_or_with_a_keeper_there_is_nothing_to_try_again()
    {
        var next = Plain.Planner.Likeliest();
        Assert.True(Card(Plain, next, sheets: 1, subjects: 0).IsWorthASheet);
        Assert.False(Card(Plain, next, sheets: 0, subjects: 0).IsWorthASheet);
        Assert.False(Card(Plain, next, sheets: 1, subjects: 0, keeper: true).IsWorthASheet);
    }

    [Theory]
    [InlineData(-1, 0, "The sheets left is -1; it should be between 0 and 10000.")]
    [InlineData(10_001, 0, "The sheets left is 10001; it should be between 0 and 10000.")]
    [InlineData(0, -1, "The subjects left is -1; it should be between 0 and 10000.")]
    [InlineData(0, 10_001, "The subjects left is 10001; it should be between 0 and 10000.")]
    public void Absurd_numbers_of_sheets_and_subjects_are_refused(int sheets, int subjects, string sentence)
        => Assert.Equal(sentence, Assert.Throws<RefusalException>(() => Card(Plain, Best, sheets: sheets, subjects: subjects)).Message);

    private static ReshootAdvice Card(
        LearnedPlan plan,
        SheetExposure given,
        bool keeper = false,
        SheetLoss[]? losses = null,
        bool lightChanged = false,
        int sheets = 5,
        int subjects = 2,
        Probability? hitRate = null)
        => ReshootAdvice.For(plan, given, keeper, losses ?? [], lightChanged, Usual, sheets, subjects, hitRate ?? Half);
}
