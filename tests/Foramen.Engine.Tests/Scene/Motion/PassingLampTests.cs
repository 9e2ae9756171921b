using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;

namespace Foramen.Engine.Tests.Scene.Motion;

/// <summary>Small lamps by the distance law I/r² and similar triangles, worked by hand.</summary>
public class PassingLampTests
{
    private static readonly Length F60 = Length.FromMillimetres(60);

    // 4 cd from 2 m: 1 lx at the hole. A spot twice as wide as the hole spreads it over four times the area.
    [Fact]
    [Source("lighting-textbook", "distance law", Basis.Worked)]
    public void Its_spot_holds_what_the_hole_lets_in()
        => Assert.Equal(0.25, Lamp(2, 0).InSpot(Length.FromMillimetres(0.3), Length.FromMillimetres(0.6)).Lux, 1e-12);

    // At 1 m/s, 10 m away, the image goes 6 mm a second: a spot of 0.6 mm stays 0.1 s on a point, 30 mm are drawn in 5 s. Three lamps stay 0.3 s, but no longer than the exposure.
    [Fact]
    [Source("euclid", "similar triangles", Basis.Worked)]
    public void It_stays_on_a_point_for_its_spot_over_its_speed()
    {
        var spot = Length.FromMillimetres(0.6);
        Assert.Equal(0.1, Lamp(10, 1).OnPoint(spot, F60, S(5)).Seconds, 1e-12);
        Assert.Equal(0.3, (Lamp(10, 1) with { Number = 3 }).OnPoint(spot, F60, S(5)).Seconds, 1e-12);
        Assert.Equal(0.2, (Lamp(10, 1) with { Number = 3 }).OnPoint(spot, F60, S(0.2)).Seconds, 1e-12);
        Assert.Equal(5, Lamp(10, 0).OnPoint(spot, F60, S(5)).Seconds);
        Assert.Equal(30, Lamp(10, 1).Streak(F60, S(5)).Millimetres, 1e-9);
    }

    [Fact]
    public void Nonsense_is_refused()
    {
        Assert.Throws<RefusalException>(() => Lamp(0.05, 0));
        Assert.Throws<RefusalException>(() => Lamp(2, 0) with { Number = 0 });
        Assert.Throws<RefusalException>(() => Lamp(2, 0).InSpot(Length.FromMillimetres(0.3), default));
    }

    private static PassingLamp Lamp(double metres, double speed) => new()
    {
        Intensity = LuminousIntensity.FromCandelas(4), Distance = Length.FromMetres(metres), Speed = MotionSpeed.FromMetresPerSecond(speed),
    };

    private static Duration S(double seconds) => Duration.FromSeconds(seconds);
}
