namespace Foramen.Engine.Quantities;

/// <summary>A ratio of light in stops: one stop is a factor of two, lg 2 = 0.30103. May be negative.</summary>
/// <remarks>Range -60 to 60 stops; anything else is refused. The default value is zero. Ordered by size. Immutable.</remarks>
public readonly record struct Stops : IComparable<Stops>
{
    /// <summary>Smallest value accepted, in stops.</summary>
    public const double Min = -60;

    /// <summary>Largest value accepted, in stops.</summary>
    public const double Max = 60;

    private Stops(double value) => Value = value;

    /// <summary>The value in stops.</summary>
    public double Value { get; }

    /// <summary>From a number in stops.</summary>
    /// <exception cref="RefusalException">Not a finite number in the range.</exception>
    public static Stops FromValue(double value) => new(Guard.Within(value, Min, Max, "the difference", "stops"));

    /// <summary>The ratio this stands for, 2^stops.</summary>
    public double Ratio => Math.Pow(2, Value);

    /// <summary>No difference.</summary>
    public static Stops Zero => default;

    /// <summary>The stops of a positive ratio, lg2(ratio).</summary>
    /// <exception cref="RefusalException">The ratio is not a positive finite number.</exception>
    public static Stops FromRatio(double ratio) => FromValue(Math.Log2(ratio));

    /// <summary>Ratios multiply, so their stops add.</summary>
    public static Stops operator +(Stops left, Stops right) => FromValue(left.Value + right.Value);

    /// <summary>Ratios divide, so their stops subtract.</summary>
    public static Stops operator -(Stops left, Stops right) => FromValue(left.Value - right.Value);

    /// <summary>The inverse ratio.</summary>
    public static Stops operator -(Stops value) => FromValue(-value.Value);

    /// <summary>The sum of two differences.</summary>
    public static Stops Add(Stops left, Stops right) => left + right;

    /// <summary>The difference of two differences.</summary>
    public static Stops Subtract(Stops left, Stops right) => left - right;

    /// <summary>The inverse ratio.</summary>
    public static Stops Negate(Stops value) => -value;

    /// <summary>Independent spreads add as the root of the sum of squares.</summary>
    public static Stops RootSumSquare(params ReadOnlySpan<Stops> spreads)
    {
        var sum = 0.0;
        foreach (var spread in spreads)
        {
            sum += spread.Value * spread.Value;
        }

        return FromValue(Math.Sqrt(sum));
    }

    /// <inheritdoc/>
    public int CompareTo(Stops other) => Value.CompareTo(other.Value);

    /// <summary>Whether the left is smaller.</summary>
    public static bool operator <(Stops left, Stops right) => left.Value < right.Value;

    /// <summary>Whether the left is smaller or equal.</summary>
    public static bool operator <=(Stops left, Stops right) => left.Value <= right.Value;

    /// <summary>Whether the left is larger.</summary>
    public static bool operator >(Stops left, Stops right) => left.Value > right.Value;

    /// <summary>Whether the left is larger or equal.</summary>
    public static bool operator >=(Stops left, Stops right) => left.Value >= right.Value;

    /// <summary>The value with its unit, in the current culture.</summary>
    public override string ToString() => $"{Value:0.####} stops".TrimEnd();
}
