using System.Globalization;

namespace Foramen.Engine.Quantities;

/// <summary>
/// Reads quantities as people write them, always with a unit: <c>0.35 mm</c>, <c>102x127 mm</c>, <c>2 min</c>, <c>1/125 s</c>,
/// <c>12 deg</c>, <c>300 ml</c>, <c>20 C</c>. A number without its unit is refused, because a hole of "0.35" costs a sheet when it was inches.
/// Numbers use the point as decimal separator in every culture.
/// </summary>
public static class QuantityText
{
    private static readonly Dictionary<string, double> MetresPerUnit = new(StringComparer.Ordinal)
    {
        ["um"] = 1e-6,
        ["µm"] = 1e-6,
        ["mm"] = 1e-3,
        ["cm"] = 1e-2,
        ["m"] = 1,
        ["km"] = 1000,
        ["in"] = 0.0254,
        ["ft"] = 0.3048,
    };

    private static readonly Dictionary<string, double> SecondsPerUnit = new(StringComparer.Ordinal)
    {
        ["ms"] = 1e-3,
        ["s"] = 1,
        ["sec"] = 1,
        ["min"] = 60,
        ["h"] = 3600,
    };

    private static readonly Dictionary<string, double> MetresPerSecondPerUnit = new(StringComparer.Ordinal)
    {
        ["m/s"] = 1,
        ["km/h"] = 1 / 3.6,
        ["mph"] = 0.44704,
        ["kn"] = 1852 / 3600.0,
    };

    private static readonly Dictionary<string, double> DegreesPerUnit = new(StringComparer.Ordinal)
    {
        ["deg"] = 1,
        ["°"] = 1,
        ["rad"] = 180 / Math.PI,
    };

    private static readonly Dictionary<string, double> MillilitresPerUnit = new(StringComparer.Ordinal)
    {
        ["ml"] = 1,
        ["cl"] = 10,
        ["l"] = 1000,
    };

    // The factor only marks the scale here: the two scales have different zeros.
    private static readonly Dictionary<string, double> TemperatureScales = new(StringComparer.Ordinal)
    {
        ["°C"] = 1,
        ["C"] = 1,
        ["°F"] = 1,
        ["F"] = 1,
    };

    /// <summary>Reads a length such as <c>0.35 mm</c>.</summary>
    /// <param name="text">The text.</param>
    /// <param name="what">What it is, for the refusal: "the hole's diameter".</param>
    /// <exception cref="RefusalException">No number, no unit, an unknown unit, or out of range.</exception>
    public static Length Length(string text, string what)
        => Quantities.Length.FromMetres(NotNegative(Read(text, what, MetresPerUnit, "0.35 mm"), text, what));

    /// <summary>Reads a time such as <c>90 s</c>, <c>2 min</c> or <c>1/125 s</c>.</summary>
    /// <exception cref="RefusalException">No number, no unit, an unknown unit, or out of range.</exception>
    public static Duration Duration(string text, string what)
        => Quantities.Duration.FromSeconds(NotNegative(Read(text, what, SecondsPerUnit, "90 s"), text, what));

    /// <summary>Reads a speed such as <c>15 km/h</c> or <c>1.4 m/s</c>.</summary>
    /// <exception cref="RefusalException">No number, no unit, an unknown unit, or out of range.</exception>
    public static MotionSpeed MotionSpeed(string text, string what)
        => Quantities.MotionSpeed.FromMetresPerSecond(NotNegative(Read(text, what, MetresPerSecondPerUnit, "15 km/h"), text, what));

    /// <summary>Reads an angle such as <c>12 deg</c>.</summary>
    /// <exception cref="RefusalException">No number, no unit, an unknown unit, or out of range.</exception>
    public static Angle Angle(string text, string what)
        => Quantities.Angle.FromDegrees(Read(text, what, DegreesPerUnit, "12 deg"));

    /// <summary>Reads a volume such as <c>300 ml</c>.</summary>
    /// <exception cref="RefusalException">No number, no unit, an unknown unit, or out of range.</exception>
    public static Volume Volume(string text, string what)
        => Quantities.Volume.FromMillilitres(NotNegative(Read(text, what, MillilitresPerUnit, "300 ml"), text, what));

