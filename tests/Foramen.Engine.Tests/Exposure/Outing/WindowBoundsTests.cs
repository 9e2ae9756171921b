using Foramen.Engine.Camera;
using Foramen.Engine.Exposure;
using Foramen.Engine.Light;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using Foramen.Engine.Tests.Camera;
using Foramen.Engine.Tests.Light;

namespace Foramen.Engine.Tests.Exposure;

/// <summary>Where windows begin and end, one wish at a time.</summary>
public class WindowBoundsTests
{
    // On the day of an equinox the sun of the equator rises in the east and climbs straight up.
    private static readonly DateTimeOffset Equinox = new(2024, 3, 20, 0, 0, 0, TimeSpan.Zero);

    private static readonly GeographicPosition Equator = GeographicPosition.FromDegrees(0, 0);

    private static readonly FacadeExposure Exposure = new(CameraExamples.BoxA, PaperResponse.Of(ExposureExamples.Positive, LightColour.Noon), Rendering.Mid);

    private static readonly DateTimeOffset Midsummer = new(2024, 6, 20, 0, 0, 0, TimeSpan.Zero);

    private static readonly OutingPlace PumpHouse = new() { Name = "pump house", Position = Skies.Basin, Facade = Facade.Facing(Angle.FromDegrees(180)) };

    // The picture ends 51 mm above the foot of the hole's axis, 63 mm away; a degree at the axis is 63·tan 1° = 1.10 mm more: atan(52.10/63) = 39.59°.
    [Fact]
    public void A_window_out_of_the_picture_begins_beside_it_and_ends_at_sunset()
    {
        var window = Assert.Single(Asking(picture: true, hole: false, bearing: 90)).Window;
        Assert.Equal(39.59, ElevationAt(window.Start), 0.05);
        Assert.Equal(0, ElevationAt(window.End), 0.01);
    }

    // The sun is behind the front of a camera that points east from noon on.
    [Fact]
    public void A_window_with_the_hole_in_shade_begins_when_the_sun_passes_the_front()
    {
        var window = Assert.Single(Asking(picture: false, hole: true, bearing: 90)).Window;
        Assert.Equal(12, window.Start.TimeOfDay.TotalHours, 0.2);
        Assert.Equal(0, ElevationAt(window.End), 0.01);
    }

    [Fact]
    public void Where_nothing_is_asked_the_window_is_the_day()
    {
        var window = Assert.Single(Asking(picture: false, hole: false, bearing: 90)).Window;
        Assert.Equal(0, ElevationAt(window.Start), 0.01);
        Assert.Equal(0, ElevationAt(window.End), 0.01);
    }

    // On an east facade the sun climbs until it leaves it, where its light only grazes.
    [Fact]
    public void Without_a_camera_the_best_moment_is_the_highest_sun_though_it_grazes()
    {
        var place = new OutingPlace { Name = "elevator", Position = Equator, Facade = Facade.Facing(Angle.FromDegrees(90)) };
        var window = Assert.Single(WindowFinder.Find(place, new WindowWish { LongestExposure = null }, null, Equinox, Equinox.AddDays(1)));
        Assert.Equal(window.Window.End, window.Best);
    }

    // At its bounds a window asks for the longest exposure that will do, within what the table of light may be off.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_longest_exposure_bounds_the_window(bool sunOnFacade)
    {
        var noon = Seconds(PumpHouse, Midsummer.AddHours(11.7));
        var wish = new WindowWish { SunOnFacade = sunOnFacade, SunOutOfPicture = false, LongestExposure = Duration.FromSeconds(1.5 * noon) };
        var window = Assert.Single(WindowFinder.Find(PumpHouse, wish, Exposure, Midsummer, Midsummer.AddDays(1))).Window;
        Assert.Equal(1.5 * noon, Seconds(PumpHouse, window.Start), 1.5 * noon * 0.06);
        Assert.Equal(1.5 * noon, Seconds(PumpHouse, window.End), 1.5 * noon * 0.06);
        Assert.True(Seconds(PumpHouse, window.Start + (window.Length / 2)) < 1.5 * noon);
    }

