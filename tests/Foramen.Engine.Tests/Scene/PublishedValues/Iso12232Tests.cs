using Foramen.Engine.Light;
using Foramen.Engine.Scene;

namespace Foramen.Engine.Tests.Scene.PublishedValues;

/// <summary>ISO 12232, standard output sensitivity: code 118 is a focal-plane exposure of 10/S lx s; H = 0.65·L·t/N² (from memory).</summary>
[Source("iso-12232", "standard output sensitivity", Basis.Memory)]
public class Iso12232Tests
{
    // By hand: f/16, 1/100 s, ISO 100: H 0.1 lx s, L = 0.1·256/(0.65·0.01) = 3938.5 cd/m².
    [Theory]
    [InlineData(16, 0.01, 100, 3938.46)]
    [InlineData(1.8, 0.002, 50, 498.46)]
    [InlineData(1.8, 1.0, 1600, 0.031154)]
    public void Code_118_has_the_standards_luminance(double aperture, double seconds, double iso, double candelas)
    {
        var photo = Photographs.Even(118, 118, 118, Photographs.Exposed(aperture, seconds, iso));
        var map = LuminanceMap.AsPaperSees(PhotographMeter.AnchorByExposure(photo), PaperSight.Eye);
        Assert.Equal(candelas, map.At(0, 0).CandelasPerSquareMetre, candelas * 1e-4);
    }

    // The standard's mid-tone against a meter with K 12.5 (ISO 2720): 10/0.65 over 12.5 is 1.2308, 0.300 stop.
    [Fact]
    [Source("iso-12232", "standard output sensitivity", Basis.Memory)]
    [Source("iso-2720", "K 12.5", Basis.Worked)]
    public void A_camera_sees_its_mid_tone_a_third_of_a_stop_above_a_meters()
    {
        var facts = Photographs.Exposed(8, 1 / 60.0, 200);
        var white = PhotographMeter.WhiteLuminance(facts).CandelasPerSquareMetre;
        var meter = LightMeter.Usual.LuminanceFrom(facts.FNumber!.Value, facts.ExposureTime!.Value, facts.Speed!.Value).CandelasPerSquareMetre;
        Assert.Equal(0.300, Math.Log2(white * SrgbTransfer.LinearOfCode(PhotographMeter.ReferenceCode) / meter), 0.001);
    }
}
