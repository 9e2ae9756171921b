namespace Foramen.Engine.Quantities;

/// <summary>Illuminance: light falling on a surface, in lux.</summary>
/// <remarks>Range 0 to 1e7 lx; anything else is refused. The default value is zero. Ordered by size. Immutable.</remarks>
public readonly record struct Illuminance : IComparable<Illuminance>
{
    /// <summary>Smallest value accepted, in lux.</summary>
    public const double Min = 0;

    /// <summary>Largest value accepted, in lux.</summary>
    public const double Max = 1e7;

    private Illuminance(double value) => Lux = value;

    /// <summary>The value in lux.</summary>
    public double Lux { get; }

    /// <summary>From a number in lux.</summary>
    /// <exception cref="RefusalException">Not a finite number in the range.</exception>
    public static Illuminance FromLux(double value) => new(Guard.Within(value, Min, Max, "the illuminance", "lx"));

    /// <inheritdoc/>
    public int CompareTo(Illuminance other) => Lux.CompareTo(other.Lux);

    /// <summary>Whether the left is smaller.</summary>
    public static bool operator <(Illuminance left, Illuminance right) => left.Lux < right.Lux;

    /// <summary>Whether the left is smaller or equal.</summary>
    public static bool operator <=(Illuminance left, Illuminance right) => left.Lux <= right.Lux;

    /// <summary>Whether the left is larger.</summary>
    public static bool operator >(Illuminance left, Illuminance right) => left.Lux > right.Lux;

    /// <summary>Whether the left is larger or equal.</summary>
    public static bool operator >=(Illuminance left, Illuminance right) => left.Lux >= right.Lux;

    /// <summary>The value with its unit, in the current culture.</summary>
    public override string ToString() => $"{Lux:0.####} lx".TrimEnd();
}
