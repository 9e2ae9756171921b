using System.Globalization;

namespace Foramen.Pages.Contrast;

/// <summary>A colour of a screen, sRGB, each part 0 to 255.</summary>
public readonly record struct ScreenColour(double Red, double Green, double Blue)
{
    /// <summary>Relative luminance, 0 to 1, as WCAG 2.2 defines it.</summary>
    public double Luminance => (0.2126 * Linear(Red)) + (0.7152 * Linear(Green)) + (0.0722 * Linear(Blue));

    /// <summary>Reads "#fff" or "#ffffff".</summary>
    /// <exception cref="PageException">It is neither.</exception>
    public static ScreenColour Parse(string text)
    {
        var digits = text.TrimStart('#');
        if (digits.Length == 3)
        {
            digits = string.Concat(digits.Select(digit => new string(digit, 2)));
        }

        return text.StartsWith('#') && digits.Length == 6 && int.TryParse(digits, NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out var all)
            ? new ScreenColour(all >> 16, (all >> 8) & 255, all & 255)
            : throw new PageException($"“{text}” is no colour; write #rgb or #rrggbb.");
    }

    /// <summary>Contrast ratio with another colour, 1 to 21, as WCAG 2.2 defines it; the same both ways.</summary>
    public double ContrastWith(ScreenColour other)
        => (Math.Max(Luminance, other.Luminance) + 0.05) / (Math.Min(Luminance, other.Luminance) + 0.05);

    /// <summary>This colour laid over another.</summary>
    /// <param name="ground">What shows through.</param>
    /// <param name="opacity">0 to 1; browsers blend the encoded values.</param>
    public ScreenColour Over(ScreenColour ground, double opacity)
    {
        double Mix(double over, double under) => Math.Round((opacity * over) + ((1 - opacity) * under));
        return new ScreenColour(Mix(Red, ground.Red), Mix(Green, ground.Green), Mix(Blue, ground.Blue));
    }

    private static double Linear(double part)
        => part / 255 <= 0.04045 ? part / 255 / 12.92 : Math.Pow(((part / 255) + 0.055) / 1.055, 2.4);
}
