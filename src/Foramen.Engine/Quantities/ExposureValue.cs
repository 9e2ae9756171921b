namespace Foramen.Engine.Quantities;

/// <summary>Exposure value referred to ISO 100: lg2(N²/t) of the settings a meter gives at ISO 100.</summary>
/// <remarks>Range -30 to 40 EV; anything else is refused. The default value is zero. Ordered by size. Immutable.</remarks>
public readonly record struct ExposureValue : IComparable<ExposureValue>
{
    /// <summary>Smallest value accepted, in EV at ISO 100.</summary>
    public const double Min = -30;

    /// <summary>Largest value accepted, in EV at ISO 100.</summary>
    public const double Max = 40;

    private ExposureValue(double value) => AtIso100 = value;

    /// <summary>The value in EV at ISO 100.</summary>
    public double AtIso100 { get; }

    /// <summary>From a number in EV at ISO 100.</summary>
    /// <exception cref="RefusalException">Not a finite number in the range.</exception>
    public static ExposureValue FromAtIso100(double value) => new(Guard.Within(value, Min, Max, "the exposure value", "EV"));

    /// <inheritdoc/>
    public int CompareTo(ExposureValue other) => AtIso100.CompareTo(other.AtIso100);

    /// <summary>Whether the left is smaller.</summary>
    public static bool operator <(ExposureValue left, ExposureValue right) => left.AtIso100 < right.AtIso100;

    /// <summary>Whether the left is smaller or equal.</summary>
    public static bool operator <=(ExposureValue left, ExposureValue right) => left.AtIso100 <= right.AtIso100;

    /// <summary>Whether the left is larger.</summary>
    public static bool operator >(ExposureValue left, ExposureValue right) => left.AtIso100 > right.AtIso100;

    /// <summary>Whether the left is larger or equal.</summary>
    public static bool operator >=(ExposureValue left, ExposureValue right) => left.AtIso100 >= right.AtIso100;

    /// <summary>The value with its unit, in the current culture.</summary>
    public override string ToString() => $"{AtIso100:0.####} EV".TrimEnd();
}
