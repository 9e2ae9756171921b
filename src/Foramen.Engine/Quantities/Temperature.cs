namespace Foramen.Engine.Quantities;

/// <summary>The temperature of a bath, a bottle or the air.</summary>
/// <remarks>Range -60 to 110 °C; anything else is refused. The default value is 0 °C. Ordered by warmth. Immutable. Whether a bath can work at it is for the bath to say.</remarks>
public readonly record struct Temperature : IComparable<Temperature>
{
    /// <summary>Smallest value accepted, in degrees Celsius.</summary>
    public const double Min = -60;

    /// <summary>Largest value accepted, in degrees Celsius.</summary>
    public const double Max = 110;

    private Temperature(double value) => Celsius = value;

    /// <summary>The value in degrees Celsius.</summary>
    public double Celsius { get; }

    /// <summary>From a number in degrees Celsius.</summary>
    /// <exception cref="RefusalException">Not a finite number in the range.</exception>
    public static Temperature FromCelsius(double value) => new(Guard.Within(value, Min, Max, "the temperature", "°C"));

    /// <summary>The value in degrees Fahrenheit.</summary>
    public double Fahrenheit => (Celsius * 1.8) + 32;

    /// <summary>The value in kelvin.</summary>
    public double Kelvin => Celsius + 273.15;

    /// <summary>From a number in degrees Fahrenheit.</summary>
    /// <exception cref="RefusalException">Not a finite number in the range.</exception>
    public static Temperature FromFahrenheit(double value)
        => new((Guard.Within(value, (Min * 1.8) + 32, (Max * 1.8) + 32, "the temperature", "°F") - 32) / 1.8);

    /// <inheritdoc/>
    public int CompareTo(Temperature other) => Celsius.CompareTo(other.Celsius);

    /// <summary>Whether the left is smaller.</summary>
    public static bool operator <(Temperature left, Temperature right) => left.Celsius < right.Celsius;

    /// <summary>Whether the left is smaller or equal.</summary>
    public static bool operator <=(Temperature left, Temperature right) => left.Celsius <= right.Celsius;

    /// <summary>Whether the left is larger.</summary>
    public static bool operator >(Temperature left, Temperature right) => left.Celsius > right.Celsius;

    /// <summary>Whether the left is larger or equal.</summary>
    public static bool operator >=(Temperature left, Temperature right) => left.Celsius >= right.Celsius;

    /// <summary>The value with its unit, in the current culture.</summary>
    public override string ToString() => $"{Celsius:0.####} °C".TrimEnd();
}
