using Foramen.Engine.Exposure;
using Foramen.Engine.Learning;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using static Foramen.Engine.Tests.Exposure.ExposureExamples;

namespace Foramen.Engine.Tests.Learning;

public class JudgedTonesTests
{
    private static readonly PlacedTone Wall = Tone("wall", Rendering.Mid, 2200, 0.4);

    private static readonly ToneLanding Landed = new(Wall, Stops.FromValue(0.3), 0.25);

    // ADR 0004: a mid-tone of a positive may lie between 0.18 and 0.60 of the net density; so many stops from the aim the curve is there.
    [Fact]
    public void The_band_of_a_tone_goes_with_it_in_stops_from_its_aim()
    {
        var evidence = JudgedTones.ToEvidence(Positive, Landed, Stops.FromValue(1.5), ObservedLimit.Exact);
        var curve = Positive.Curve;
        var aim = curve.ExposureFor(Density.FromValue(Foramen.Engine.Paper.ExposureIndex.PositiveMidToneDensity)).LuxSeconds;
        double Share(Stops off) => (curve.DensityAt(LuminousExposure.FromLuxSeconds(aim * off.Ratio)).Value - curve.MinimumDensity.Value) / curve.NetDensity;
        Assert.Equal(0.60, Share(evidence.BandLow!.Value), 1e-6);
        Assert.Equal(0.18, Share(evidence.BandHigh!.Value), 1e-6);
        Assert.True(evidence.BandLow.Value.Value < 0 && evidence.BandHigh.Value.Value > 0);
        Assert.Equal("wall", evidence.Name);
        Assert.Equal(Rendering.Mid, evidence.Rendering);
        Assert.Equal(0.3, evidence.Foretold.Value);
        Assert.Equal(0.25, evidence.FlashShare);
        Assert.Equal(1.5, evidence.Seen.Value);
    }

    [Fact]
    public void A_burnt_tone_is_bounded_by_the_edge_of_its_band_or_by_less_where_less_was_said()
    {
        var high = Judged(0, ObservedLimit.Exact).BandHigh!.Value.Value;
        Assert.Equal(high, Judged(9, ObservedLimit.AtLeast).Seen.Value, 1e-12);
        Assert.Equal(high / 2, Judged(high / 2, ObservedLimit.AtLeast).Seen.Value, 1e-12);
        Assert.Equal(0, Judged(-9, ObservedLimit.AtLeast).Seen.Value);
    }

    [Fact]
    public void A_blocked_tone_likewise_on_the_other_side()
    {
        var low = Judged(0, ObservedLimit.Exact).BandLow!.Value.Value;
        Assert.Equal(low, Judged(-9, ObservedLimit.AtMost).Seen.Value, 1e-12);
        Assert.Equal(low / 2, Judged(low / 2, ObservedLimit.AtMost).Seen.Value, 1e-12);
        Assert.Equal(0, Judged(9, ObservedLimit.AtMost).Seen.Value);
        Assert.Equal(ObservedLimit.AtMost, Judged(9, ObservedLimit.AtMost).Limit);
    }

    // Reading 0.4 and judging 0.3 by eye are 0.5 together; with a densitometer's 0.09 they are 0.41.
    [Fact]
    public void Reading_and_judging_add_as_squares()
    {
        var byEye = Judged(0, ObservedLimit.Exact);
        Assert.Equal(0.30, byEye.Judging.Value);
        Assert.Equal(0.5, byEye.Spread.Value, 1e-12);
        var measured = JudgedTones.ToEvidence(Positive, Landed, Stops.Zero, ObservedLimit.Exact, Stops.FromValue(0.09));
        Assert.Equal(0.09, measured.Judging.Value);
        Assert.Equal(0.41, measured.Spread.Value, 1e-12);
    }

    [Fact]
    public void A_tone_that_may_burn_teaches_nothing_and_says_so()
    {
        var lamp = new ToneLanding(Tone("lamp", Rendering.MayBurn, 90_000), null, 0);
        var refusal = Assert.Throws<RefusalException>(() => JudgedTones.ToEvidence(Positive, lamp, Stops.Zero, ObservedLimit.Exact));
        Assert.Equal("The tone \"lamp\" may burn or block, so it says nothing of the exposure.", refusal.Message);
    }

    private static ToneEvidence Judged(double seen, ObservedLimit limit) => JudgedTones.ToEvidence(Positive, Landed, Stops.FromValue(seen), limit);
}