    // A large hole and a white wall need little: what it needs a quarter of an hour after sunset bounds the window there, and as long before sunrise.
    [Fact]
    public void Dusk_may_still_be_bright_enough()
    {
        var place = PumpHouse with { Reflectance = Reflectance.FromFraction(0.9) };
        var exposure = new FacadeExposure(CameraExamples.Flat(0.6, 30, 127, 102), PaperResponse.Of(ExposureExamples.Negative, LightColour.Noon), Rendering.Mid);
        var sunset = SunSpans.Find(Midsummer, Midsummer.AddDays(1), Skies.Basin, sun => sun.Elevation.Degrees, Angle.FromDegrees(-2))[^1].End;
        var longest = exposure.TimeFor(place.LuminanceAt(sunset.AddMinutes(15), SkyCover.Clear)).Seconds;
        var wish = new WindowWish { SunOnFacade = false, SunOutOfPicture = false, LongestExposure = Duration.FromSeconds(longest) };
        var window = Assert.Single(WindowFinder.Find(place, wish, exposure, Midsummer, Midsummer.AddDays(1))).Window;
        Assert.Equal(longest, exposure.TimeFor(place.LuminanceAt(window.Start, SkyCover.Clear)).Seconds, longest * 0.06);
        Assert.Equal(sunset.AddMinutes(15), window.End, TimeSpan.FromMinutes(1));
    }

    // What a house leaves of the light needs longer.
    [Fact]
    public void A_shaded_facade_is_as_dark_as_it_is()
    {
        var shaded = PumpHouse with
        {
            ShadeOnFacade = [Obstacle.Of("house", Angle.FromDegrees(180), Length.FromMetres(10), Length.FromMetres(400), Length.FromMetres(100))],
        };
        var noon = Midsummer.AddHours(11.7);
        var between = Math.Sqrt(Seconds(PumpHouse, noon) * Seconds(shaded, noon));
        var wish = new WindowWish { SunOnFacade = false, SunOutOfPicture = false, LongestExposure = Duration.FromSeconds(between) };
        bool AtNoon(OutingPlace place) => WindowFinder.Find(place, wish, Exposure, Midsummer, Midsummer.AddDays(1)).Any(one => one.Window.Start <= noon && noon <= one.Window.End);
        Assert.True(AtNoon(PumpHouse));
        Assert.False(AtNoon(shaded));
    }

    [Fact]
    public void The_midnight_sun_of_seven_weeks_is_one_window()
    {
        var hut = new OutingPlace { Name = "hut", Position = GeographicPosition.FromDegrees(78, 15), Facade = Facade.Level };
        var from = new DateTimeOffset(2024, 6, 1, 0, 0, 0, TimeSpan.Zero);
        Assert.Equal(TimeSpan.FromDays(49), Assert.Single(WindowFinder.Find(hut, new WindowWish { LongestExposure = null }, null, from, from.AddDays(49))).Window.Length);
    }

    private static double Seconds(OutingPlace place, DateTimeOffset instant) => Exposure.TimeFor(place.LuminanceAt(instant, SkyCover.Clear)).Seconds;

    private static double ElevationAt(DateTimeOffset instant) => Sun.At(instant, Equator).Elevation.Degrees;

    private static IReadOnlyList<PlaceWindow> Asking(bool picture, bool hole, double bearing)
    {
        var place = new OutingPlace
        {
            Name = "elevator",
            Position = Equator,
            Facade = Facade.Facing(Angle.FromDegrees(270)),
            Aim = FrameAim.Towards(CameraExamples.BoxA, Angle.FromDegrees(bearing)),
        };
        var wish = new WindowWish { SunOnFacade = false, SunOutOfPicture = picture, SunOffHole = hole, LongestExposure = null };
        return WindowFinder.Find(place, wish, null, Equinox, Equinox.AddDays(1));
    }
}
