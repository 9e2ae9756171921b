using Foramen.Engine.Camera;
using Foramen.Engine.Exposure;
using Foramen.Engine.Light;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using Foramen.Field.Time;
using Foramen.Journal.Bodies;
using Foramen.Journal.Kit;

namespace Foramen.Field.Outings;

/// <summary>The light at a place through a day and through a year: windows, the course of the exposure, and a first exposure without a meter.</summary>
public sealed class PlaceDay
{
    /// <summary>Minutes between two points of the chart.</summary>
    public const double StepMinutes = 15;

    /// <summary>Longest exposure that still counts as worth being there.</summary>
    public static Duration LongestExposure { get; } = Duration.FromMinutes(10);

    private readonly FacadeExposure? exposure;
    private readonly Clock clock;
    private readonly PinholeCamera? camera;
    private readonly PaperResponse? response;

    private PlaceDay(OutingPlace place, FacadeExposure? exposure, PinholeCamera? camera, PaperResponse? response, Clock clock)
    {
        this.exposure = exposure;
        (this.camera, this.response) = (camera, response);
        this.clock = clock;
        Place = place;
    }

    /// <summary>The place as the Engine knows it.</summary>
    public OutingPlace Place { get; }

    /// <summary>Whether exposure times are known: there are a camera and a paper.</summary>
    public bool HasExposure => exposure is not null;

    /// <summary>The light of a place; null while it has no coordinates or no bearing.</summary>
    /// <param name="place">As the journal describes it.</param>
    /// <param name="camera">For exposure times and the picture's edge; may be missing.</param>
    /// <param name="paper">For exposure times; may be missing.</param>
    /// <param name="clock">For the offset from UTC.</param>
    /// <exception cref="RefusalException">Camera or paper as written down cannot be used.</exception>
    public static PlaceDay? Of(PlaceDefined place, CameraDefinition? camera, PaperDefinition? paper, Clock clock)
    {
        if (place.LatitudeDegrees is not { } latitude || place.LongitudeDegrees is not { } longitude || place.FacesDegrees is not { } faces)
        {
            return null;
        }

        var box = camera?.ToCamera();
        var facade = Angle.FromDegrees(place.FacadeFacesDegrees ?? ((faces + 180) % 360));
        var spot = new OutingPlace
        {
            Name = place.Name,
            Position = GeographicPosition.FromDegrees(latitude, longitude),
            Facade = Facade.Facing(facade),
            Aim = box is null ? null : FrameAim.Towards(box, Angle.FromDegrees(faces)),
            ShadeOnFacade = Shade(place, ShadeFalls.OnFacade),
            ShadeOnHole = Shade(place, ShadeFalls.OnCamera),
        };
        if (place.ReflectancePercent is { } percent)
        {
            spot = spot with { Reflectance = Reflectance.FromFraction(percent / 100) };
        }

        // Dark surfaces are placed as mid-tones, light ones as highlights with texture.
        var rendering = spot.Reflectance.Fraction >= 0.5 ? Rendering.TexturedHighlight : Rendering.Mid;
        var response = paper is null ? null : PaperResponse.Of(paper.ToPaper(), LightColour.Noon);
        var exposure = box is null || response is null ? null : new FacadeExposure(box, response, rendering);
        return new PlaceDay(spot, exposure, box, paper is null ? null : PaperResponse.Of(paper.ToPaper(), LightColour.Lamp), clock);
    }

    /// <summary>What is worth asking for: sun on the facade, not in the picture, exposures under ten minutes where they are known.</summary>
    public WindowWish Wish(SkyCover cover) => new()
    {
        Cover = cover,
        SunOnFacade = cover != SkyCover.Overcast,
        LongestExposure = exposure is null ? null : LongestExposure,
    };

    /// <summary>The windows of a day.</summary>
    public IReadOnlyList<PlaceWindow> Windows(DateOnly date, SkyCover cover)
        => [.. WindowFinder.Find(Place, Wish(cover), exposure, LocalDays.Begin(date, clock), LocalDays.End(date, clock)).Select(Local)];

