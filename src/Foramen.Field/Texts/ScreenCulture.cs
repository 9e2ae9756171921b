using System.Globalization;

namespace Foramen.Field.Texts;

/// <summary>
/// How numbers are written on this screen: the app carries no tables of the world's cultures, which would weigh more than the app, and asks the browser for the
/// two signs that matter.
/// </summary>
public static class ScreenCulture
{
    /// <summary>A culture that writes numbers with these signs; words and dates stay the app's own.</summary>
    /// <param name="decimalSign">Between units and tenths; a point where it is not one character.</param>
    /// <param name="groupSign">Between thousands; none where it is empty, longer than one character, or the same as the decimal sign.</param>
    public static CultureInfo Of(string decimalSign, string groupSign)
    {
        var culture = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        culture.NumberFormat.NumberDecimalSeparator = IsSign(decimalSign) ? decimalSign : ".";
        culture.NumberFormat.NumberGroupSeparator = IsSign(groupSign) && groupSign != culture.NumberFormat.NumberDecimalSeparator ? groupSign : "";
        return CultureInfo.ReadOnly(culture);
    }

    private static bool IsSign(string text) => text.Length == 1 && !char.IsAsciiDigit(text[0]) && text[0] is not ('-' or '+');
}
