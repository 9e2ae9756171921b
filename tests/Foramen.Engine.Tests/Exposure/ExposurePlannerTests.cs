using CsCheck;
using Foramen.Engine.Exposure;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using static Foramen.Engine.Tests.Exposure.ExposureExamples;

namespace Foramen.Engine.Tests.Exposure;

public class ExposurePlannerTests
{
    private static readonly Gen<PhotographicPaper> GenPaper = Gen.Bool.Select(positive => positive ? Positive : Negative);

    [Fact]
    public void Half_the_light_takes_the_time_the_failure_law_says() => Gen.Select(GenPaper, Gen.Double[300, 6000]).Sample((paper, candelas) =>
    {
        var time = Planner(paper, [Tone("wall", Rendering.Mid, candelas)]).Recommend().Exposure.Time.Seconds;
        var dimmer = Planner(paper, [Tone("wall", Rendering.Mid, candelas / 2)]).Recommend().Exposure.Time.Seconds;
        var metered = paper.Failure.MeteredSecondsFor(time);
        Assert.Equal(paper.Failure.SecondsNeeded(2 * metered), dimmer, dimmer * 1e-4);
    });

    [Fact]
    public void A_hole_twice_as_wide_takes_a_quarter_of_the_metered_time() => Gen.Select(GenPaper, Gen.Double[300, 6000]).Sample((paper, candelas) =>
    {
        var narrow = Planner(paper, [Tone("wall", Rendering.Mid, candelas)]).Recommend().Exposure.Time.Seconds;
        var wide = Planner(paper, [Tone("wall", Rendering.Mid, candelas * 4)]).Recommend().Exposure.Time.Seconds;
        Assert.Equal(paper.Failure.MeteredSecondsFor(narrow) / 4, paper.Failure.MeteredSecondsFor(wide), narrow * 1e-4);
    });

    [Fact]
    public void A_paper_twice_as_fast_takes_half_the_metered_time() => Gen.Select(GenPaper, Gen.Double[300, 6000]).Sample((paper, candelas) =>
    {
        var tones = new[] { Tone("wall", Rendering.Mid, candelas) };
        var slow = Planner(paper, tones).Recommend().Exposure.Time.Seconds;
        var fast = Planner(paper with { Curve = paper.Curve.Faster(Stops.FromValue(1)) }, tones).Recommend().Exposure.Time.Seconds;
        Assert.Equal(paper.Failure.MeteredSecondsFor(slow) / 2, paper.Failure.MeteredSecondsFor(fast), slow * 1e-4);
    });

    [Fact]
    public void Doubling_the_flash_doubles_its_effective_exposure() => Gen.Select(GenPaper, Gen.Double[2, 40]).Sample((paper, seconds) =>
    {
        var planner = Planner(paper, [Tone("wall", Rendering.Mid, 3000)], 10000);
        var one = planner.Forecast(new SheetExposure(Duration.FromSeconds(60), Duration.FromSeconds(seconds)));
        var twice = paper.Failure.SecondsNeeded(2 * paper.Failure.MeteredSecondsFor(seconds));
        var two = planner.Forecast(new SheetExposure(Duration.FromSeconds(60), Duration.FromSeconds(twice)));
        Assert.Equal(2 * one.FlashFraction, two.FlashFraction, two.FlashFraction * 1e-9);
    });

    [Fact]
    public void More_time_never_darkens_a_positive_nor_lightens_a_negative() => Gen.Select(GenPaper, Gen.Double[10, 200], Gen.Double[1, 200]).Sample((paper, seconds, more) =>
    {
        var planner = Planner(paper, [Tone("wall", Rendering.Mid, 3000)]);
        var one = planner.Forecast(new SheetExposure(Duration.FromSeconds(seconds), default)).Tones[0].Density.Value;
        var two = planner.Forecast(new SheetExposure(Duration.FromSeconds(seconds + more), default)).Tones[0].Density.Value;
        return paper.Kind == PaperKind.DirectPositive ? two <= one : two >= one;
    });

    [Fact]
    public void Less_error_never_lowers_the_odds_of_a_single_well_placed_tone() => Gen.Select(GenPaper, Gen.Double[0.1, 0.9]).Sample((paper, part) =>
    {
        var errors = new ExposureErrors();
        var tones = new[] { Tone("wall", Rendering.Mid, 3000) };
        var odds = Planner(paper, tones, errors: errors).Recommend().Odds.Fraction;
        var better = errors with { Light = Stops.FromValue(errors.Light.Value * part), Paper = Stops.FromValue(errors.Paper.Value * part) };
        return Planner(paper, tones, errors: better).Recommend().Odds.Fraction >= odds - 0.02;
    });

