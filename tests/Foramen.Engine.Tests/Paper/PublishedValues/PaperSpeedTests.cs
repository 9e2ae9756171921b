using Foramen.Engine.Light;
using Foramen.Engine.Paper;
using static Foramen.Engine.Tests.Paper.PaperExamples;

namespace Foramen.Engine.Tests.Paper.PublishedValues;

/// <summary>
/// ISO 2720:1974 meter equation t/N² = K/(L·S) and E = πL/(4N²) behind a hole give H = (π/4)·K/S for the metered mid-tone, hence EI = (π/4)·K·P/1000
/// for a paper of ISO 6846 speed P. Values worked by hand from these two standards; tolerance half the last digit.
/// </summary>
[Source("iso-2720", "meter equation", Basis.Worked)]
[Source("iso-6846", "speed", Basis.Worked)]
public class PaperSpeedTests
{
    [Theory]
    [InlineData(100, 0.982, 1.100)]
    [InlineData(160, 1.571, 1.759)]
    [InlineData(250, 2.454, 2.749)]
    [InlineData(320, 3.142, 3.519)]
    [InlineData(500, 4.909, 5.498)]
    [InlineData(640, 6.283, 7.037)]
    public void Paper_speed_as_exposure_index_in_tungsten(double speed, double indexAtK12And5, double indexAtK14)
    {
        var iso = IsoPaperSpeed.FromValue(speed);
        Assert.Equal(indexAtK12And5, iso.ExposureIndexInSameLight(MeterConstants.Usual), 0.0006);
        Assert.Equal(indexAtK14, iso.ExposureIndexInSameLight(MeterConstants.WithFourteen), 0.0006);
    }

    // The film criterion 0.8/S (ISO 6) on paper of R 110 and net density 2.0: more than two stops off, so it must not appear.
    [Fact]
    [Source("iso-6", "0.8/S", Basis.Worked)]
    public void The_film_rule_would_be_two_stops_wrong()
    {
        var throughSpeedPoint = IsoPaperSpeed.FromValue(500).ExposureIndexInSameLight(MeterConstants.Usual);
        var filmRule = 0.8 / Negative.ExposureFor(D(Negative.MinimumDensity.Value + 0.10)).LuxSeconds;
        Assert.Equal(0.957, filmRule, 0.0011);
        Assert.Equal(2.36, Math.Log2(throughSpeedPoint / filmRule), 0.006);
    }

    [Theory]
    [InlineData(4, 0.85, 1.951)]
    [InlineData(6, 0.85, 2.926)]
    [InlineData(6, 0.90, 3.717)]
    [InlineData(12, 0.85, 5.852)]
    [InlineData(12, 0.90, 7.435)]
    [Source("schwarzschild-1900", Basis.Worked)]
    public void An_index_at_one_second_falls_by_two_minutes(double index, double exponent, double atTwoMinutes)
    {
        var found = ExposureIndex.Found(index, S(1), LightColour.Noon, MeterConstants.Usual);
        Assert.Equal(atTwoMinutes, found.At(S(120), SchwarzschildFailure.FromExponent(exponent)).Value, 0.0006);
    }

    // A direct-positive curve with Dmin 0.08, net 1.9, k 7, x0 0.6 gives density 0.745 at 4.88 lx s, so EI 2.01 in 3000 K light at one second.
    [Fact]
    public void A_positive_is_metered_for_its_mid_tone()
    {
        Assert.Equal(4.88, Positive.ExposureFor(D(0.745)).LuxSeconds, 0.006);
        var index = ExposureIndex.Found(2.01, S(1), LightColour.Lamp, MeterConstants.Usual);
        Assert.Equal(4.88, index.MidToneExposure(PaperSensitivity.BlueSensitive, SchwarzschildFailure.Assumed).LuxSeconds, 0.02);
    }
}
