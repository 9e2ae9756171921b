namespace Foramen.Engine.Quantities;

/// <summary>Correlated colour temperature of light.</summary>
/// <remarks>Range 1000 to 40000 K; anything else is refused. The default value (zero) is not a valid one and is never produced by a factory. Ordered by size. Immutable.</remarks>
public readonly record struct ColourTemperature : IComparable<ColourTemperature>
{
    /// <summary>Smallest value accepted, in kelvin.</summary>
    public const double Min = 1000;

    /// <summary>Largest value accepted, in kelvin.</summary>
    public const double Max = 40000;

    private ColourTemperature(double value) => Kelvin = value;

    /// <summary>The value in kelvin.</summary>
    public double Kelvin { get; }

    /// <summary>From a number in kelvin.</summary>
    /// <exception cref="RefusalException">Not a finite number in the range.</exception>
    public static ColourTemperature FromKelvin(double value) => new(Guard.Within(value, Min, Max, "the colour temperature", "K"));

    /// <inheritdoc/>
    public int CompareTo(ColourTemperature other) => Kelvin.CompareTo(other.Kelvin);

    /// <summary>Whether the left is smaller.</summary>
    public static bool operator <(ColourTemperature left, ColourTemperature right) => left.Kelvin < right.Kelvin;

    /// <summary>Whether the left is smaller or equal.</summary>
    public static bool operator <=(ColourTemperature left, ColourTemperature right) => left.Kelvin <= right.Kelvin;

    /// <summary>Whether the left is larger.</summary>
    public static bool operator >(ColourTemperature left, ColourTemperature right) => left.Kelvin > right.Kelvin;

    /// <summary>Whether the left is larger or equal.</summary>
    public static bool operator >=(ColourTemperature left, ColourTemperature right) => left.Kelvin >= right.Kelvin;

    /// <summary>The value with its unit, in the current culture.</summary>
    public override string ToString() => $"{Kelvin:0.####} K".TrimEnd();
}
