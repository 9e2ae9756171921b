namespace Foramen.Engine.Quantities;

/// <summary>A length. Holes, focal distances, sheets and the way to the subject are all lengths.</summary>
/// <remarks>Range 0 to 1e9 m; anything else is refused. The default value is zero. Ordered by size. Immutable.</remarks>
public readonly record struct Length : IComparable<Length>
{
    /// <summary>Smallest value accepted, in metres.</summary>
    public const double Min = 0;

    /// <summary>Largest value accepted, in metres.</summary>
    public const double Max = 1e9;

    private Length(double value) => Metres = value;

    /// <summary>The value in metres.</summary>
    public double Metres { get; }

    /// <summary>From a number in metres.</summary>
    /// <exception cref="RefusalException">Not a finite number in the range.</exception>
    public static Length FromMetres(double value) => new(Guard.Within(value, Min, Max, "the length", "m"));

    /// <summary>The value in millimetres.</summary>
    public double Millimetres => Metres * 1e3;

    /// <summary>From a number in millimetres.</summary>
    /// <exception cref="RefusalException">Not a finite number in the range.</exception>
    public static Length FromMillimetres(double value) => new(Guard.Within(value, Min, Max * 1e3, "the length", "mm") / 1e3);

    /// <inheritdoc/>
    public int CompareTo(Length other) => Metres.CompareTo(other.Metres);

    /// <summary>Whether the left is smaller.</summary>
    public static bool operator <(Length left, Length right) => left.Metres < right.Metres;

    /// <summary>Whether the left is smaller or equal.</summary>
    public static bool operator <=(Length left, Length right) => left.Metres <= right.Metres;

    /// <summary>Whether the left is larger.</summary>
    public static bool operator >(Length left, Length right) => left.Metres > right.Metres;

    /// <summary>Whether the left is larger or equal.</summary>
    public static bool operator >=(Length left, Length right) => left.Metres >= right.Metres;

    /// <summary>The value with its unit, in the current culture.</summary>
    public override string ToString() => $"{Metres:0.####} m".TrimEnd();
}
