using System.CommandLine;
using System.Globalization;
using Foramen.Cli.Options;
using Foramen.Cli.Output;
using Foramen.Engine.Light;

namespace Foramen.Cli.Verbs;

/// <summary><c>foramen meter</c>: a reading in any form to luminance, and what the paper makes of the light's colour.</summary>
internal static class MeterVerb
{
    public static Command Create(Page page)
    {
        var reading = new Argument<string>("reading")
        {
            Description = "\"EV 12.3\" (at ISO 100), \"3200 cd/m2\", \"80000 lx\" (a dome held in the light), or \"f/16 1/125 s ISO 100\".",
        };
        var light = CommonOptions.Light();
        var k = CommonOptions.MeterConstant();
        var json = CommonOptions.Json();
        var verb = new Command(
            "meter",
            """
            Turns a meter reading into luminance.

            Try:
              foramen meter "EV 15"
              foramen meter "f/16 1/125 s ISO 100" --light "open shade"
              foramen meter "80000 lx" --json
            """)
        {
            reading, light, k, json,
        };
        verb.SetAction(parsed =>
        {
            var meter = CommonOptions.MeterOf(parsed.GetValue(k));
            var colour = CommonOptions.LightOf(parsed.GetValue(light));
            var luminance = ReadingText.Luminance(parsed.GetRequiredValue(reading), meter, "the light");
            var report = new MeterReport(
                luminance.CandelasPerSquareMetre,
                meter.ExposureValueOf(luminance).AtIso100,
                colour.Name,
                colour.Temperature.Kelvin,
                Actinic.StopsFromDaylight(colour.ToSpectrum(), PaperSensitivity.BlueSensitive).Value,
                meter.Constants.Reflected);
            return page.Show(parsed.GetValue(json), report, ReportJson.Default.MeterReport, () => Write(page, report));
        });
        return verb;
    }

    private static void Write(Page page, MeterReport report)
    {
        var culture = CultureInfo.CurrentCulture;
        page.Table(["", ""],
        [
            ["luminance", string.Create(culture, $"{report.LuminanceCdPerM2:0.##} cd/m²")],
            ["exposure value", string.Create(culture, $"{report.EvAtIso100:0.00} at ISO 100 (K = {report.MeterConstantK:0.##})")],
            ["light", string.Create(culture, $"{report.Light}, {report.LightKelvin:0} K")],
            ["for blue-sensitive paper", string.Create(culture, $"{report.ActinicStopsFromNoon:+0.00;-0.00;0.00} stops against noon light of the same reading")],
        ]);
    }
}
