using CsCheck;
using Foramen.Engine.Camera;
using Foramen.Engine.Exposure;
using Foramen.Engine.Light;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using Foramen.Engine.Tests.Camera;
using Foramen.Engine.Tests.Light;

namespace Foramen.Engine.Tests.Exposure;

public class WindowFinderTests
{
    private static readonly FacadeExposure Exposure = new(CameraExamples.BoxA, PaperResponse.Of(ExposureExamples.Positive, LightColour.Noon), Rendering.Mid);

    private static readonly DateTimeOffset NewYear = new(2024, 1, 1, 0, 0, 0, TimeSpan.Zero);

    private static readonly Gen<OutingPlace> GenPlace = Gen.Select(Gen.Double[-85, 85], Gen.Double[-180, 180], Gen.Double[0, 360], Gen.Double[0, 360], Gen.Double[-20, 30])
        .Select((latitude, longitude, facade, camera, tilt) => new OutingPlace
        {
            Name = "somewhere",
            Position = GeographicPosition.FromDegrees(latitude, longitude),
            Facade = Facade.Facing(Angle.FromDegrees(facade)),
            Aim = FrameAim.Towards(CameraExamples.BoxA.TiltedTo(Angle.FromDegrees(tilt)), Angle.FromDegrees(camera)),
            ShadeOnFacade = [Obstacle.Of("house", Angle.FromDegrees(150), Length.FromMetres(20), Length.FromMetres(12), Length.FromMetres(9))],
        });

    private static readonly Gen<WindowWish> GenWish = Gen.Select(Gen.Bool, Gen.Bool, Gen.Bool, Gen.Double[0, 40], Gen.Double[0.5, 60], Gen.Int[0, 2])
        .Select((facade, picture, hole, raking, minutes, cover) => new WindowWish
        {
            SunOnFacade = facade,
            SunOutOfPicture = picture,
            SunOffHole = hole,
            LeastRaking = Angle.FromDegrees(raking),
            LongestExposure = Duration.FromMinutes(minutes),
            Cover = Skies.Covers[cover],
        });

    // Every five minutes of four days the wish is asked directly, with the whole integral of the sky. Near a bound, or within what the table may be off,
    // either answer is right.
    [Fact]
    public void Windows_are_where_the_wish_holds() => Gen.Select(GenPlace, GenWish, Gen.Int[0, 360]).Sample(
        (place, wish, day) =>
        {
            var from = NewYear.AddDays(day);
            var windows = WindowFinder.Find(place, wish, Exposure, from, from.AddDays(4));
            Assert.All(windows.Zip(windows.Skip(1)), pair => Assert.True(pair.First.Window.End < pair.Second.Window.Start));
            for (var minute = 0; minute < 4 * 1440; minute += 5)
            {
                var instant = from.AddMinutes(minute);
                var said = windows.Any(window => window.Window.Start <= instant && instant <= window.Window.End);
                if (Holds(place, wish, instant) is { } holds)
                {
                    Assert.True(holds == said, $"{instant:u}: {place.Standing(instant)} {said}");
                }
            }
        },
        iter: Samples.Of(25));

    // The sun stands square to the facade at the end of a window of grazing light, and a second further the wish no longer holds.
    [Fact]
    public void Bounds_are_good_to_a_second()
    {
        var place = new OutingPlace { Name = "elevator", Position = Skies.Basin, Facade = Facade.Facing(Angle.FromDegrees(120)) };
        var wish = new WindowWish { LongestExposure = null, LeastRaking = Angle.FromDegrees(15) };
        var midnight = new DateTimeOffset(2024, 6, 20, 0, 0, 0, TimeSpan.FromHours(2));
        var window = Assert.Single(WindowFinder.Find(place, wish, null, midnight, midnight.AddDays(1))).Window;
        bool Lit(DateTimeOffset instant) => place.Standing(instant) is { OnFacade: true, RakingAngle.Degrees: >= 15 };
        Assert.True(Lit(window.Start.AddSeconds(1)) && Lit(window.End.AddSeconds(-1)));
        Assert.False(Lit(window.Start.AddSeconds(-1)) || Lit(window.End.AddSeconds(1)));
        Assert.Equal(TimeSpan.FromHours(2), window.Start.Offset);
    }