    /// <summary>Reads a temperature such as <c>20 C</c> or <c>68 °F</c>.</summary>
    /// <exception cref="RefusalException">No number, no unit, an unknown unit, or out of range.</exception>
    public static Temperature Temperature(string text, string what)
    {
        var degrees = Read(text, what, TemperatureScales, "20 C");
        return text.AsSpan().TrimEnd()[^1] == 'F'
            ? Quantities.Temperature.FromFahrenheit(degrees)
            : Quantities.Temperature.FromCelsius(degrees);
    }

    /// <summary>Reads a size such as <c>102x127 mm</c>: width, then height, one unit for both.</summary>
    /// <exception cref="RefusalException">Not two numbers with a unit.</exception>
    public static (Length Width, Length Height) Size(string text, string what)
    {
        var parts = (text ?? "").Trim().Split(['x', '×'], 2, StringSplitOptions.TrimEntries);
        if (parts.Length != 2 || parts[0].Length == 0)
        {
            throw new RefusalException($"{Start(what)} is \"{text}\"; write width and height with a unit, such as 102x127 mm.");
        }

        var height = Length(parts[1], what);
        var unit = parts[1].AsSpan().TrimStart("0123456789.+-eE/ ").Trim();
        var width = char.IsAsciiDigit(parts[0][^1]) || parts[0][^1] == '.' ? Length($"{parts[0]} {unit}", what) : Length(parts[0], what);
        return (width, height);
    }

    /// <summary>Reads a bare number, for things that have no unit such as an f-number or an exposure index.</summary>
    /// <exception cref="RefusalException">Not a finite number.</exception>
    public static double Number(string text, string what)
    {
        if (TryNumber((text ?? "").AsSpan().Trim(), out var value))
        {
            return value;
        }

        throw new RefusalException($"{Start(what)} is \"{text}\"; write a plain number such as 2.5.");
    }

    private static double Read(string text, string what, Dictionary<string, double> units, string example)
    {
        var trimmed = (text ?? "").AsSpan().Trim();
        var unitStart = trimmed.Length;
        while (unitStart > 0 && !char.IsAsciiDigit(trimmed[unitStart - 1]) && trimmed[unitStart - 1] != '.')
        {
            unitStart--;
        }

        var number = trimmed[..unitStart].Trim();
        var unit = trimmed[unitStart..].Trim().ToString();
        if (!TryNumber(number, out var value))
        {
            throw new RefusalException($"{Start(what)} is \"{text}\"; write a number with its unit, such as {example}.");
        }

        if (unit.Length == 0)
        {
            throw new RefusalException($"{Start(what)} is \"{text}\" without a unit; write it with one, such as {example}.");
        }

        if (!units.TryGetValue(unit, out var factor))
        {
            throw new RefusalException($"{Start(what)} is \"{text}\", and \"{unit}\" is not a unit used here; use {string.Join(", ", units.Keys)}.");
        }

        var result = value * factor;
        return double.IsFinite(result)
            ? result
            : throw new RefusalException($"{Start(what)} is \"{text}\", which is too large a number; write something like {example}.");
    }

    private static double NotNegative(double value, string text, string what)
        => value >= 0 ? value : throw new RefusalException($"{Start(what)} is \"{text}\"; it cannot be less than nothing.");

    private static bool TryNumber(ReadOnlySpan<char> text, out double value)
    {
        const NumberStyles Plain = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent;
        var slash = text.IndexOf('/');
        if (slash < 0)
        {
            return double.TryParse(text, Plain, CultureInfo.InvariantCulture, out value) && double.IsFinite(value);
        }

        value = 0;
        if (!double.TryParse(text[..slash].Trim(), Plain, CultureInfo.InvariantCulture, out var over)
            || !double.TryParse(text[(slash + 1)..].Trim(), Plain, CultureInfo.InvariantCulture, out var under))
        {
            return false;
        }

        value = over / under;
        return double.IsFinite(value);
    }

    private static string Start(string what) => what.Length == 0 ? what : char.ToUpperInvariant(what[0]) + what[1..];
}
