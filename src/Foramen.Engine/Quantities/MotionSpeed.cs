namespace Foramen.Engine.Quantities;

/// <summary>How fast something goes: walkers, cyclists, clouds.</summary>
/// <remarks>Range 0 to 1e4 m/s; anything else is refused. The default value is zero. Ordered by size. Immutable.</remarks>
public readonly record struct MotionSpeed : IComparable<MotionSpeed>
{
    /// <summary>Smallest value accepted, in metres per second.</summary>
    public const double Min = 0;

    /// <summary>Largest value accepted, in metres per second.</summary>
    public const double Max = 1e4;

    private MotionSpeed(double value) => MetresPerSecond = value;

    /// <summary>The value in metres per second.</summary>
    public double MetresPerSecond { get; }

    /// <summary>From a number in metres per second.</summary>
    /// <exception cref="RefusalException">Not a finite number in the range.</exception>
    public static MotionSpeed FromMetresPerSecond(double value) => new(Guard.Within(value, Min, Max, "the speed", "m/s"));

    /// <summary>From a number in kilometres per hour.</summary>
    /// <exception cref="RefusalException">Not a finite number in the range.</exception>
    public static MotionSpeed FromKilometresPerHour(double value) => new(Guard.Within(value, Min, Max * 3.6, "the speed", "km/h") / 3.6);

    /// <inheritdoc/>
    public int CompareTo(MotionSpeed other) => MetresPerSecond.CompareTo(other.MetresPerSecond);

    /// <summary>Whether the left is smaller.</summary>
    public static bool operator <(MotionSpeed left, MotionSpeed right) => left.MetresPerSecond < right.MetresPerSecond;

    /// <summary>Whether the left is smaller or equal.</summary>
    public static bool operator <=(MotionSpeed left, MotionSpeed right) => left.MetresPerSecond <= right.MetresPerSecond;

    /// <summary>Whether the left is larger.</summary>
    public static bool operator >(MotionSpeed left, MotionSpeed right) => left.MetresPerSecond > right.MetresPerSecond;

    /// <summary>Whether the left is larger or equal.</summary>
    public static bool operator >=(MotionSpeed left, MotionSpeed right) => left.MetresPerSecond >= right.MetresPerSecond;

    /// <summary>The value with its unit, in the current culture.</summary>
    public override string ToString() => $"{MetresPerSecond:0.####} m/s".TrimEnd();
}
