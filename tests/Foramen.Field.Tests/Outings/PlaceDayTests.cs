using Bunit;
using Foramen.Engine.Light;
using Foramen.Field.Device;
using Foramen.Field.Outings;
using Foramen.Field.Tests.TestKit;
using Foramen.Field.Time;
using Foramen.Journal;
using Foramen.Journal.Bodies;
using Microsoft.Extensions.DependencyInjection;

namespace Foramen.Field.Tests.Outings;

public sealed class PlaceDayTests
{
    private static readonly DateOnly Midsummer = new(2026, 6, 21);

    [Fact]
    public void A_south_wall_has_its_windows_about_noon_and_a_north_wall_none_by_day()
    {
        using var field = new FieldContext();
        var south = Day(field, faces: 0, latitude: 52.5);
        var windows = south.Windows(new DateOnly(2026, 3, 20), SkyCover.Clear);
        var window = Assert.Single(windows);
        // At the equinox the sun stands over south walls from rise to set; the wall is clear of the picture's edge all the while.
        Assert.InRange(window.Window.Start.Hour, 6, 9);
        Assert.InRange(window.Window.End.Hour, 17, 20);
        Assert.NotNull(window.ShortestExposure);
        Assert.Empty(Day(field, faces: 180, latitude: 52.5).Windows(new DateOnly(2026, 12, 21), SkyCover.Clear));
    }

    [Fact]
    public void The_course_has_a_point_each_quarter_and_is_lit_where_the_windows_are()
    {
        using var field = new FieldContext();
        var day = Day(field, faces: 0, latitude: 52.5);
        var course = day.Course(Midsummer, SkyCover.Clear);
        Assert.Equal(97, course.Count);
        var start = LocalDays.Begin(Midsummer, field.Services.GetRequiredService<Clock>());
        foreach (var window in day.Windows(Midsummer, SkyCover.Clear))
        {
            Assert.All(course.Where(point => start.AddHours(point.Hours) >= window.Window.Start && start.AddHours(point.Hours) <= window.Window.End), point => Assert.True(point.OnFacade));
        }

        // At solar noon more light falls on it than three hours later (a shorter exposure).
        var best = course.MinBy(point => point.ExposureSeconds ?? double.MaxValue);
        Assert.True(best.ExposureSeconds < course.First(point => point.Hours >= best.Hours + 3).ExposureSeconds);
    }

    [Fact]
    public void Lamps_and_sky_balance_within_minutes_after_sunset_and_brighter_lamps_earlier()
    {
        using var field = new FieldContext();
        var day = Day(field, faces: 0, latitude: 52.5);
        var sunset = day.Sun(Midsummer).First(SkyEventKind.Sunset)!.Value;
        DateTimeOffset Evening(double candelas) => day.Balances(Midsummer, Foramen.Engine.Quantities.Luminance.FromCandelasPerSquareMetre(candelas))[^1].Start;
        Assert.InRange((Evening(2) - sunset).TotalMinutes, 10, 90);
        Assert.True(Evening(30) < Evening(2));
    }

    [Fact]
    public void The_year_holds_the_day()
    {
        using var field = new FieldContext();
        var day = Day(field, faces: 0, latitude: 52.5);
        var date = new DateOnly(2026, 10, 3);
        var fromYear = day.Year(2026).Where(window => DateOnly.FromDateTime(window.Window.Start.DateTime) == date).ToList();
        var fromDay = day.Windows(date, SkyCover.Clear);
        Assert.Equal(fromDay.Count, fromYear.Count);
        Assert.All(fromDay.Zip(fromYear), pair => Assert.InRange((pair.First.Window.Start - pair.Second.Window.Start).TotalSeconds, -30, 30));
    }

    [Fact]
    public void Without_coordinates_nothing_is_said_and_without_a_camera_no_time()
    {
        using var field = new FieldContext();
        var clock = field.Services.GetRequiredService<Clock>();
        Assert.Null(PlaceDay.Of(new PlaceDefined { Place = Ulid.From(DateTimeOffset.UnixEpoch, new byte[10]), Name = "Weir" }, null, null, clock));
        var bare = PlaceDay.Of(Place(0, 52.5), null, null, clock)!;
        Assert.False(bare.HasExposure);
        Assert.Null(bare.FirstExposure(SkyCover.Clear));
        Assert.NotEmpty(bare.Windows(Midsummer, SkyCover.Clear));
    }