    // A south facade on the equator: the sun is south of it only from the equinox of September to that of March (geography books).
    [Fact]
    public void Half_a_year_of_sun_on_the_equator()
    {
        var place = new OutingPlace { Name = "pump house", Position = GeographicPosition.FromDegrees(0, 0), Facade = Facade.Facing(Angle.FromDegrees(180)) };
        var windows = WindowFinder.Find(place, new WindowWish { LongestExposure = null }, null, NewYear, NewYear.AddDays(366));
        Assert.True(windows.Any(one => one.Window.Start.Month == 12) && windows.Any(one => one.Window.Start.Month == 2));
        Assert.DoesNotContain(windows, one => one.Window.Start.Month is >= 4 and <= 8);
        Assert.Equal(181, windows.Count, 6.0);
    }

    [Fact]
    public void Polar_night_has_no_window_and_polar_day_has_one_that_lasts()
    {
        OutingPlace At(double latitude) => new() { Name = "hut", Position = GeographicPosition.FromDegrees(latitude, 15), Facade = Facade.Level };
        var wish = new WindowWish { LongestExposure = null };
        var june = new DateTimeOffset(2024, 6, 15, 0, 0, 0, TimeSpan.Zero);
        Assert.Equal(TimeSpan.FromDays(5), Assert.Single(WindowFinder.Find(At(78), wish, null, june, june.AddDays(5))).Window.Length);
        Assert.Empty(WindowFinder.Find(At(-78), wish, null, june, june.AddDays(5)));
    }

    [Fact]
    public void The_exposure_is_that_of_the_surfaces_luminance()
    {
        var place = new OutingPlace { Name = "elevator", Position = Skies.Basin, Facade = Facade.Facing(Angle.FromDegrees(160)) };
        var midnight = new DateTimeOffset(2024, 6, 20, 0, 0, 0, TimeSpan.Zero);
        var best = WindowFinder.Find(place, new WindowWish(), Exposure, midnight, midnight.AddDays(1)).MinBy(one => one.ShortestExposure);
        var exact = Exposure.TimeFor(place.LuminanceAt(best.Best, SkyCover.Clear));
        Assert.Equal(exact.Seconds, best.ShortestExposure!.Value.Seconds, exact.Seconds * 0.04);
    }

    [Fact]
    public void A_day_of_exposures_is_read_off_between_its_steps()
    {
        var place = new OutingPlace { Name = "elevator", Position = Skies.Basin, Facade = Facade.Facing(Angle.FromDegrees(160)) };
        var midnight = new DateTimeOffset(2024, 6, 20, 0, 0, 0, TimeSpan.Zero);
        var day = DayExposure.Of(place, Exposure, SkyCover.Hazy, midnight, midnight.AddDays(1));
        for (var minute = 300; minute < 1100; minute += 7)
        {
            var exact = Exposure.TimeFor(place.LuminanceAt(midnight.AddMinutes(minute), SkyCover.Hazy)).Seconds;
            Assert.Equal(exact, day.At(midnight.AddMinutes(minute)).Seconds, exact * 0.02);
        }
    }

    [Fact]
    public void A_stop_of_the_day_takes_its_exposure_from_the_light_there_or_two_minutes()
    {
        var place = new OutingPlace { Name = " elevator ", Position = Skies.Basin, Facade = Facade.Facing(Angle.FromDegrees(160)) };
        var midnight = new DateTimeOffset(2024, 6, 20, 0, 0, 0, TimeSpan.Zero);
        var windows = WindowFinder.Find(place, new WindowWish(), Exposure, midnight, midnight.AddDays(1));
        var noon = midnight.AddHours(12);
        var stop = OutingStop.At(place, windows, Exposure, SkyCover.Clear, midnight, midnight.AddDays(1), 3);
        var exact = Exposure.TimeFor(place.LuminanceAt(noon, SkyCover.Clear)).Seconds;
        Assert.Equal(exact, stop.ExposureAt(noon).Seconds, exact * 0.02);
        Assert.Equal(("elevator", 3), (stop.Name, stop.SheetsWanted));
        Assert.Equal(windows.Select(one => one.Window), stop.Windows);
        Assert.Equal(120, OutingStop.At(place, windows, null, SkyCover.Clear, midnight, midnight.AddDays(1), 3).ExposureAt(noon).Seconds);
    }

    // Without a camera the highest sun is the best moment: on a level surface that is noon, half-way through the window.
    [Fact]
    public void Without_a_camera_the_best_moment_is_the_highest_sun()
    {
        var place = new OutingPlace { Name = "weir", Position = GeographicPosition.FromDegrees(0, 0), Facade = Facade.Level };
        var window = Assert.Single(WindowFinder.Find(place, new WindowWish { LongestExposure = null }, null, NewYear, NewYear.AddDays(1)));
        Assert.Equal(0, (window.Best - window.Window.Start - (window.Window.Length / 2)).TotalSeconds, 1.0);
        Assert.Null(window.ShortestExposure);

        // On 1 January the sun stands 23.0° south of the equator.
        Assert.Equal(67, window.SunAtBest.Elevation.Degrees, 0.1);
    }

