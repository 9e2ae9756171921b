using CsCheck;
using Foramen.Engine.Light;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using static Foramen.Engine.Tests.Paper.PaperExamples;
using static Foramen.Engine.Tests.Paper.Strips.StripExamples;

namespace Foramen.Engine.Tests.Paper.Strips;

/// <summary>What is made of a fit: the box, its failure, the drawn curve.</summary>
public class StripBoxTests
{
    // A meter set to the index says t = (π/4)·K/(EI·E) for an illuminance E on the sheet; at the index's own time that must print the mid-tone, whatever was found of failure.
    [Fact]
    public void A_meter_set_to_the_index_prints_the_mid_tone_at_the_index_s_own_time() => Gen.Select(Gen.Double[0.8, 0.98], Gen.Double[0.5, 4]).Sample(
        (exponent, stops) =>
        {
            var prior = StripPrior.Usual with { FailureSpread = 0.1 };
            var (bright, dim) = (Of(Negative, 0.2, 4, 0.5, 11, exponent), Of(Negative, 0.2 * Math.Pow(2, -stops), 8, 0.5, 11, exponent));
            var fit = StripFit.Of([bright, dim], PaperKind.NegativeWorking, PaperSensitivity.BlueSensitive, prior);
            var paper = fit.ToPaper("box");
            var lux = Math.PI / 4 * 12.5 / fit.Index.Index.Value / fit.Index.At.Seconds;
            var exposure = PaperResponse.Of(paper, LightColour.Lamp).EffectiveExposure(Illuminance.FromLux(lux), 1, fit.Index.At);
            Assert.Equal(paper.Curve.MinimumDensity.Value + 0.6, paper.Curve.DensityAt(exposure).Value, 1e-6);

            // The first strip's 0.2 lx reached it at 2 lx s. What was found of failure and of the lights takes part in the index, but cannot change what the strip showed.
            Assert.Equal(1, fit.Index.Index.Value / (Math.PI / 4 * 12.5 / (0.2 * Math.Pow(10, 1 / exponent))), 0.06);
            Assert.Equal(Math.Pow(10, 1 / exponent), fit.Index.At.Seconds, 0.03 * Math.Pow(10, 1 / exponent));
        },
        iter: Samples.Of(20));

    [Fact]
    public void One_light_leaves_the_failure_and_its_spread_as_they_were_assumed()
    {
        var sure = StripPrior.Usual with { FailureSpread = 0.02 };
        var failure = StripFit.Of([Of(Negative, 0.1, 4, 0.5, 11, exponent: 0.8)], PaperKind.NegativeWorking, PaperSensitivity.BlueSensitive, sure).Failure;
        Assert.True(failure.IsAssumed);
        Assert.False(failure.HasSeveralLights);
        Assert.Equal(0.02, failure.SpreadPerDoubling);
        Assert.Equal(0.05, Fit(PaperKind.NegativeWorking, Of(Negative, 0.1, 4, 0.5, 11, exponent: 0.8)).Failure.SpreadPerDoubling);
    }

    // A table or another law is kept and corrected: where nothing was thought to fail and p is 0.9, the correction is −0.1.
    [Fact]
    public void Another_law_than_schwarzschild_s_is_corrected_by_what_two_lights_say()
    {
        var prior = StripPrior.Usual with { Failure = AdditivePowerFailure.FromExtraAtOneSecond(0), FailureSpread = 0.1 };
        Strip[] strips = [Of(Negative, 0.8, 2, 0.5, 9, lightSpread: 0.03), Of(Negative, 0.8 / 32, 2 * Math.Pow(32, 1 / 0.9), 0.5, 9, lightSpread: 0.03)];
        var failure = StripFit.Of(strips, PaperKind.NegativeWorking, PaperSensitivity.BlueSensitive, prior).Failure;
        Assert.False(failure.IsAssumed);
        Assert.Null(failure.Exponent);
        Assert.Equal(-0.1, Assert.IsType<AdjustedFailure>(failure.Law).StopsPerDoubling, 0.01);
    }

    [Fact]
    public void The_band_lies_around_the_curve_that_is_kept() => Gen.Select(Gen.Double[-0.5, 1.2], Gen.Enum<PaperKind>()).Sample(
        (x, kind) =>
        {
            StripFit With(double lightSpread) => Fit(kind, Of(kind == PaperKind.NegativeWorking ? Negative : Positive, 0.12, 4, 0.5, 11, lightSpread: lightSpread));
            var (fit, doubted) = (With(0.05), With(0.5));
            var (density, sd) = fit.BandAt(x);
            Assert.Equal(fit.Curve.DensityAtLg(x), density, 1e-9);
            Assert.InRange(sd, 1e-4, doubted.BandAt(x).Sd);
        },
        iter: Samples.Of(20));

    [Fact]
    public void Each_reading_is_listed_with_its_own_time_matches_by_eye_after_the_patches_of_their_strip()
    {
        var clean = Of(Negative, 0.1, 4, 0.5, 11);
        var judged = clean with
        {
            Times = [S(20), S(28), S(40)],
            Eye = [new EyeReading(EyeReadingKind.FirstTone, 1), new EyeReading(EyeReadingKind.Match, 2, D(0.66)), new EyeReading(EyeReadingKind.Match, 3, D(1))],
        };
        var patches = Fit(PaperKind.NegativeWorking, judged, clean).FittedPatches;
        Assert.Equal([.. clean.Patches.Select(patch => patch.Time.Seconds), 28, 40, .. clean.Patches.Select(patch => patch.Time.Seconds)], patches.Select(patch => patch.Time.Seconds));
        Assert.Equal([.. clean.Patches.Select(patch => patch.Density.Value), 0.66, 1, .. clean.Patches.Select(patch => patch.Density.Value)], patches.Select(patch => patch.Density.Value));
        Assert.Equal(14, patches.Count(patch => patch.Strip == 0));
    }
}