    [Fact]
    public void In_the_polar_day_and_night_the_page_still_answers()
    {
        using var field = new FieldContext();
        var north = Day(field, faces: 0, latitude: 78);
        Assert.True(north.Sun(Midsummer).SunStaysUp);
        Assert.True(north.Sun(new DateOnly(2026, 12, 21)).SunStaysDown);
        Assert.Empty(north.Windows(new DateOnly(2026, 12, 21), SkyCover.Clear));
        Assert.NotEmpty(north.Course(Midsummer, SkyCover.Clear));
    }

    [Fact]
    public void A_day_in_which_the_clocks_go_forward_has_23_hours()
    {
        var zone = new SpringZone();
        var clock = new Clock(TimeProvider.System, zone);
        var date = DateOnly.FromDateTime(SpringZone.Change.UtcDateTime);
        Assert.Equal(TimeSpan.FromHours(23), LocalDays.End(date, clock) - LocalDays.Begin(date, clock));
        Assert.Equal(TimeSpan.FromHours(24), LocalDays.End(date.AddDays(1), clock) - LocalDays.Begin(date.AddDays(1), clock));
        Assert.Equal(0, LocalDays.Begin(date.AddDays(1), clock).Hour);
    }

    [Fact]
    public async Task The_page_shows_windows_chart_and_year()
    {
        using var field = new FieldContext();
        await field.LoadedSheetAsync();
        var place = Place(0, 52.5) with { Place = field.Session.NewId() };
        await field.Session.AppendAsync(place);
        var page = field.Render<LightPage>(parameters => parameters.Add(p => p.IdText, place.Place.ToString()));
        Assert.NotEmpty(page.FindAll(".window"));
        Assert.NotEmpty(page.FindAll(".chart .band"));
        Assert.Contains("Never look at the sun", page.Markup, StringComparison.Ordinal);
        page.FindAll("button").First(button => button.TextContent.Contains("whole year", StringComparison.Ordinal)).Click();
        Assert.NotEmpty(page.Find(".chart .fill").GetAttribute("d")!);
        page.Find("#light-date").Change("2026-12-21");
        page.FindAll("button").First(button => button.TextContent.Contains("day sheet", StringComparison.Ordinal)).Click();
        Assert.Equal(1, field.Platform.Printed);
    }

    // Behind a wall from 170° to 190° that is higher than the sun ever stands there; the south wall loses the hours about noon, and the camera none.
    [Fact]
    public void What_stands_before_the_facade_takes_its_hours_from_the_windows_of_day_and_year()
    {
        using var field = new FieldContext();
        var clock = field.Services.GetRequiredService<Clock>();
        var wall = new PlaceShade { Name = "mill", LeftDegrees = 170, RightDegrees = 190, TopDegrees = 80 };
        PlaceDay Shaded(ShadeFalls? falls) => PlaceDay.Of(Place(0, 52.5) with { Shades = [wall with { Falls = falls }] }, FieldContext.BoxA, FieldContext.Positive, clock)!;
        var date = new DateOnly(2026, 3, 20);
        var whole = Assert.Single(Day(field, 0, 52.5).Windows(date, SkyCover.Clear));
        foreach (var falls in new ShadeFalls?[] { null, ShadeFalls.OnFacade, ShadeFalls.OnBoth })
        {
            var windows = Shaded(falls).Windows(date, SkyCover.Clear);
            Assert.Equal(2, windows.Count);
            Assert.Equal(whole.Window.Start, windows[0].Window.Start);
            Assert.Equal(whole.Window.End, windows[1].Window.End);
            // Off the almanac's azimuths, by the Sun itself: 170° and 190° at the edges of the gap.
            Assert.Equal(170, Sun.At(windows[0].Window.End, Shaded(falls).Place.Position).Azimuth.Degrees, 0.05);
            Assert.Equal(190, Sun.At(windows[1].Window.Start, Shaded(falls).Place.Position).Azimuth.Degrees, 0.05);
            Assert.Equal(2, Shaded(falls).Year(2026).Count(window => DateOnly.FromDateTime(window.Window.Start.DateTime) == date));
        }

        Assert.Equal(whole.Window, Assert.Single(Shaded(ShadeFalls.OnCamera).Windows(date, SkyCover.Clear)).Window);
        var course = Shaded(null).Course(date, SkyCover.Clear);
        Assert.Contains(course, point => !point.OnFacade && point.ExposureSeconds > Day(field, 0, 52.5).Course(date, SkyCover.Clear).First(other => other.Hours == point.Hours).ExposureSeconds * 1.5);
    }

