namespace Foramen.Engine.Quantities;

/// <summary>A volume of liquid: a bottle, a top-up, a filling of the tank.</summary>
/// <remarks>Range 0 to 1e6 ml (a cubic metre); anything else is refused. The default value is zero. Ordered by size. Immutable.</remarks>
public readonly record struct Volume : IComparable<Volume>
{
    /// <summary>Smallest value accepted, in millilitres.</summary>
    public const double Min = 0;

    /// <summary>Largest value accepted, in millilitres.</summary>
    public const double Max = 1e6;

    private Volume(double value) => Millilitres = value;

    /// <summary>The value in millilitres.</summary>
    public double Millilitres { get; }

    /// <summary>From a number in millilitres.</summary>
    /// <exception cref="RefusalException">Not a finite number in the range.</exception>
    public static Volume FromMillilitres(double value) => new(Guard.Within(value, Min, Max, "the volume", "ml"));

    /// <summary>The value in litres.</summary>
    public double Litres => Millilitres / 1e3;

    /// <summary>From a number in litres.</summary>
    /// <exception cref="RefusalException">Not a finite number in the range.</exception>
    public static Volume FromLitres(double value) => new(Guard.Within(value, Min, Max / 1e3, "the volume", "l") * 1e3);

    /// <inheritdoc/>
    public int CompareTo(Volume other) => Millilitres.CompareTo(other.Millilitres);

    /// <summary>Whether the left is smaller.</summary>
    public static bool operator <(Volume left, Volume right) => left.Millilitres < right.Millilitres;

    /// <summary>Whether the left is smaller or equal.</summary>
    public static bool operator <=(Volume left, Volume right) => left.Millilitres <= right.Millilitres;

    /// <summary>Whether the left is larger.</summary>
    public static bool operator >(Volume left, Volume right) => left.Millilitres > right.Millilitres;

    /// <summary>Whether the left is larger or equal.</summary>
    public static bool operator >=(Volume left, Volume right) => left.Millilitres >= right.Millilitres;

    /// <summary>The value with its unit, in the current culture.</summary>
    public override string ToString() => $"{Millilitres:0.####} ml".TrimEnd();
}
