namespace Foramen.Engine.Quantities;

/// <summary>Reflection density, D = -lg R (ISO 5-4 geometry).</summary>
/// <remarks>Range 0 to 4 ; anything else is refused. The default value is zero. Ordered by size. Immutable.</remarks>
public readonly record struct Density : IComparable<Density>
{
    /// <summary>Smallest value accepted, in density units.</summary>
    public const double Min = 0;

    /// <summary>Largest value accepted, in density units.</summary>
    public const double Max = 4;

    private Density(double value) => Value = value;

    /// <summary>The value in density units.</summary>
    public double Value { get; }

    /// <summary>From a number in density units.</summary>
    /// <exception cref="RefusalException">Not a finite number in the range.</exception>
    public static Density FromValue(double value) => new(Guard.Within(value, Min, Max, "the density", ""));

    /// <summary>The density of a surface of this reflectance: D = -lg R.</summary>
    /// <exception cref="RefusalException">The reflectance is below 0.0001, darker than any paper.</exception>
    public static Density FromReflectance(Reflectance reflectance) => FromValue(Math.Max(0, -Math.Log10(reflectance.Fraction)));

    /// <inheritdoc/>
    public int CompareTo(Density other) => Value.CompareTo(other.Value);

    /// <summary>Whether the left is smaller.</summary>
    public static bool operator <(Density left, Density right) => left.Value < right.Value;

    /// <summary>Whether the left is smaller or equal.</summary>
    public static bool operator <=(Density left, Density right) => left.Value <= right.Value;

    /// <summary>Whether the left is larger.</summary>
    public static bool operator >(Density left, Density right) => left.Value > right.Value;

    /// <summary>Whether the left is larger or equal.</summary>
    public static bool operator >=(Density left, Density right) => left.Value >= right.Value;

    /// <summary>The value with its unit, in the current culture.</summary>
    public override string ToString() => $"{Value:0.####} ".TrimEnd();
}