    [Fact]
    public async Task The_form_takes_the_height_from_the_device_and_the_page_says_what_hides_the_sun()
    {
        using var field = new FieldContext();
        await field.LoadedSheetAsync();
        var place = Place(0, 52.5) with { Place = field.Session.NewId() };
        await field.Session.AppendAsync(place);
        var form = field.Render<PlacePage>(parameters => parameters.Add(p => p.IdText, place.Place.ToString()));
        form.Find("#shade-add").Click();
        form.Find("#shade-0-name").Input("row of poplars");
        AngleSharp.Dom.IElement Button(string text) => form.FindAll("button").First(button => button.TextContent.Contains(text, StringComparison.Ordinal));
        Task SightAsync(double tilt, double? bearing) => form.InvokeAsync(() => field.Level.OnReading!(new LevelReading(tilt, 0, bearing)));
        Button("Sight it").Click();
        await SightAsync(-3, 149.6);
        Button("Left edge: 150°").Click();
        Button("Top, in its middle: −3°").Click();
        Assert.Contains("below the horizon", form.Find("#shade-0").TextContent, StringComparison.Ordinal);
        await SightAsync(1, 210.2);
        Button("Right edge: 210°").Click();
        await SightAsync(80.2, null);
        Button("Top, in its middle: 80°").Click();
        Button("Done").Click();
        Assert.Equal(("150", "210"), (form.Find("#shade-0-left").GetAttribute("value"), form.Find("#shade-0-right").GetAttribute("value")));
        Assert.Equal("80", form.Find("#shade-0-top").GetAttribute("value"));
        Assert.Null(field.Level.OnReading);
        await form.Find("form").SubmitAsync();
        var kept = Assert.Single(field.Session.Ledger.Places.Find(place.Place)!.Body.Shades!);
        Assert.Equal(new PlaceShade { Name = "row of poplars", LeftDegrees = 150, RightDegrees = 210, TopDegrees = 80, Falls = ShadeFalls.OnFacade }, kept);
        var page = field.Render<LightPage>(parameters => parameters.Add(p => p.IdText, place.Place.ToString()));
        Assert.Contains("Row of poplars shades the facade while the sun is between 150° and 210° and lower than 80°.", page.Find("#shades").TextContent, StringComparison.Ordinal);
        form = field.Render<PlacePage>(parameters => parameters.Add(p => p.IdText, place.Place.ToString()));
        Button("Remove it").Click();
        await form.Find("form").SubmitAsync();
        Assert.Null(field.Session.Ledger.Places.Find(place.Place)!.Body.Shades);
    }

    private static PlaceDefined Place(double faces, double latitude) => new()
    {
        Place = Ulid.From(DateTimeOffset.UnixEpoch, new byte[10]), Name = "Elevator", LatitudeDegrees = latitude, LongitudeDegrees = 5.25, FacesDegrees = faces, ReflectancePercent = 40,
    };

    private static PlaceDay Day(FieldContext field, double faces, double latitude)
        => PlaceDay.Of(Place(faces, latitude), FieldContext.BoxA, FieldContext.Positive, field.Services.GetRequiredService<Clock>())!;

    /// <summary>An hour east of Greenwich, two from an instant on.</summary>
    private sealed class SpringZone : IZone
    {
        public static readonly DateTimeOffset Change = new(2026, 3, 29, 1, 0, 0, TimeSpan.Zero);

        public TimeSpan OffsetAt(DateTimeOffset instant) => TimeSpan.FromHours(instant < Change ? 1 : 2);
    }
}
