using Foramen.Engine.Quantities;

namespace Foramen.Engine.Camera;

/// <summary>
/// A direction from the hole towards the subject, as a unit vector in camera axes: x right, y up, z out of the hole. Immutable.
/// </summary>
public readonly record struct CameraDirection
{
    private CameraDirection(double x, double y, double z)
    {
        X = x;
        Y = y;
        Z = z;
    }

    /// <summary>Part to the right.</summary>
    public double X { get; }

    /// <summary>Part upwards.</summary>
    public double Y { get; }

    /// <summary>Part out of the hole.</summary>
    public double Z { get; }

    /// <summary>Angle to the right of the axis, seen from above.</summary>
    public Angle Azimuth => Angle.FromRadians(Math.Atan2(X, Z));

    /// <summary>Angle above the plane in which the axis and the horizontal lie.</summary>
    public Angle Elevation => Angle.FromRadians(Math.Asin(Math.Clamp(Y, -1, 1)));

    /// <summary>Angle to the hole's axis.</summary>
    public Angle OffAxis => Angle.FromRadians(Math.Atan2(double.Hypot(X, Y), Z));

    /// <summary>The direction of a vector of any length but zero.</summary>
    /// <exception cref="RefusalException">No direction: zero or not finite.</exception>
    public static CameraDirection FromVector(double x, double y, double z)
    {
        var length = Math.Sqrt((x * x) + (y * y) + (z * z));
        return double.IsFinite(length) && length > 0
            ? new CameraDirection(x / length, y / length, z / length)
            : throw new RefusalException("A direction needs a vector of finite length other than zero.");
    }

    /// <summary>The angle between two directions.</summary>
    public Angle AngleTo(CameraDirection other)
    {
        // By the half angle: exact for small angles, where the arc cosine is not.
        var difference = Math.Sqrt(Square(X - other.X) + Square(Y - other.Y) + Square(Z - other.Z));
        var sum = Math.Sqrt(Square(X + other.X) + Square(Y + other.Y) + Square(Z + other.Z));
        return Angle.FromRadians(2 * Math.Atan2(difference, sum));
    }

    private static double Square(double value) => value * value;
}
