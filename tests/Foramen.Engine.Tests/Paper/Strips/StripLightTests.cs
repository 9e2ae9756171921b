using CsCheck;
using Foramen.Engine.Light;
using Foramen.Engine.Paper;
using static Foramen.Engine.Tests.Paper.PaperExamples;
using static Foramen.Engine.Tests.Paper.Strips.StripExamples;

namespace Foramen.Engine.Tests.Paper.Strips;

/// <summary>What the light of a strip, its colour and the doubt about it do to what comes of it.</summary>
public class StripLightTests
{
    // The same strip twice, but the second time its light is said to be half of what it was. Half of the difference is found to be the error of each.
    [Fact]
    public void Lights_that_contradict_each_other_are_both_doubted_and_each_strip_lies_on_the_curve()
    {
        var right = Of(Negative, 0.1, 4, 0.5, 11, lightSpread: 0.5);
        var fit = Fit(PaperKind.NegativeWorking, right, right with { OnSheet = Lamp(0.05) });
        Assert.Equal(2 * Math.Sqrt(0.5), fit.Curve.ExposureFor(D(0.66)).LuxSeconds, 0.04);
        Assert.All(fit.FittedPatches, patch => Assert.Equal(patch.Density.Value, patch.Fitted.Value, 0.02));
        foreach (var patch in fit.FittedPatches.Where(patch => double.IsFinite(patch.LgExposure)))
        {
            Assert.Equal(fit.Curve.DensityAtLg(patch.LgExposure), patch.Fitted.Value, 1e-9);
        }

        // Whatever was said of the light, the mid-tone of 2 lx s was reached where it was.
        Assert.Equal(Math.Pow(20, 1 / 0.9), fit.Index.At.Seconds, 0.6);
        Assert.Equal(Math.PI / 4 * 12.5 / 2 / Math.Sqrt(0.5) * Math.Pow(20, -0.1 / 0.9), fit.Index.Index.Value, 0.12);
    }

    // A lux of noon light does as much as A lux of the lamp, and the meter says the same of both: the index in it is A times as high, the ISO speed the same.
    [Fact]
    public void The_same_patches_by_noon_light_give_the_same_iso_speed_and_an_index_higher_by_the_actinic_factor() => Gen.Double[0.08, 0.15].Sample(
        lux =>
        {
            var factor = Actinic.Factor(LightColour.Noon.ToSpectrum(), PaperSensitivity.BlueSensitive);
            var lamp = Of(Negative, lux, 4, 0.5, 11);
            var (one, other) = (Fit(PaperKind.NegativeWorking, lamp), Fit(PaperKind.NegativeWorking, lamp with { OnSheet = Lamp(lux / factor), Light = LightColour.Noon }));
            Assert.Equal(factor, other.Index.Index.Value / one.Index.Index.Value, 1e-4 * factor);
            Assert.Equal(one.Index.At.Seconds, other.Index.At.Seconds, 1e-3);
            Assert.Equal(1, other.Speed!.Value.Value / one.Speed!.Value.Value, 1e-4);

            // A quarter of the colours' difference is doubt of the speed; squares of standard deviations add, and t is the same for both.
            var quantile = Math.Log10(one.Index.Index.High / one.Index.Index.Value) / (one.Index.Spread.Value * Math.Log10(2));
            double Sd(Estimate estimate) => Math.Log10(estimate.High / estimate.Value) / quantile;
            Assert.InRange(Sd(one.Speed.Value), 0.1 * Math.Log10(2), 0.1);
            Assert.Equal(
                Math.Sqrt((Sd(one.Speed.Value) * Sd(one.Speed.Value)) + Math.Pow(0.25 * Math.Log10(factor), 2)), Sd(other.Speed.Value), 1e-3 * Sd(other.Speed.Value));

            // Student's t for 0.95: 1.860 at the eight degrees that the prior is worth, 1.645 at infinitely many (any table).
            Assert.InRange(quantile, 1.645, 1.860);
            Assert.Equal(quantile, Math.Log10(one.Index.Index.Value / one.Index.Index.Low) / (one.Index.Spread.Value * Math.Log10(2)), 1e-9);
        },
        iter: Samples.Of(10));

    // Doubt of the light is doubt of the index, stop for stop, and of nothing else.
    [Fact]
    public void Doubt_of_the_light_adds_to_that_of_the_index_and_leaves_contrast_alone()
    {
        var open = StripPrior.Usual with { MidLgExposure = (0.7, 1e3) };
        StripFit With(double stops) => StripFit.Of([Of(Negative, 0.1, 4, 0.5, 11, lightSpread: stops)], PaperKind.NegativeWorking, PaperSensitivity.BlueSensitive, open);
        var (known, doubted) = (With(0), With(0.5));
        Assert.Equal(Math.Sqrt(Math.Pow(known.Index.Spread.Value, 2) + 0.25), doubted.Index.Spread.Value, 1e-3);
        Assert.Equal(known.SteepestSlope.High, doubted.SteepestSlope.High, 1e-3);
        Assert.Equal(known.Range!.Value.High, doubted.Range!.Value.High, 0.1);
    }
}