    /// <summary>The windows of a year under a clear sky.</summary>
    public IReadOnlyList<PlaceWindow> Year(int year)
        => [.. WindowFinder.Find(
            Place, Wish(SkyCover.Clear), exposure, LocalDays.Begin(new DateOnly(year, 1, 1), clock), LocalDays.Begin(new DateOnly(year + 1, 1, 1), clock)).Select(Local)];

    /// <summary>The course of a day, every quarter of an hour.</summary>
    public IReadOnlyList<DayPoint> Course(DateOnly date, SkyCover cover)
    {
        var (from, to) = (LocalDays.Begin(date, clock), LocalDays.End(date, clock));
        var points = new List<DayPoint>();
        for (var instant = from; instant <= to; instant = instant.AddMinutes(StepMinutes))
        {
            var standing = Place.Standing(instant);
            var seconds = exposure is not null && standing.Position.TrueElevation.Degrees > -6 ? exposure.TimeFor(Place.LuminanceAt(instant, cover)).Seconds : (double?)null;
            points.Add(new DayPoint((instant - from).TotalHours, standing.Position.Elevation.Degrees, standing.OnFacade, standing.InPicture, seconds));
        }

        return points;
    }

    /// <summary>The place as a stop of a day's plan under a clear sky.</summary>
    public OutingStop Stop(DateOnly date, DateTimeOffset from, DateTimeOffset to, int sheetsWanted)
        => OutingStop.At(Place, Windows(date, SkyCover.Clear), exposure, SkyCover.Clear, from, to, sheetsWanted);

    /// <summary>Rise, transit and set.</summary>
    public SkyDay Sun(DateOnly date)
    {
        var from = LocalDays.Begin(date, clock);
        return SkyDay.Of(from, LocalDays.End(date, clock) - from, Place.Position);
    }

    /// <summary>Where the sun stands now.</summary>
    public SunStanding Now => Place.Standing(clock.Now);

    /// <summary>A first exposure now, without a meter, with how far it may be off, stops; null without a camera and a paper or in the dark.</summary>
    public (Duration Time, Stops Spread)? FirstExposure(SkyCover cover)
    {
        if (exposure is null)
        {
            return null;
        }

        var sky = SkyLight.At(clock.Now, Place.Position, cover, Place.Ground);
        var reading = FirstReading.Of(sky, Place.Facade, Place.Reflectance, shade: Place.ShadeOnFacade);
        var time = exposure.TimeFor(reading.Luminance);
        return time.Seconds < TimeSpan.FromHours(4).TotalSeconds ? (time, reading.Spread) : null;
    }

    /// <summary>When sky and lamps are within a stop of each other on a day.</summary>
    /// <param name="date">The day.</param>
    /// <param name="lamplit">Luminance of what the lamps light.</param>
    public IReadOnlyList<LightWindow> Balances(DateOnly date, Luminance lamplit)
        => [.. DuskBalance.Find(Place.Position, lamplit, Stops.FromValue(1), LocalDays.Begin(date, clock), LocalDays.End(date, clock))
            .Select(window => new LightWindow(clock.At(window.Start), clock.At(window.End)))];

    /// <summary>How long a mid-tone of what lamps light takes; null without a camera and a paper.</summary>
    public NightExposure? LamplitExposure(Luminance lamplit) => camera is null || response is null ? null : NightExposure.Of(camera, response, lamplit, Rendering.Mid);

    private static IReadOnlyList<Obstacle> Shade(PlaceDefined place, ShadeFalls where)
        => [.. (place.Shades ?? []).Where(one => one.FallsOn(where)).Select(one => one.ToObstacle())];

    private PlaceWindow Local(PlaceWindow window) => window with
    {
        Window = new LightWindow(clock.At(window.Window.Start), clock.At(window.Window.End)),
        Best = clock.At(window.Best),
    };
}