    [Fact]
    public void Order_of_the_tones_does_not_matter()
    {
        PlacedTone[] tones = [Tone("a", Rendering.OpenShadow, 400), Tone("b", Rendering.Mid, 2000), Tone("c", Rendering.TexturedHighlight, 7000)];
        var forwards = Planner(Positive, tones, 10000).Recommend();
        var backwards = Planner(Positive, [.. tones.Reverse()], 10000).Recommend();
        Assert.Equal(forwards.Exposure.Time.Seconds, backwards.Exposure.Time.Seconds, 1e-6);
        Assert.Equal(forwards.Odds.Fraction, backwards.Odds.Fraction, 1e-9);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_scene_with_more_range_than_the_paper_asks_for_flash(bool positive)
    {
        var paper = positive ? Positive : Negative;
        PlacedTone[] tones = [Tone("doorway", Rendering.OpenShadow, 150), Tone("wall", Rendering.Mid, 2000), Tone("elevator", Rendering.TexturedHighlight, 8000)];
        var without = Planner(paper, tones).Recommend();
        var with = Planner(paper, tones, 10000).Recommend();
        Assert.True(with.FlashFraction > 0.2, $"flash {with.FlashFraction}");
        Assert.True(with.FlashGain > Stops.Zero);
        Assert.True(with.Odds >= without.Odds);
    }

    [Fact]
    public void A_scene_no_paper_can_hold_is_said_to_be_too_much()
    {
        PlacedTone[] tones = [Tone("doorway", Rendering.OpenShadow, 5), Tone("elevator", Rendering.TexturedHighlight, 8000)];
        Assert.Equal(ErrorSource.SceneRange, Planner(Positive, tones, 10000).Recommend().LimitedBy);
    }

    [Fact]
    public void What_may_burn_does_burn_and_costs_nothing()
    {
        PlacedTone[] tones = [Tone("wall", Rendering.Mid, 1000), Tone("sky", Rendering.MayBurn, 20000)];
        var forecast = Planner(Positive, tones).Recommend();
        Assert.Equal(ToneOutcome.Burnt, forecast.Tones[1].Outcome);
        Assert.Equal(1, forecast.Tones[1].ChanceAsWanted.Fraction);
        Assert.Equal(Planner(Positive, [tones[0]]).Recommend().Exposure.Time, forecast.Exposure.Time);
    }

    [Fact]
    public void A_bound_is_trusted_less_than_a_reading()
    {
        var exact = Tone("sky", Rendering.TexturedHighlight, 8000);
        var bound = exact with { Limit = LuminanceLimit.AtLeast };
        Assert.True(Planner(Positive, [bound]).Recommend().Odds < Planner(Positive, [exact]).Recommend().Odds);
    }

    [Fact]
    public void A_second_sheet_helps_and_is_spaced()
    {
        var planner = Planner(Positive, [Tone("wall", Rendering.Mid, 3000)]);
        var single = planner.Recommend();
        var bracket = planner.BracketAround(single);
        Assert.True(bracket.OddsOfOne > single.Odds);
        Assert.True(bracket.Spacing > Stops.Zero);
        Assert.True(bracket.First.Time < single.Exposure.Time && bracket.Second.Time > single.Exposure.Time);
    }

    [Fact]
    public void What_limits_the_odds_is_the_largest_error()
    {
        var errors = new ExposureErrors { Light = Stops.FromValue(1.2) };
        var forecast = Planner(Positive, [Tone("wall", Rendering.Mid, 3000)], errors: errors).Recommend();
        Assert.Equal(ErrorSource.Light, forecast.LimitedBy);
        Assert.Equal(1, forecast.Limits.Sum(limit => limit.Share), 1e-9);
    }

    [Fact]
    public void Nothing_to_place_is_refused()
    {
        Assert.Throws<RefusalException>(() => Planner(Positive, []));
        Assert.Throws<RefusalException>(() => Planner(Positive, [Tone("sky", Rendering.MayBurn, 9000)]));
        Assert.Throws<RefusalException>(() => Planner(Positive, [Tone("night", Rendering.Mid, 0)]));
        Assert.Throws<RefusalException>(() => Planner(Positive, [Tone("dusk", Rendering.Mid, 1e-5)]).Recommend());
        Assert.Throws<RefusalException>(() => Planner(Positive, [Tone("wall", Rendering.Mid, 3000)])
            .Forecast(new SheetExposure(Duration.FromSeconds(60), Duration.FromSeconds(5))));
    }
}
