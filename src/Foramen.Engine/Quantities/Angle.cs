namespace Foramen.Engine.Quantities;

/// <summary>A plane angle. May be negative.</summary>
/// <remarks>Range -3600 to 3600 °; anything else is refused. The default value is zero. Ordered by size. Immutable.</remarks>
public readonly record struct Angle : IComparable<Angle>
{
    /// <summary>Smallest value accepted, in degrees.</summary>
    public const double Min = -3600;

    /// <summary>Largest value accepted, in degrees.</summary>
    public const double Max = 3600;

    private Angle(double value) => Degrees = value;

    /// <summary>The value in degrees.</summary>
    public double Degrees { get; }

    /// <summary>From a number in degrees.</summary>
    /// <exception cref="RefusalException">Not a finite number in the range.</exception>
    public static Angle FromDegrees(double value) => new(Guard.Within(value, Min, Max, "the angle", "°"));

    /// <summary>The value in radians.</summary>
    public double Radians => Degrees * (Math.PI / 180);

    /// <summary>No angle.</summary>
    public static Angle Zero => default;

    /// <summary>From a number in radians.</summary>
    /// <exception cref="RefusalException">Not a finite number in the range.</exception>
    public static Angle FromRadians(double value) => FromDegrees(value * (180 / Math.PI));

    /// <inheritdoc/>
    public int CompareTo(Angle other) => Degrees.CompareTo(other.Degrees);

    /// <summary>Whether the left is smaller.</summary>
    public static bool operator <(Angle left, Angle right) => left.Degrees < right.Degrees;

    /// <summary>Whether the left is smaller or equal.</summary>
    public static bool operator <=(Angle left, Angle right) => left.Degrees <= right.Degrees;

    /// <summary>Whether the left is larger.</summary>
    public static bool operator >(Angle left, Angle right) => left.Degrees > right.Degrees;

    /// <summary>Whether the left is larger or equal.</summary>
    public static bool operator >=(Angle left, Angle right) => left.Degrees >= right.Degrees;

    /// <summary>The value with its unit, in the current culture.</summary>
    public override string ToString() => $"{Degrees:0.####} °".TrimEnd();
}
