namespace Foramen.Engine.Quantities;

/// <summary>Luminous exposure: illuminance on the paper times time, in lux seconds (H in ISO 6846).</summary>
/// <remarks>Range 0 to 1e10 lx s; anything else is refused. The default value is zero. Ordered by size. Immutable.</remarks>
public readonly record struct LuminousExposure : IComparable<LuminousExposure>
{
    /// <summary>Smallest value accepted, in lux seconds.</summary>
    public const double Min = 0;

    /// <summary>Largest value accepted, in lux seconds.</summary>
    public const double Max = 1e10;

    private LuminousExposure(double value) => LuxSeconds = value;

    /// <summary>The value in lux seconds.</summary>
    public double LuxSeconds { get; }

    /// <summary>From a number in lux seconds.</summary>
    /// <exception cref="RefusalException">Not a finite number in the range.</exception>
    public static LuminousExposure FromLuxSeconds(double value) => new(Guard.Within(value, Min, Max, "the exposure", "lx s"));

    /// <summary>Exposures of one paper add.</summary>
    public static LuminousExposure operator +(LuminousExposure left, LuminousExposure right) => FromLuxSeconds(left.LuxSeconds + right.LuxSeconds);

    /// <summary>The sum of two exposures.</summary>
    public static LuminousExposure Add(LuminousExposure left, LuminousExposure right) => left + right;

    /// <inheritdoc/>
    public int CompareTo(LuminousExposure other) => LuxSeconds.CompareTo(other.LuxSeconds);

    /// <summary>Whether the left is smaller.</summary>
    public static bool operator <(LuminousExposure left, LuminousExposure right) => left.LuxSeconds < right.LuxSeconds;

    /// <summary>Whether the left is smaller or equal.</summary>
    public static bool operator <=(LuminousExposure left, LuminousExposure right) => left.LuxSeconds <= right.LuxSeconds;

    /// <summary>Whether the left is larger.</summary>
    public static bool operator >(LuminousExposure left, LuminousExposure right) => left.LuxSeconds > right.LuxSeconds;

    /// <summary>Whether the left is larger or equal.</summary>
    public static bool operator >=(LuminousExposure left, LuminousExposure right) => left.LuxSeconds >= right.LuxSeconds;

    /// <summary>The value with its unit, in the current culture.</summary>
    public override string ToString() => $"{LuxSeconds:0.####} lx s".TrimEnd();
}
