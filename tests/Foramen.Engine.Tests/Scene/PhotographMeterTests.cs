using CsCheck;
using Foramen.Engine.Light;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;

namespace Foramen.Engine.Tests.Scene;

public class PhotographMeterTests
{
    private static readonly PhotographArea Middle = PointInPhotograph.FromFractions(0.5, 0.5);

    [Fact]
    public void A_place_has_the_luminance_it_was_anchored_with() => Gen.Select(Photographs.WithinRange, Gen.Double[0.01, 50000]).Sample((photo, candelas) =>
    {
        var whole = RectangleInPhotograph.FromFractions(0, 0, 1, 1);
        var anchored = PhotographMeter.Anchor(photo, whole, Luminance.FromCandelasPerSquareMetre(candelas));
        Assert.Equal(candelas, LuminanceMap.AsPaperSees(anchored, PaperSight.Eye).ReducedTo(1, 1).Values[0], candelas * 1e-4);
    });

    [Fact]
    public void A_stop_in_any_setting_is_a_stop_in_luminance() => Gen.Select(Gen.Double[1, 32], Gen.Double[0.0001, 10], Gen.Double[25, 6400])
        .Sample((aperture, seconds, iso) =>
        {
            double White(double n, double t, double s) => PhotographMeter.WhiteLuminance(Photographs.Exposed(n, t, s)).CandelasPerSquareMetre;
            var white = White(aperture, seconds, iso);
            Assert.Equal(2, White(aperture * Math.Sqrt(2), seconds, iso) / white, 1e-9);
            Assert.Equal(2, White(aperture, seconds / 2, iso) / white, 1e-9);
            Assert.Equal(2, White(aperture, seconds, iso / 2) / white, 1e-9);
        });

    [Theory]
    [InlineData(255, "blown")]
    [InlineData(0, "blocked")]
    public void A_clipped_place_cannot_anchor(byte code, string state)
    {
        var refusal = Assert.Throws<RefusalException>(
            () => PhotographMeter.Anchor(Photographs.Even(code, code, code), Middle, Luminance.FromCandelasPerSquareMetre(100)));
        Assert.Contains(state, refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_reading_of_zero_and_missing_exposures_are_refused()
    {
        Assert.Throws<RefusalException>(() => PhotographMeter.Anchor(Photographs.Even(9, 9, 9), Middle, default));
        Assert.Throws<RefusalException>(() => PhotographMeter.AnchorByExposure(Photographs.Even(9, 9, 9)));
        var facts = Photographs.Exposed(8, 0.01, 100);
        Assert.Throws<RefusalException>(() => PhotographMeter.WhiteLuminance(facts with { Speed = null }));
        Assert.Throws<RefusalException>(() => PhotographMeter.WhiteLuminance(facts with { FNumber = null }));
        Assert.Throws<RefusalException>(() => PhotographMeter.WhiteLuminance(facts with { ExposureTime = default(Duration) }));
    }

    [Fact]
    public void An_absurd_exposure_does_not_make_an_absurd_luminance()
        => Assert.Throws<RefusalException>(() => PhotographMeter.WhiteLuminance(Photographs.Exposed(100000, 1e-9, 0.01)));
}
