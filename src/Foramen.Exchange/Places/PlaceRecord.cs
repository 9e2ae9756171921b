using Foramen.Engine.Camera;
using Foramen.Engine.Exposure;
using Foramen.Engine.Light;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;

namespace Foramen.Exchange.Places;

/// <summary>A place as a file has it: plain numbers, degrees and metres. In GeoJSON the position is the geometry and the rest are properties.</summary>
public sealed record PlaceRecord
{
    /// <summary>What it is called.</summary>
    public string? Name { get; init; }

    /// <summary>Latitude, degrees, north positive.</summary>
    public double? LatitudeDeg { get; init; }

    /// <summary>Longitude, degrees, east positive.</summary>
    public double? LongitudeDeg { get; init; }

    /// <summary>Height above sea level, m.</summary>
    public double? ElevationMetres { get; init; }

    /// <summary>Bearing that the camera points to, from true north, degrees.</summary>
    public double? CameraBearingDeg { get; init; }

    /// <summary>How far the camera is tilted up, degrees.</summary>
    public double? CameraTiltDeg { get; init; }

    /// <summary>upright or level.</summary>
    public string? Format { get; init; }

    /// <summary>Bearing that the surface photographed faces; straight to the camera where missing.</summary>
    public double? FacadeBearingDeg { get; init; }

    /// <summary>Its tilt from level; 90, an upright wall, where missing.</summary>
    public double? FacadeTiltDeg { get; init; }

    /// <summary>Part of the light that it sends back; 0.18 where missing.</summary>
    public double? Reflectance { get; init; }

    /// <summary>How it should come out: mid, open shadow or textured highlight; mid where missing.</summary>
    public string? Rendering { get; init; }

    /// <summary>Part of the light that the ground before it sends back; 0.2 where missing.</summary>
    public double? GroundReflectance { get; init; }

    /// <summary>What may hide the sun from the surface, seen from the surface.</summary>
    public IReadOnlyList<ShadeRecord>? ShadeOnFacade { get; init; }

    /// <summary>What may hide the sun from the hole, seen from the camera.</summary>
    public IReadOnlyList<ShadeRecord>? ShadeOnHole { get; init; }

    /// <summary>Sheets wanted there; 2 where missing.</summary>
    public int? Sheets { get; init; }

    /// <summary>Anything worth remembering.</summary>
    public string? Note { get; init; }

    /// <summary>The place, once all that is needed is there and sensible.</summary>
    /// <param name="camera">The camera to set up there, if any.</param>
    /// <exception cref="RefusalException">Something is missing or out of range; the sentence names the place.</exception>
    public OutingPlace ToPlace(PinholeCamera? camera = null)
    {
        var name = string.IsNullOrWhiteSpace(Name) ? throw new RefusalException("A place has no name; give it one.") : Name.Trim();
        try
        {
            if (LatitudeDeg is not { } latitude || LongitudeDeg is not { } longitude)
            {
                throw new RefusalException("The position is missing; give latitudeDeg and longitudeDeg.");
            }

            var facing = FacadeBearingDeg ?? (CameraBearingDeg is { } bearing ? (bearing + 180) % 360
                : throw new RefusalException("Nothing says what it faces; give facadeBearingDeg or cameraBearingDeg."));
            return new OutingPlace
            {
                Name = name,
                Position = GeographicPosition.FromDegrees(latitude, longitude, ElevationMetres ?? 0),
                Facade = Facade.Leaning(Degrees(facing, "the facade's bearing"), Degrees(FacadeTiltDeg ?? 90, "the facade's tilt")),
                Aim = camera is not null && CameraBearingDeg is { } towards
                    ? FrameAim.Towards(camera.TiltedTo(Degrees(CameraTiltDeg ?? 0, "the camera's tilt")), Degrees(towards, "the camera's bearing"), SheetFormatOf())
                    : null,
                Reflectance = Part(Reflectance ?? WhiteCard.MidToneReflectance, 0.01, "the reflectance"),
                Ground = Part(GroundReflectance ?? SkyLight.UsualGround.Fraction, 0, "the ground's reflectance"),
                ShadeOnFacade = [.. (ShadeOnFacade ?? []).Select(one => one.ToObstacle())],
                ShadeOnHole = [.. (ShadeOnHole ?? []).Select(one => one.ToObstacle())],
            };
        }
        catch (RefusalException refusal)
        {
            throw new RefusalException($"{name}: {refusal.Message}", refusal);
        }
    }

    /// <summary>How the surface should come out.</summary>
    /// <exception cref="RefusalException">Not one of the three that have an aim.</exception>
    public Rendering ToRendering() => Rendering switch
    {
        null or "mid" => Engine.Scene.Rendering.Mid,
        "open shadow" => Engine.Scene.Rendering.OpenShadow,
        "textured highlight" => Engine.Scene.Rendering.TexturedHighlight,
        _ => throw new RefusalException($"{Name}: The rendering is \"{Rendering}\"; it should be mid, open shadow or textured highlight."),
    };

    private SheetFormat? SheetFormatOf() => Format switch
    {
        null => null,
        "level" => SheetFormat.Level,
        "upright" => SheetFormat.Upright,
        _ => throw new RefusalException($"The format is \"{Format}\"; it should be level or upright."),
    };

    private static Angle Degrees(double value, string what) => Angle.FromDegrees(Guard.Within(value, -360, 360, what, "°"));

    private static Reflectance Part(double value, double least, string what) => Engine.Quantities.Reflectance.FromFraction(Guard.Within(value, least, 1, what));
}
