using Foramen.Engine.Quantities;

namespace Foramen.Engine.Light;

/// <summary>A flat surface in the open: which way it faces and how it leans. Nothing stands before it but the ground. Immutable.</summary>
public sealed record Facade
{
    private Facade(Angle bearing, Angle tilt)
    {
        (Bearing, Tilt) = (bearing, tilt);
        (SinTilt, CosTilt) = Math.SinCos(tilt.Radians);
        (EastPart, NorthPart) = (SinTilt * Math.Sin(bearing.Radians), SinTilt * Math.Cos(bearing.Radians));
    }

    /// <summary>Level ground, looking up.</summary>
    public static Facade Level { get; } = new(Angle.Zero, Angle.Zero);

    /// <summary>Bearing of what it faces, from true north through east, 0° to 360°. A wall on the south side of a house faces 180°.</summary>
    public Angle Bearing { get; }

    /// <summary>From level: 0° for ground, 90° for a wall, up to 180° for a ceiling.</summary>
    public Angle Tilt { get; }

    internal double SinTilt { get; }

    internal double CosTilt { get; }

    internal double EastPart { get; }

    internal double NorthPart { get; }

    /// <summary>An upright wall that faces a bearing.</summary>
    /// <param name="bearing">0° to 360°.</param>
    /// <exception cref="RefusalException">Outside the range.</exception>
    public static Facade Facing(Angle bearing) => Leaning(bearing, Angle.FromDegrees(90));

    /// <summary>A plane that faces a bearing and leans.</summary>
    /// <param name="bearing">0° to 360°.</param>
    /// <param name="tilt">0° (level) to 180°.</param>
    /// <exception cref="RefusalException">Outside the range.</exception>
    public static Facade Leaning(Angle bearing, Angle tilt) => new(
        Angle.FromDegrees(Guard.Within(bearing.Degrees, 0, 360, "the facade's bearing", "°")),
        Angle.FromDegrees(Guard.Within(tilt.Degrees, 0, 180, "the facade's tilt", "°")));

    /// <summary>Cosine of the angle at which light from there falls on it; negative from behind.</summary>
    public double CosineTo(SkyPosition position)
        => CosineTo(Math.Sin(position.Elevation.Radians), Math.Cos(position.Elevation.Radians), position.Azimuth.Radians);

    /// <summary>
    /// The angle between the light and the surface itself: 90° square on, small when it rakes and shows every unevenness, negative from behind.
    /// </summary>
    public Angle RakingAngle(SkyPosition position) => Angle.FromRadians(Math.Asin(Math.Clamp(CosineTo(position), -1, 1)));

    internal double CosineTo(double sinElevation, double cosElevation, double azimuth)
        => (CosTilt * sinElevation) + (cosElevation * ((EastPart * Math.Sin(azimuth)) + (NorthPart * Math.Cos(azimuth))));
}
