using System.Globalization;
using System.Text.RegularExpressions;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Light;

/// <summary>
/// Reads a meter reading as people say it: <c>EV 12.3</c> (at ISO 100), <c>3200 cd/m2</c>, <c>80000 lx</c> (a dome held in the light: the mid-tone it stands
/// for), or <c>f/16 1/125 s ISO 100</c>. Numbers use the point in every culture.
/// </summary>
public static partial class ReadingText
{
    private const string Examples = "EV 12.3, 3200 cd/m2, 80000 lx, or f/16 1/125 s ISO 100";

    /// <summary>The luminance a reading stands for.</summary>
    /// <param name="text">The reading.</param>
    /// <param name="meter">The meter it was taken with.</param>
    /// <param name="what">What was read, for the refusal.</param>
    /// <exception cref="RefusalException">Not a reading, or a value outside its range.</exception>
    public static Luminance Luminance(string text, LightMeter meter, string what)
    {
        var trimmed = (text ?? "").Trim();
        if (ExposureValuePattern().Match(trimmed) is { Success: true } ev)
        {
            return meter.LuminanceFrom(ExposureValue.FromAtIso100(Number(ev, "n")));
        }

        if (CandelaPattern().Match(trimmed) is { Success: true } candela)
        {
            return Quantities.Luminance.FromCandelasPerSquareMetre(Number(candela, "n"));
        }

        if (LuxPattern().Match(trimmed) is { Success: true } lux)
        {
            return meter.LuminanceFrom(Illuminance.FromLux(Number(lux, "n")), IncidentReceptor.Dome);
        }

        if (SettingsPattern().Match(trimmed) is { Success: true } settings)
        {
            return meter.LuminanceFrom(
                FNumber.FromValue(Number(settings, "f")),
                QuantityText.Duration(settings.Groups["t"].Value, "the meter's time"),
                CameraSpeed.FromIso(Number(settings, "s")));
        }

        throw new RefusalException($"The reading of {what} is \"{text}\"; write it as {Examples}.");
    }

    private static double Number(Match match, string group)
        => double.Parse(match.Groups[group].ValueSpan, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^EV\s*(?<n>[+-]?\d{1,3}(\.\d{1,6})?)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex ExposureValuePattern();

    [GeneratedRegex(@"^(?<n>\d{1,10}(\.\d{1,6})?)\s*(cd/m2|cd/m²)$", RegexOptions.CultureInvariant)]
    private static partial Regex CandelaPattern();

    [GeneratedRegex(@"^(?<n>\d{1,10}(\.\d{1,6})?)\s*(lx|lux)$", RegexOptions.CultureInvariant)]
    private static partial Regex LuxPattern();

    [GeneratedRegex(@"^f/?(?<f>\d{1,6}(\.\d{1,3})?)[\s,]+(?<t>[\d./]{1,20}\s*(s|ms|min))[\s,]+ISO\s*(?<s>\d{1,8}(\.\d{1,3})?)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex SettingsPattern();
}
