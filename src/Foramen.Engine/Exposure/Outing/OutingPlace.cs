using Foramen.Engine.Camera;
using Foramen.Engine.Light;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Exposure;

/// <summary>A spot, what the camera faces there and what may hide the sun. Immutable.</summary>
public sealed record OutingPlace
{
    /// <summary>What it is called. 1 to 80 characters.</summary>
    /// <exception cref="RefusalException">Empty or too long.</exception>
    public required string Name
    {
        get;
        init => field = string.IsNullOrWhiteSpace(value) || value.Length > 80
            ? throw new RefusalException($"The place's name \"{value}\" should have 1 to 80 characters.")
            : value.Trim();
    }

    /// <summary>Where it is.</summary>
    public required GeographicPosition Position { get; init; }

    /// <summary>The surface photographed.</summary>
    public required Facade Facade { get; init; }

    /// <summary>The camera as it points there; null while that is open: then the sun is never in the picture nor on the hole.</summary>
    public FrameAim? Aim { get; init; }

    /// <summary>How much light the surface sends back; middle grey where nothing is said.</summary>
    public Reflectance Reflectance { get; init; } = Reflectance.FromFraction(WhiteCard.MidToneReflectance);

    /// <summary>How much the ground before it sends back.</summary>
    public Reflectance Ground { get; init; } = SkyLight.UsualGround;

    /// <summary>What may hide the sun from the facade, seen from the facade.</summary>
    public IReadOnlyList<Obstacle> ShadeOnFacade { get; init; } = [];

    /// <summary>What may hide the sun from the hole, seen from the camera.</summary>
    public IReadOnlyList<Obstacle> ShadeOnHole { get; init; } = [];

    /// <summary>Where the sun stands against frame and facade.</summary>
    public SunStanding Standing(DateTimeOffset instant)
    {
        var sun = Sun.At(instant, Position);
        if (Aim is { } aim)
        {
            return aim.Standing(sun, Facade, ShadeOnFacade, ShadeOnHole);
        }

        var raking = Facade.RakingAngle(sun);
        var up = sun.Elevation.Degrees > 0;
        return new SunStanding(sun, Angle.FromDegrees(180), raking, up, false, up && raking.Degrees > 0 && !Obstacle.AnyHides(ShadeOnFacade, sun), false);
    }

    /// <summary>The light on the facade under a sky, with what hides sun and moon taken into account.</summary>
    public FacadeLight LightAt(DateTimeOffset instant, SkyCover cover) => SkyLight.At(instant, Position, cover, Ground).On(Facade, ShadeOnFacade);

    /// <summary>The surface's luminance under a sky.</summary>
    public Luminance LuminanceAt(DateTimeOffset instant, SkyCover cover) => LightAt(instant, cover).LuminanceOf(Reflectance);
}
