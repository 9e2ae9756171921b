using System.Globalization;
using Foramen.Cli.Output;
using Foramen.Engine.Exposure;

namespace Foramen.Cli.Scenes;

/// <summary>From a forecast to its report, and from the report to words.</summary>
internal static class ExposeReporting
{
    public static ExposeReport Report(SceneSetup scene, ExposureForecast forecast, Bracket? bracket) => new()
    {
        ExposureSeconds = forecast.Exposure.Time.Seconds,
        FlashSeconds = forecast.Exposure.Flash.Seconds,
        FlashFraction = forecast.FlashFraction,
        FlashGainStops = forecast.FlashGain.Value,
        Odds = forecast.Odds.Fraction,
        LimitedBy = ReportWords.Camel(forecast.LimitedBy),
        Limits = [.. forecast.Limits.Select(limit => new LimitReport(ReportWords.Camel(limit.Source), limit.OddsWithout.Fraction, limit.Share))],
        SpreadStops = forecast.TotalSpread.Value,
        Tones = [.. forecast.Tones.Select((tone, i) => Tone(scene, i, tone))],
        Bracket = bracket is null ? null : new BracketReport(
            bracket.First.Time.Seconds, bracket.Second.Time.Seconds, bracket.Spacing.Value, bracket.OddsOfOne.Fraction),
        Camera = scene.Camera.Name,
        FNumber = scene.Camera.FNumber.Value,
        Paper = scene.Paper.Name,
        Light = scene.Light.Name,
        LightKelvin = scene.Light.Temperature.Kelvin,
        Assumptions = scene.Assumptions,
    };

    public static void Write(Page page, ExposeReport report)
    {
        var culture = CultureInfo.CurrentCulture;
        page.Line(string.Create(culture, $"{report.Camera} (f/{report.FNumber:0}), {report.Paper}, {report.Light}"));
        page.Line();
        page.Line("  Open the hole for " + ReportWords.Spoken(report.ExposureSeconds));
        page.Line(report.FlashSeconds > 0
            ? string.Create(culture, $"  after a flash of {ReportWords.Spoken(report.FlashSeconds)} ({report.FlashFraction * 100:0} % of the first visible tone; shows tones {report.FlashGainStops:0.0} stops fainter)")
            : "  without a flash");
        page.Line(string.Create(culture, $"  Odds of a keeper {report.Odds * 100:0} %, limited by {ReportWords.Words(report.LimitedBy)}; the exposure is known to ±{report.SpreadStops:0.0} stops (1 sd)"));
        if (report.Bracket is { } bracket)
        {
            page.Line(string.Create(culture, $"  Two sheets, {ReportWords.Spoken(bracket.FirstSeconds)} and {ReportWords.Spoken(bracket.SecondSeconds)}: {bracket.OddsOfOne * 100:0} % that one is a keeper"));
        }

        page.Line();
        page.Table(
            ["tone", "wanted", "cd/m²", "to the paper", "at its place", "density", "from aim", "chance", "outcome"],
            report.Tones.Select(tone => (IReadOnlyList<string>)
            [
                tone.Name + (tone.OnSheet ? "" : " (beside the sheet)"),
                ReportWords.Words(tone.Rendering),
                Bound(tone.Reading) + tone.LuminanceCdPerM2.ToString("0", culture),
                string.Create(culture, $"{tone.ColourStops:+0.0;-0.0;0.0} stops"),
                string.Create(culture, $"{tone.FalloffStops:0.0} stops"),
                string.Create(culture, $"{tone.Density:0.00} ± {tone.DensitySd:0.00}"),
                tone.FromAimStops is { } off ? string.Create(culture, $"{off:+0.0;-0.0;0.0} stops") : "",
                string.Create(culture, $"{tone.ChanceAsWanted * 100:0} %"),
                ReportWords.Words(tone.Outcome),
            ]));
        foreach (var assumption in report.Assumptions)
        {
            page.Note(assumption);
        }
    }

    private static ToneReport Tone(SceneSetup scene, int index, ToneForecast forecast)
    {
        var tone = scene.Tones[index];
        return new ToneReport
        {
            Name = tone.Name,
            Rendering = ReportWords.Camel(tone.Rendering),
            LuminanceCdPerM2 = tone.Luminance.CandelasPerSquareMetre,
            Reading = ReportWords.Camel(tone.ReadingLimit),
            ColourStops = Math.Log2(tone.ActinicRatio),
            FalloffStops = Math.Log2(forecast.Tone.Falloff),
            Density = forecast.Density.Value,
            DensitySd = forecast.DensitySpread,
            Outcome = ReportWords.Camel(forecast.Outcome),
            FromAimStops = forecast.FromAim?.Value,
            ChanceAsWanted = forecast.ChanceAsWanted.Fraction,
            OnSheet = scene.OnSheet[index],
        };
    }

    private static string Bound(string reading) => reading switch
    {
        "atLeast" => "≥ ",
        "atMost" => "≤ ",
        _ => "",
    };
}
