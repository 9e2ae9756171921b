using System.Globalization;

namespace Foramen.Engine.Quantities;

/// <summary>Keeps NaN, infinities and absurd values out at every border.</summary>
public static class Guard
{
    /// <summary>Returns <paramref name="value"/> if it lies in [<paramref name="min"/>, <paramref name="max"/>].</summary>
    /// <param name="value">The number to check, in <paramref name="unit"/>.</param>
    /// <param name="min">Smallest value allowed, inclusive.</param>
    /// <param name="max">Largest value allowed, inclusive.</param>
    /// <param name="what">What the number is, as the user would say it: "the hole's diameter".</param>
    /// <param name="unit">The unit of all three numbers; empty where there is none.</param>
    /// <exception cref="RefusalException">The value is not a finite number in the range.</exception>
    public static double Within(double value, double min, double max, string what, string unit = "")
    {
        if (double.IsFinite(value) && value >= min && value <= max)
        {
            return value;
        }

        var tail = unit.Length == 0 ? "" : " " + unit;
        throw new RefusalException(string.Create(
            CultureInfo.InvariantCulture,
            $"{Capital(what)} is {Plain(value)}{tail}; it should be between {Plain(min)} and {Plain(max)}{tail}."));
    }

    private static string Plain(double value) => value.ToString("0.######", CultureInfo.InvariantCulture);

    private static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];
}
