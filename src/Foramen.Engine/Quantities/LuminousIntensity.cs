namespace Foramen.Engine.Quantities;

/// <summary>Luminous intensity: light that a lamp sends in one direction, in candela.</summary>
/// <remarks>Range 0 to 1e9 cd; anything else is refused. The default value is zero. Ordered by size. Immutable.</remarks>
public readonly record struct LuminousIntensity : IComparable<LuminousIntensity>
{
    /// <summary>Smallest value accepted, in candela.</summary>
    public const double Min = 0;

    /// <summary>Largest value accepted, in candela.</summary>
    public const double Max = 1e9;

    private LuminousIntensity(double value) => Candelas = value;

    /// <summary>The value in candela.</summary>
    public double Candelas { get; }

    /// <summary>From a number in candela.</summary>
    /// <exception cref="RefusalException">Not a finite number in the range.</exception>
    public static LuminousIntensity FromCandelas(double value) => new(Guard.Within(value, Min, Max, "the luminous intensity", "cd"));

    /// <inheritdoc/>
    public int CompareTo(LuminousIntensity other) => Candelas.CompareTo(other.Candelas);

    /// <summary>Whether the left is smaller.</summary>
    public static bool operator <(LuminousIntensity left, LuminousIntensity right) => left.Candelas < right.Candelas;

    /// <summary>Whether the left is smaller or equal.</summary>
    public static bool operator <=(LuminousIntensity left, LuminousIntensity right) => left.Candelas <= right.Candelas;

    /// <summary>Whether the left is larger.</summary>
    public static bool operator >(LuminousIntensity left, LuminousIntensity right) => left.Candelas > right.Candelas;

    /// <summary>Whether the left is larger or equal.</summary>
    public static bool operator >=(LuminousIntensity left, LuminousIntensity right) => left.Candelas >= right.Candelas;

    /// <summary>The value with its unit, in the current culture.</summary>
    public override string ToString() => $"{Candelas:0.####} cd".TrimEnd();
}
