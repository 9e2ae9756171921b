namespace Foramen.Engine.Quantities;

/// <summary>The f-number: focal distance over the diameter of the hole or lens opening.</summary>
/// <remarks>Range 0.5 to 100000 ; anything else is refused. The default value (zero) is not a valid one and is never produced by a factory. Ordered by size. Immutable.</remarks>
public readonly record struct FNumber : IComparable<FNumber>
{
    /// <summary>Smallest value accepted, in times the diameter.</summary>
    public const double Min = 0.5;

    /// <summary>Largest value accepted, in times the diameter.</summary>
    public const double Max = 100000;

    private FNumber(double value) => Value = value;

    /// <summary>The value in times the diameter.</summary>
    public double Value { get; }

    /// <summary>From a number in times the diameter.</summary>
    /// <exception cref="RefusalException">Not a finite number in the range.</exception>
    public static FNumber FromValue(double value) => new(Guard.Within(value, Min, Max, "the f-number", ""));

    /// <summary>The f-number of a hole: distance over diameter.</summary>
    /// <exception cref="RefusalException">The ratio is outside the range.</exception>
    public static FNumber FromHole(Length diameter, Length distance) => FromValue(distance.Metres / diameter.Metres);

    /// <inheritdoc/>
    public int CompareTo(FNumber other) => Value.CompareTo(other.Value);

    /// <summary>Whether the left is smaller.</summary>
    public static bool operator <(FNumber left, FNumber right) => left.Value < right.Value;

    /// <summary>Whether the left is smaller or equal.</summary>
    public static bool operator <=(FNumber left, FNumber right) => left.Value <= right.Value;

    /// <summary>Whether the left is larger.</summary>
    public static bool operator >(FNumber left, FNumber right) => left.Value > right.Value;

    /// <summary>Whether the left is larger or equal.</summary>
    public static bool operator >=(FNumber left, FNumber right) => left.Value >= right.Value;

    /// <summary>The value with its unit, in the current culture.</summary>
    public override string ToString() => $"{Value:0.####} ".TrimEnd();
}