    // What a house hides from the facade is no window; what it hides from the hole is.
    [Fact]
    public void A_house_shades_the_facade_and_shelters_the_hole()
    {
        var house = Obstacle.Of("house", Angle.FromDegrees(180), Length.FromMetres(10), Length.FromMetres(400), Length.FromMetres(100));
        var place = new OutingPlace
        {
            Name = "pump house",
            Position = Skies.Basin,
            Facade = Facade.Facing(Angle.FromDegrees(180)),
            Aim = FrameAim.Towards(CameraExamples.BoxA, Angle.FromDegrees(180)),
        };
        var midnight = new DateTimeOffset(2024, 12, 20, 0, 0, 0, TimeSpan.Zero);
        IReadOnlyList<PlaceWindow> Of(OutingPlace where, bool facade, bool hole) => WindowFinder.Find(
            where, new WindowWish { LongestExposure = null, SunOnFacade = facade, SunOutOfPicture = false, SunOffHole = hole }, null, midnight, midnight.AddDays(1));
        Assert.NotEmpty(Of(place, true, false));
        Assert.Empty(Of(place with { ShadeOnFacade = [house] }, true, false));

        // Pointed south, the winter sun is before the camera all day.
        Assert.Empty(Of(place, true, true));
        Assert.NotEmpty(Of(place with { ShadeOnHole = [house] }, true, true));
    }

    [Theory]
    [InlineData("")]
    [InlineData("   ")]
    [InlineData("a name of more than eighty characters, which is more than the list of a day can hold")]
    public void A_place_needs_a_name_that_fits(string name)
        => Assert.Throws<RefusalException>(() => new OutingPlace { Name = name, Position = Skies.Basin, Facade = Facade.Level });

    [Fact]
    public void A_longest_exposure_out_of_range_is_refused()
    {
        Assert.Throws<RefusalException>(() => Exposure.LeastLuminanceFor(Duration.FromSeconds(0.001)));
        Assert.Throws<RefusalException>(() => Exposure.LeastLuminanceFor(Duration.FromSeconds(86_401)));
        Assert.Equal(Duration.Max, Exposure.TimeFor(default).Seconds);
    }

    // Light enough for two minutes is what needs two minutes.
    [Fact]
    public void Least_luminance_and_time_are_each_others_inverse() => Gen.Double[0.1, 10_000].Sample(seconds =>
        Assert.Equal(seconds, Exposure.TimeFor(Exposure.LeastLuminanceFor(Duration.FromSeconds(seconds))).Seconds, seconds * 1e-6));

    [Fact]
    public void A_longest_exposure_without_a_camera_is_refused()
        => Assert.Throws<RefusalException>(() => WindowFinder.Find(
            new OutingPlace { Name = "elevator", Position = Skies.Basin, Facade = Facade.Level }, new WindowWish(), null, NewYear, NewYear.AddDays(1)));

    private static bool? Holds(OutingPlace place, WindowWish wish, DateTimeOffset instant)
    {
        var standing = place.Standing(instant);
        var sun = standing.Position;
        if (sun.TrueElevation.Degrees < -17)
        {
            return sun.TrueElevation.Degrees < -18.5 ? false : null;
        }

        if (Math.Abs(sun.Elevation.Degrees) < 0.02 || Math.Abs(standing.RakingAngle.Degrees - wish.LeastRaking.Degrees) < 0.02 || Math.Abs(standing.RakingAngle.Degrees) < 0.02)
        {
            return null;
        }

        var needed = Exposure.TimeFor(place.LuminanceAt(instant, wish.Cover)).Seconds / wish.LongestExposure!.Value.Seconds;
        var facade = !wish.SunOnFacade || (standing.OnFacade && standing.RakingAngle >= wish.LeastRaking);
        var picture = !wish.SunOutOfPicture || !InPicture(place, sun);
        var hole = !wish.SunOffHole || standing.OffAxis.Degrees >= 90;
        return needed is > 0.94 and < 1.06 ? null : facade && picture && hole && needed < 1;
    }

    // Within a degree of the picture, whether the sun is up or not.
    private static bool InPicture(OutingPlace place, SkyPosition sun) => place.Aim!.ClearanceDegrees(sun) <= FrameAim.UsualMarginDegrees;
}
