namespace Foramen.Engine.Quantities;

/// <summary>Reflectance factor relative to a perfect diffuser.</summary>
/// <remarks>Range 0 to 1 ; anything else is refused. The default value is zero. Ordered by size. Immutable.</remarks>
public readonly record struct Reflectance : IComparable<Reflectance>
{
    /// <summary>Smallest value accepted, in parts of one.</summary>
    public const double Min = 0;

    /// <summary>Largest value accepted, in parts of one.</summary>
    public const double Max = 1;

    private Reflectance(double value) => Fraction = value;

    /// <summary>The value in parts of one.</summary>
    public double Fraction { get; }

    /// <summary>From a number in parts of one.</summary>
    /// <exception cref="RefusalException">Not a finite number in the range.</exception>
    public static Reflectance FromFraction(double value) => new(Guard.Within(value, Min, Max, "the reflectance", ""));

    /// <summary>The reflectance of a surface of this density: R = 10^-D.</summary>
    public static Reflectance FromDensity(Density density) => new(Math.Pow(10, -density.Value));

    /// <inheritdoc/>
    public int CompareTo(Reflectance other) => Fraction.CompareTo(other.Fraction);

    /// <summary>Whether the left is smaller.</summary>
    public static bool operator <(Reflectance left, Reflectance right) => left.Fraction < right.Fraction;

    /// <summary>Whether the left is smaller or equal.</summary>
    public static bool operator <=(Reflectance left, Reflectance right) => left.Fraction <= right.Fraction;

    /// <summary>Whether the left is larger.</summary>
    public static bool operator >(Reflectance left, Reflectance right) => left.Fraction > right.Fraction;

    /// <summary>Whether the left is larger or equal.</summary>
    public static bool operator >=(Reflectance left, Reflectance right) => left.Fraction >= right.Fraction;

    /// <summary>The value with its unit, in the current culture.</summary>
    public override string ToString() => $"{Fraction:0.####} ".TrimEnd();
}
