using System.CommandLine;
using System.Globalization;
using Foramen.Cli.Options;
using Foramen.Cli.Output;
using Foramen.Cli.Strips;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;

namespace Foramen.Cli.Verbs.Strips;

/// <summary><c>foramen strip flash</c>: the flash that first shows, and the flash to give in another light.</summary>
internal static class StripFlashVerb
{
    private static readonly double[] Fractions = [0, 0.25, 0.5, 0.75, 1, 1.25, 1.5];

    public static Command Create(Page page)
    {
        var paper = new Option<string>("--paper") { Description = "Paper file.", HelpName = "FILE", Required = true };
        var times = new Option<string>("--times") { Description = "Flash of each patch, shortest first: \"1s 1.4s 2s 2.8s 4s\".", HelpName = "LIST", Required = true };
        var first = new Option<int>("--first-visible") { Description = "The first patch that shows, dry, from 1.", HelpName = "N", Required = true };
        var lux = new Option<string?>("--lux") { Description = "Light on the strip, such as 0.05lx.", HelpName = "LUX" };
        var meter = new Option<string?>("--meter") { Description = "Reading of the white surface, such as \"EV 13\"; with --camera.", HelpName = "READING" };
        var camera = new Option<string?>("--camera") { Description = "Camera file; with --meter.", HelpName = "FILE" };
        var light = CommonOptions.Light();
        var target = new Option<string?>("--for-meter") { Description = "Reading of the white surface the flash will be given at; with --camera. The strip's own light where nothing is said.", HelpName = "READING" };
        var targetLux = new Option<string?>("--for-lux") { Description = "Or the light it will put on the sheet.", HelpName = "LUX" };
        var json = CommonOptions.Json();
        var verb = new Command(
            "flash",
            """
            The flash that first shows, from a strip made with flash alone; what any flash gains in tones that can be seen, and what it takes; and how
            long to flash in the light you will have. Ten seconds in shade and ten seconds in sun are not the same flash.

            Try:
              foramen strip flash --paper demo/kit/positive.json --times "2s 2.8s 4s 5.7s 8s" --first-visible 4 --meter "EV 15" --camera demo/kit/box-a.json --for-meter "EV 12"
            """)
        {
            paper, times, first, lux, meter, camera, light, target, targetLux, json,
        };
        verb.SetAction(parsed =>
        {
            var box = CommonOptions.PaperOf(parsed.GetRequiredValue(paper));
            var cameraFile = parsed.GetValue(camera);
            var onStrip = StripInput.Light(parsed.GetValue(lux), parsed.GetValue(meter), parsed.GetValue(lux) is null ? cameraFile : null, "the light of the flash");
            var strip = FlashStrip.Read(
                [.. StripInput.Times(parsed.GetRequiredValue(times)).Select(Duration.FromSeconds)],
                parsed.GetValue(first),
                onStrip,
                CommonOptions.LightOf(parsed.GetValue(light)));
            var threshold = strip.Effective(box.Sensitivity, box.Failure);
            var onSheet = parsed.GetValue(targetLux) is null && parsed.GetValue(target) is null
                ? onStrip
                : StripInput.Light(parsed.GetValue(targetLux), parsed.GetValue(target), parsed.GetValue(targetLux) is null ? cameraFile : null, "the light of the flash to come");
            var advice = FlashAdvice.For(PaperResponse.Of(box, strip.Light), onSheet, threshold);
            var report = new StripFlashReport
            {
                ThresholdSeconds = strip.Threshold.Seconds,
                ThresholdSdStops = strip.Spread.Value,
                AgainstCurveStops = Math.Log2(threshold.LuxSeconds / FlashEffect.Threshold(box.Curve).LuxSeconds),
                AdvisedFraction = advice.Trade.Effect.Fraction,
                AdvisedSeconds = advice.Time.Seconds,
                Trade = [.. Fractions.Select(fraction => Trade(FlashTrade.Of(box.Curve, fraction)))],
            };
            return page.Show(parsed.GetValue(json), report, ReportJson.Default.StripFlashReport, () => Write(page, report, box.Kind));
        });
        return verb;
    }

    private static StripFlashTradeReport Trade(FlashTrade trade)
        => new(trade.Effect.Fraction, trade.Effect.VisibleGain.Value, trade.TexturedRange.Value, trade.BaseChange, trade.FaintContrast);

    private static void Write(Page page, StripFlashReport report, PaperKind kind)
    {
        var culture = CultureInfo.CurrentCulture;
        page.Line(string.Create(culture, $"First shows after {report.ThresholdSeconds:0.0} s (± {report.ThresholdSdStops:0.00} stops), {Math.Abs(report.AgainstCurveStops):0.0} stops {(report.AgainstCurveStops < 0 ? "sooner" : "later")} than the paper's curve says."));
        page.Line(string.Create(culture, $"Flash for {report.AdvisedSeconds:0.0} s, {100 * report.AdvisedFraction:0} % of what first shows in that light."));
        page.Line();
        page.Table(
            ["flash", "fainter tones seen", "textured range", kind == PaperKind.NegativeWorking ? "fog" : "black lost", "contrast there"],
            report.Trade.Select(one => (IReadOnlyList<string>)
            [
                string.Create(culture, $"{100 * one.Fraction:0} %"),
                string.Create(culture, $"{one.VisibleGainStops:0.0} stops"),
                string.Create(culture, $"{one.TexturedRangeStops:0.0} stops"),
                one.BaseChange.ToString("0.000", culture),
                string.Create(culture, $"{100 * one.FaintContrast:0} %"),
            ]));
        if (Math.Abs(report.AgainstCurveStops) > 1)
        {
            page.Note("strip and curve are more than a stop apart; check the light of the flash, or fit the curve to a strip.");
        }
    }
}
