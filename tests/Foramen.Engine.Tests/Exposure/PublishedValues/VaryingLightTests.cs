using Foramen.Engine.Exposure;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Exposure.PublishedValues;

/// <summary>
/// Closed forms worked by hand from Schwarzschild's statement (Astrophysical Journal 11, 89, 1900) for light that changes: the
/// latent image is one number X with X^(1/p) growing at I^(1/p), so half the light for a time is worth 2^(-1/p) of that time.
/// </summary>
[Source("schwarzschild-1900", Basis.Worked)]
public class VaryingLightTests
{
    private static readonly Stops HalfTheLight = Stops.FromValue(-1);

    [Theory]
    [InlineData(1.00, 90)]
    [InlineData(0.90, 87.78)]
    [InlineData(0.85, 86.55)]
    [InlineData(0.80, 85.23)]
    public void A_minute_of_sun_and_a_minute_at_half_light(double p, double equivalentSeconds)
    {
        var tally = ExposureTally.For(SchwarzschildFailure.FromExponent(p), S(120));
        var progress = tally.Progress([new LightSpan(S(60), Stops.Zero), new LightSpan(S(60), HalfTheLight)]);
        Assert.Equal(equivalentSeconds, progress * 120, 0.006);
    }

    [Theory]
    [InlineData(1.00, 120)]
    [InlineData(0.90, 129.61)]
    [InlineData(0.85, 135.61)]
    [InlineData(0.80, 142.70)]
    public void Seconds_at_half_light_that_equal_a_minute(double p, double seconds)
        => Assert.Equal(seconds, ExposureTally.For(SchwarzschildFailure.FromExponent(p), S(60)).FullTimeAt(HalfTheLight).Seconds, 0.006);

    [Theory]
    [InlineData(1.00, 90.63)]
    [InlineData(0.90, 94.27)]
    [InlineData(0.85, 96.38)]
    [InlineData(0.80, 98.73)]
    public void A_cloud_passes_and_haze_stays(double p, double remaining)
    {
        var tally = ExposureTally.For(SchwarzschildFailure.FromExponent(p), S(120));
        var progress = tally.Progress([new LightSpan(S(40), Stops.Zero), new LightSpan(S(30), Stops.FromRatio(0.25))]);
        Assert.Equal(remaining, tally.Remaining(progress, Stops.FromRatio(0.8)).Seconds, 0.006);
    }

    // Additive power, a = 0.1, metered minute: T(1) = 135.96 s, T(1/2) = 353.49 s (P. A. Gainer's law, worked by hand).
    [Fact]
    [Source("gainer", Basis.Worked)]
    public void Any_law_will_do()
    {
        var tally = ExposureTally.For(AdditivePowerFailure.FromExtraAtOneSecond(0.1), S(135.96));
        var progress = tally.Progress([new LightSpan(S(60), Stops.Zero)]);
        Assert.Equal(0.4413, progress, 0.00006);
        Assert.Equal(197.5, tally.Remaining(progress, HalfTheLight).Seconds, 0.06);
    }

    private static Duration S(double seconds) => Duration.FromSeconds(seconds);
}
