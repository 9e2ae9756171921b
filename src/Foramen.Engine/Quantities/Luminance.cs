namespace Foramen.Engine.Quantities;

/// <summary>Luminance: light sent by a surface towards the eye, in candelas per square metre.</summary>
/// <remarks>Range 0 to 1e10 cd/m²; anything else is refused. The default value is zero. Ordered by size. Immutable.</remarks>
public readonly record struct Luminance : IComparable<Luminance>
{
    /// <summary>Smallest value accepted, in candelas per square metre.</summary>
    public const double Min = 0;

    /// <summary>Largest value accepted, in candelas per square metre.</summary>
    public const double Max = 1e10;

    private Luminance(double value) => CandelasPerSquareMetre = value;

    /// <summary>The value in candelas per square metre.</summary>
    public double CandelasPerSquareMetre { get; }

    /// <summary>From a number in candelas per square metre.</summary>
    /// <exception cref="RefusalException">Not a finite number in the range.</exception>
    public static Luminance FromCandelasPerSquareMetre(double value) => new(Guard.Within(value, Min, Max, "the luminance", "cd/m²"));

    /// <inheritdoc/>
    public int CompareTo(Luminance other) => CandelasPerSquareMetre.CompareTo(other.CandelasPerSquareMetre);

    /// <summary>Whether the left is smaller.</summary>
    public static bool operator <(Luminance left, Luminance right) => left.CandelasPerSquareMetre < right.CandelasPerSquareMetre;

    /// <summary>Whether the left is smaller or equal.</summary>
    public static bool operator <=(Luminance left, Luminance right) => left.CandelasPerSquareMetre <= right.CandelasPerSquareMetre;

    /// <summary>Whether the left is larger.</summary>
    public static bool operator >(Luminance left, Luminance right) => left.CandelasPerSquareMetre > right.CandelasPerSquareMetre;

    /// <summary>Whether the left is larger or equal.</summary>
    public static bool operator >=(Luminance left, Luminance right) => left.CandelasPerSquareMetre >= right.CandelasPerSquareMetre;

    /// <summary>The value with its unit, in the current culture.</summary>
    public override string ToString() => $"{CandelasPerSquareMetre:0.####} cd/m²".TrimEnd();
}
