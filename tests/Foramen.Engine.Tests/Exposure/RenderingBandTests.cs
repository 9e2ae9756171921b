using Foramen.Engine.Exposure;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using Foramen.Engine.Tests.Exposure.Motion;

namespace Foramen.Engine.Tests.Exposure;

/// <summary>The shares of ADR 0004 on a straight curve D = 1.5 ± 2·lg H from 0 to 4, so that lg H = ±(D − 1.5)/2.</summary>
public class RenderingBandTests
{
    // Negative: 0.04, 0.40, 1.40; 0.56, 0.60, 2.20; 2.00, 3.12, 3.68. Positive: 3.72, 3.20, 2.00; 2.40, 0.7447, 0.72; 1.04, 0.40, 0.04.
    [Theory]
    [InlineData(2, Rendering.OpenShadow, -0.73, -0.55, -0.05)]
    [InlineData(2, Rendering.Mid, -0.47, -0.45, 0.35)]
    [InlineData(2, Rendering.TexturedHighlight, 0.25, 0.81, 1.09)]
    [InlineData(-2, Rendering.OpenShadow, -1.11, -0.85, -0.25)]
    [InlineData(-2, Rendering.Mid, -0.45, 0.37765, 0.39)]
    [InlineData(-2, Rendering.TexturedHighlight, 0.23, 0.55, 0.73)]
    public void Bands_are_the_shares_written_down(double slope, Rendering rendering, double low, double aim, double high)
    {
        var band = RenderingBand.On(new StraightCurve(slope), rendering);
        Assert.Equal(low, Math.Log10(band.Low.LuxSeconds), 1e-9);
        Assert.Equal(aim, Math.Log10(band.Aim!.Value.LuxSeconds), 1e-9);
        Assert.Equal(high, Math.Log10(band.High!.Value.LuxSeconds), 1e-9);
    }

    // Twice as far from −0.45: −0.49 and 1.15; half as far: −0.46 and −0.05.
    [Theory]
    [InlineData(2, -0.49, 1.15)]
    [InlineData(0.5, -0.46, -0.05)]
    [InlineData(1, -0.47, 0.35)]
    public void A_tolerance_moves_the_edges_in_stops_about_the_aim(double tolerance, double low, double high)
    {
        var band = RenderingBand.On(new StraightCurve(2), Rendering.Mid).Stretched(tolerance);
        Assert.Equal(low, Math.Log10(band.Low.LuxSeconds), 1e-9);
        Assert.Equal(-0.45, Math.Log10(band.Aim!.Value.LuxSeconds), 1e-9);
        Assert.Equal(high, Math.Log10(band.High!.Value.LuxSeconds), 1e-9);
    }

    [Fact]
    public void An_open_end_stays_open_whatever_the_tolerance()
    {
        var aim = LuminousExposure.FromLuxSeconds(1);
        Assert.Equal(new RenderingBand(default, aim, null), new RenderingBand(default, aim, null).Stretched(2));
        Assert.Equal(RenderingBand.On(new StraightCurve(2), Rendering.MayBurn), RenderingBand.On(new StraightCurve(2), Rendering.MayBurn).Stretched(2));
    }
}
