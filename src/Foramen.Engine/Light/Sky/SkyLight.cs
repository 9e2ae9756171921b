using Foramen.Engine.Quantities;

namespace Foramen.Engine.Light;

/// <summary>
/// The light of a moment under an open sky, without any meter: direct and sky light by the handbook's model, spread over the sky by the CIE's general sky,
/// dusk by the published curve of twilight, moonlight as weak sunlight through the same air. Immutable.
/// </summary>
/// <remarks>
/// Averages near sea level; houses and trees that hide sky are not looked at. Below the horizon the sky fades from the sun's side to an even one
/// at 12° down. Light of the moon is counted only when the sun is down. Towns light the night sky by far more than stars do.
/// </remarks>
public sealed class SkyLight
{
    /// <summary>Light of the sun above the air at its mean distance, lx: the handbook's 127.5 klx, for which its coefficients were made (later work gives 133.8).</summary>
    public const double SolarConstantLux = 127_500;

    internal const double FadedDegrees = 12;

    private readonly CelestialLight? moon;
    private readonly CelestialLight sun;

    private SkyLight(DateTimeOffset instant, GeographicPosition place, SkyCover cover, Reflectance ground, CelestialLight sun, CelestialLight? moon)
    {
        (Instant, Place, Cover, Ground, this.sun, this.moon) = (instant, place, cover, ground, sun, moon);
    }

    /// <summary>Reflectance of ground where nothing is said: dull grass or paving, 0.2 (common practice).</summary>
    public static Reflectance UsualGround { get; } = Reflectance.FromFraction(0.2);

    /// <summary>When.</summary>
    public DateTimeOffset Instant { get; }

    /// <summary>Where.</summary>
    public GeographicPosition Place { get; }

    /// <summary>What is in the sky.</summary>
    public SkyCover Cover { get; }

    /// <summary>Reflectance of the ground.</summary>
    public Reflectance Ground { get; }

    /// <summary>Where the sun stands.</summary>
    public SkyPosition SunPosition => sun.Position;

    /// <summary>Where the moon stands if it gives the light: up, with the sun down.</summary>
    public SkyPosition? MoonPosition => moon?.Position;

    /// <summary>Direct light on a surface square to sun or moon.</summary>
    public Illuminance DirectNormal => Illuminance.FromLux(sun.DirectNormalLux(Cover) + (moon?.DirectNormalLux(Cover) ?? 0));

    /// <summary>Light of the sky on level ground.</summary>
    public Illuminance DiffuseHorizontal => Illuminance.FromLux(sun.DiffuseHorizontalLux(Cover) + (moon?.DiffuseHorizontalLux(Cover) ?? 0));

    /// <summary>All light on level ground.</summary>
    public Illuminance GlobalHorizontal => Illuminance.FromLux(GlobalLux);

    private double GlobalLux
    {
        get
        {
            var level = DiffuseHorizontal.Lux + (sun.DirectNormalLux(Cover) * Math.Max(0, Math.Sin(sun.Position.Elevation.Radians)));
            return moon is { } up ? level + (up.DirectNormalLux(Cover) * Math.Sin(up.Position.Elevation.Radians)) : level;
        }
    }

    /// <summary>How even the sky has become: 0 by day, 1 with the sun 12° down.</summary>
    private double Faded => Math.Clamp(-sun.Position.TrueElevation.Degrees / FadedDegrees, 0, 1);

    /// <summary>The light of an instant.</summary>
    /// <param name="instant">1950 to 2050.</param>
    /// <param name="place">Where.</param>
    /// <param name="cover">What is in the sky.</param>
    /// <param name="ground">Reflectance of the ground; 0.2 if left out.</param>
    /// <param name="air">The air that bends the light; usual air for the height if left out.</param>
    /// <exception cref="RefusalException">The date is outside the years.</exception>
    public static SkyLight At(DateTimeOffset instant, GeographicPosition place, SkyCover cover, Reflectance? ground = null, Atmosphere? air = null)
    {
        var distance = Sun.DistanceAstronomicalUnits(instant);
        var sun = CelestialLight.Of(Sun.At(instant, place, air), SolarConstantLux / (distance * distance), cover.Sky);
        CelestialLight? moon = null;
        if (sun.Position.TrueElevation.Degrees < 0 && Moon.At(instant, place, air) is { TrueElevation.Degrees: >= 0, Elevation.Degrees: > 0 } up)
        {
            moon = CelestialLight.Of(up, Moon.AboveAirLux(instant), cover.Sky);
        }

        return new SkyLight(instant, place, cover, ground ?? UsualGround, sun, moon);
    }

    /// <summary>Luminance of the sky overhead.</summary>
    public Luminance ZenithLuminance => LuminanceAt(Angle.Zero, Angle.FromDegrees(90));

    /// <summary>Luminance of the sky in a direction, the sun's and moon's discs left out.</summary>
    /// <param name="azimuth">From true north through east.</param>
    /// <param name="elevation">0° to 90°.</param>
    /// <exception cref="RefusalException">Below the horizon.</exception>
    public Luminance LuminanceAt(Angle azimuth, Angle elevation)
    {
        var sin = Math.Sin(Guard.Within(elevation.Degrees, 0, 90, "the direction's elevation", "°") * (Math.PI / 180));
        double Of(CelestialLight source, double faded)
        {
            var shaped = Cover.Sky.Relative(sin, Math.Cos(azimuth.Radians - source.Position.Azimuth.Radians), source.SinElevation)
                / source.HorizontalShare;
            return source.DiffuseHorizontalLux(Cover) * (((1 - faded) * shaped) + (faded / Math.PI));
        }

        return Luminance.FromCandelasPerSquareMetre(Of(sun, Faded) + (moon is { } up ? Of(up, 0) : 0));
    }

    /// <summary>Light on a plane: direct times the cosine, the sky integrated over what the plane sees of it, and the ground as an even half.</summary>
    /// <param name="plane">The plane.</param>
    /// <param name="shade">What may hide sun and moon from it; the sky behind it counts as open.</param>
    public FacadeLight On(Facade plane, IReadOnlyList<Obstacle>? shade = null)
    {
        var (direct, sky) = (0.0, 0.0);
        Add(sun, Faded);
        if (moon is { } up)
        {
            Add(up, 0);
        }

        return new FacadeLight(
            Illuminance.FromLux(direct),
            Illuminance.FromLux(sky),
            Illuminance.FromLux(Ground.Fraction * GlobalLux * (1 - plane.CosTilt) / 2));

        void Add(CelestialLight source, double faded)
        {
            direct += Obstacle.AnyHides(shade, source.Position) ? 0 : source.DirectNormalLux(Cover) * Math.Max(0, plane.CosineTo(source.Position));
            var shaped = plane.SinTilt == 0 ? Math.Max(0, plane.CosTilt) : SkyDome.On(plane, Cover.Sky, source.SinElevation, source.Position.Azimuth.Radians) / source.HorizontalShare;
            sky += source.DiffuseHorizontalLux(Cover) * (((1 - faded) * shaped) + (faded * (1 + plane.CosTilt) / 2));
        }
    }
}
