namespace Foramen.Engine.Quantities;

/// <summary>An area of paper.</summary>
/// <remarks>Range 0 to 1e4 m²; anything else is refused. The default value is zero. Ordered by size. Immutable.</remarks>
public readonly record struct Area : IComparable<Area>
{
    /// <summary>Smallest value accepted, in square metres.</summary>
    public const double Min = 0;

    /// <summary>Largest value accepted, in square metres.</summary>
    public const double Max = 1e4;

    private Area(double value) => SquareMetres = value;

    /// <summary>The value in square metres.</summary>
    public double SquareMetres { get; }

    /// <summary>From a number in square metres.</summary>
    /// <exception cref="RefusalException">Not a finite number in the range.</exception>
    public static Area FromSquareMetres(double value) => new(Guard.Within(value, Min, Max, "the area", "m²"));

    /// <summary>The value in square centimetres.</summary>
    public double SquareCentimetres => SquareMetres * 1e4;

    /// <summary>From a number in square centimetres.</summary>
    /// <exception cref="RefusalException">Not a finite number in the range.</exception>
    public static Area FromSquareCentimetres(double value)
        => new(Guard.Within(value, Min, Max * 1e4, "the area", "cm²") / 1e4);

    /// <summary>The area of a rectangle.</summary>
    /// <exception cref="RefusalException">Larger than the range.</exception>
    public static Area FromSides(Length width, Length height) => FromSquareMetres(width.Metres * height.Metres);

    /// <inheritdoc/>
    public int CompareTo(Area other) => SquareMetres.CompareTo(other.SquareMetres);

    /// <summary>Whether the left is smaller.</summary>
    public static bool operator <(Area left, Area right) => left.SquareMetres < right.SquareMetres;

    /// <summary>Whether the left is smaller or equal.</summary>
    public static bool operator <=(Area left, Area right) => left.SquareMetres <= right.SquareMetres;

    /// <summary>Whether the left is larger.</summary>
    public static bool operator >(Area left, Area right) => left.SquareMetres > right.SquareMetres;

    /// <summary>Whether the left is larger or equal.</summary>
    public static bool operator >=(Area left, Area right) => left.SquareMetres >= right.SquareMetres;

    /// <summary>The value with its unit, in the current culture.</summary>
    public override string ToString() => $"{SquareMetres:0.####} m²".TrimEnd();
}
