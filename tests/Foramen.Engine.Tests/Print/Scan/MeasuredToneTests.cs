using CsCheck;
using Foramen.Engine.Exposure;
using Foramen.Engine.Paper;
using Foramen.Engine.Print;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;

namespace Foramen.Engine.Tests.Print.Scan;

public class MeasuredToneTests
{
    private static readonly Gen<CharacteristicCurve> AnyCurve = Gen.Select(Gen.Bool, Gen.Double[0, 0.1], Gen.Double[1.4, 2], Gen.Double[80, 160]).Select(
        (negative, min, net, range) => (CharacteristicCurve)LogisticCurve.FromRange(
            negative ? PaperKind.NegativeWorking : PaperKind.DirectPositive, Density.FromValue(min), Density.FromValue(min + net), range,
            Density.FromValue(min + 0.6), LuminousExposure.FromLuxSeconds(2)));

    private static readonly Gen<Rendering> Wanted = Gen.Int[0, 2].Select(i => (Rendering)i);

    [Fact]
    public void Light_that_is_so_many_stops_off_the_aim_is_told_as_so_many() => Gen.Select(AnyCurve, Wanted, Gen.Double[-0.6, 0.6]).Sample((curve, wanted, stops) =>
    {
        var aim = RenderingBand.On(curve, wanted).Aim!.Value.LuxSeconds;
        var density = curve.DensityAt(LuminousExposure.FromLuxSeconds(aim * Math.Pow(2, stops)));
        var net = (density.Value - curve.MinimumDensity.Value) / curve.NetDensity;
        var tone = MeasuredTone.Of(curve, wanted, density);
        Assert.Equal(density, tone.Density);
        if (net > 0.04 / curve.NetDensity && net < 0.9)
        {
            Assert.Equal(stops, tone.FromAim!.Value.Value, 1e-6);
        }
    });

    // The subject's light, not the sheet's density, names the outcome: a negative gets darker with it, a direct positive lighter.
    [Fact]
    public void Within_the_band_it_is_as_wanted_and_beyond_it_too_dark_or_too_light() => Gen.Select(AnyCurve, Wanted, Gen.Double[0.05, 0.95]).Sample((curve, wanted, part) =>
    {
        var density = Density.FromValue(curve.MinimumDensity.Value + 0.041 + (part * ((0.9 * curve.NetDensity) - 0.042)));
        var band = RenderingBand.On(curve, wanted);
        var exposure = curve.ExposureFor(density).LuxSeconds;
        var expected = exposure < band.Low.LuxSeconds ? ToneOutcome.TooDark : exposure > band.High!.Value.LuxSeconds ? ToneOutcome.TooLight : ToneOutcome.AsWanted;
        Assert.Equal(expected, MeasuredTone.Of(curve, wanted, density).Outcome);
    });

    [Fact]
    public void What_the_paper_cannot_tell_is_burnt_or_blocked_by_its_kind() => Gen.Select(AnyCurve, Wanted, Gen.Double[0.001, 1]).Sample((curve, wanted, part) =>
    {
        var light = Density.FromValue(curve.MinimumDensity.Value + (0.04 * (1 - part)));
        var dark = Density.FromValue(curve.MinimumDensity.Value + (curve.NetDensity * (0.9 + (0.1 * part))));
        var isNegative = curve.Kind == PaperKind.NegativeWorking;
        Assert.Equal(isNegative ? ToneOutcome.Blocked : ToneOutcome.Burnt, MeasuredTone.Of(curve, wanted, light).Outcome);
        Assert.Equal(isNegative ? ToneOutcome.Burnt : ToneOutcome.Blocked, MeasuredTone.Of(curve, wanted, dark).Outcome);

        // By how much at least: as if it were at the end of what the paper tells.
        var end = MeasuredTone.Of(curve, wanted, Density.FromValue(curve.MinimumDensity.Value + 0.04)).FromAim!.Value.Value;
        Assert.Equal(end, MeasuredTone.Of(curve, wanted, light).FromAim!.Value.Value, 1e-6);
    });

    [Theory]
    [InlineData(Rendering.MayBurn)]
    [InlineData(Rendering.MayBlock)]
    public void A_tone_that_may_be_anything_is_always_as_wanted(Rendering wanted) => AnyCurve.Sample(curve =>
    {
        foreach (var part in new[] { 0.001, 0.5, 0.99 })
        {
            var tone = MeasuredTone.Of(curve, wanted, Density.FromValue(curve.MinimumDensity.Value + (part * curve.NetDensity)));
            Assert.Equal(ToneOutcome.AsWanted, tone.Outcome);
            Assert.Null(tone.FromAim);
            Assert.Null(tone.FromAimSd);
        }
    });

    // How much the answer moves when the density is off by its doubt: by the difference of two answers.
    [Fact]
    public void The_doubt_is_what_the_densitys_doubt_makes_of_it() => Gen.Select(AnyCurve, Gen.Double[0.1, 0.8]).Sample((curve, part) =>
    {
        const double Little = 1e-4;
        var density = curve.MinimumDensity.Value + (part * curve.NetDensity);
        double FromAim(double value) => MeasuredTone.Of(curve, Rendering.Mid, Density.FromValue(value)).FromAim!.Value.Value;
        var stopsForADensity = Math.Abs(FromAim(density + Little) - FromAim(density - Little)) / (2 * Little);
        var tone = MeasuredTone.Of(curve, Rendering.Mid, Density.FromValue(density));
        Assert.Equal(stopsForADensity * tone.DensitySd, tone.FromAimSd!.Value.Value, 1e-3);
    });

    [Fact]
    public void Where_the_curve_is_all_but_flat_the_doubt_is_three_stops_at_most()
    {
        var soft = LogisticCurve.FromRange(
            PaperKind.NegativeWorking, Density.FromValue(0.06), Density.FromValue(0.5), 250, Density.FromValue(0.3), LuminousExposure.FromLuxSeconds(2));
        Assert.Equal(3, MeasuredTone.Of(soft, Rendering.TexturedHighlight, Density.FromValue(4)).FromAimSd!.Value.Value, 1e-9);
    }

    // 0.02 and 3 % of itself, as independent errors add: at 0.5 √(0.0004 + 0.000225) = 0.025.
    [Fact]
    public void A_scans_density_is_doubted_by_two_hundredths_and_three_in_a_hundred()
    {
        Assert.Equal(0.025, MeasuredTone.SdOf(Density.FromValue(0.5)), 1e-12);
        Assert.Equal(0.02, MeasuredTone.SdOf(Density.FromValue(0)), 1e-12);
    }
}
