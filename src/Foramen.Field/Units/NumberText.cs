using System.Globalization;
using Foramen.Engine.Quantities;

namespace Foramen.Field.Units;

/// <summary>Numbers as people type and read them: point or comma for the decimals, a typographic minus allowed.</summary>
public static class NumberText
{
    /// <summary>Reads a number.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="min">Smallest sensible value.</param>
    /// <param name="max">Largest sensible value.</param>
    /// <param name="what">What it is, for the sentence.</param>
    /// <param name="unit">Its unit, for the sentence.</param>
    /// <exception cref="RefusalException">Not a number, or outside the range.</exception>
    public static double Read(string text, double min, double max, string what, string unit = "")
    {
        var plain = text.Trim().Replace(',', '.').Replace('−', '-');
        return double.TryParse(plain, NumberStyles.Float, CultureInfo.InvariantCulture, out var value)
            ? Guard.Within(value, min, max, what, unit)
            : throw new RefusalException(plain.Length == 0
                ? $"{char.ToUpperInvariant(what[0])}{what[1..]} is missing; type a number."
                : $"{char.ToUpperInvariant(what[0])}{what[1..]} should be a number, such as {Show((min + Math.Min(max, min + 10)) / 2)}.");
    }

    /// <summary>Writes a number with at most so many decimals, as this screen writes numbers.</summary>
    public static string Show(double value, int decimals = 2)
        => Math.Round(value, decimals).ToString("0." + new string('#', decimals), CultureInfo.CurrentCulture).Replace('-', '−');
}
