using System.CommandLine;
using System.Globalization;
using Foramen.Cli.Kit;
using Foramen.Cli.Options;
using Foramen.Cli.Output;
using Foramen.Engine.Paper;
using Foramen.Journal.Kit;
using Foramen.Journal.Strips;

namespace Foramen.Cli.Verbs.Strips;

/// <summary><c>foramen strip fit</c>: curve, speed, range and index out of strips, with the doubt.</summary>
internal static class StripFitVerb
{
    public static Command Create(Page page)
    {
        var options = new StripFitOptions();
        var save = new Option<string?>("--save") { Description = "Write the box as it is known now to this paper file.", HelpName = "FILE" };
        var json = CommonOptions.Json();
        var verb = new Command(
            "fit",
            """
            Fits a paper's curve to one or more strips: speed, range, exposure index and contrast, each with the interval that holds the truth nine
            times in ten. What the strips cannot tell is refused, with the strip that would.

            Try:
              foramen strip fit strip.json --paper demo/kit/positive.json
              foramen strip fit strip.json --paper demo/kit/positive.json --save my-box.json --json
            """)
        {
            save, json,
        };
        options.AddTo(verb);
        verb.SetAction(parsed =>
        {
            var (box, strips) = options.Read(parsed, page);
            var fit = StripFitOptions.Fit(box, strips);
            var report = Report(fit);
            if (parsed.GetValue(save) is { } target)
            {
                KitFile.Save(target, FittedPaper.Describe(box, fit), KitJson.Default.PaperDefinition, page);
            }

            return page.Show(parsed.GetValue(json), report, ReportJson.Default.StripFitReport, () => Write(page, report));
        });
        return verb;
    }

    private static StripFitReport Report(StripFit fit) => new()
    {
        Kind = fit.Kind == PaperKind.NegativeWorking ? "negative" : "directPositive",
        DMin = fit.Curve.MinimumDensity.Value,
        DMax = fit.Curve.MaximumDensity.Value,
        IsoSpeed = fit.Speed is { } speed ? EstimateReport.Of(speed) : null,
        IsoRange = fit.Range is { } range ? EstimateReport.Of(range) : null,
        SteepestSlope = EstimateReport.Of(fit.SteepestSlope),
        ExposureIndex = EstimateReport.Of(fit.Index.Index),
        IndexAtSeconds = fit.Index.At.Seconds,
        IndexLightKelvin = fit.Index.Light.Temperature.Kelvin,
        SpeedSdStops = fit.Index.Spread.Value,
        Failure = StripFailureVerb.Report(fit.Failure),
        Scatter = fit.Scatter,
        Patches = [.. Patches(fit)],
        NextForCurve = StripNextReport.Of(StripAdvice.After(fit, StripGoal.Curve)),
        NextForFailure = StripNextReport.Of(StripAdvice.After(fit, StripGoal.Failure)),
    };

    private static IEnumerable<StripPatchReport> Patches(StripFit fit)
    {
        foreach (var patch in fit.FittedPatches)
        {
            yield return new StripPatchReport(patch.Strip + 1, patch.Time.Seconds, patch.Density.Value, patch.Fitted.Value, patch.Trust);
        }
    }

    private static void Write(Page page, StripFitReport report)
    {
        var culture = CultureInfo.CurrentCulture;
        string Interval(EstimateReport one, string format) => $"{one.Value.ToString(format, culture)}, 90 % sure of {one.Low.ToString(format, culture)} to {one.High.ToString(format, culture)}";
        var rows = new List<IReadOnlyList<string>>
        {
            (string[])["exposure index", string.Create(culture, $"{Interval(report.ExposureIndex, "0.00")}; at {report.IndexAtSeconds:0.#} s in light of {report.IndexLightKelvin:0} K")],
        };
        if (report.IsoSpeed is { } speed)
        {
            rows.Add((string[])["ISO paper speed", string.Create(culture, $"{Interval(speed, "0")}; series {IsoPaperMeasures.RoundSpeed(speed.Value):0} (lamp light, a second)")]);
        }

        rows.Add((string[])["range", report.IsoRange is { } range
            ? string.Create(culture, $"R {Interval(range, "0")}; {range.Value / (100 * Math.Log10(2)):0.0} stops")
            : "not told: the strip does not reach both ends of the tones"]);
        rows.Add((string[])["steepest slope", Interval(report.SteepestSlope, "0.00")]);
        rows.Add((string[])["density", string.Create(culture, $"{report.DMin:0.00} to {report.DMax:0.00}")]);
        rows.Add((string[])["speed known to", string.Create(culture, $"± {report.SpeedSdStops:0.00} stops (1 sd), the light's doubt included")]);
        rows.Add((string[])["failure", (report.Failure.Assumed ? "assumed: " : "found: ") + report.Failure.Law]);
        page.Table(["", ""], rows);
        page.Line();
        page.Table(
            ["patch", "time", "density", "curve", "believed"],
            report.Patches.Select((patch, i) => (IReadOnlyList<string>)
            [
                report.Patches.Any(one => one.Strip > 1) ? $"strip {patch.Strip}" : (i + 1).ToString(culture),
                patch.Seconds > 0 ? string.Create(culture, $"{patch.Seconds:0.0} s") : "–",
                patch.Density.ToString("0.00", culture),
                patch.Fitted.ToString("0.00", culture),
                string.Create(culture, $"{100 * patch.Trust:0} %"),
            ]));
        if (report.Scatter > 1.3)
        {
            page.Note(string.Create(culture, $"the patches scatter {report.Scatter:0.0} times as much as their readings should; the intervals are wider for it."));
        }

        page.Line("For the curve: " + report.NextForCurve.Sentence);
        if (report.Failure.Assumed)
        {
            page.Line("For the failure, which one strip cannot tell from speed: " + report.NextForFailure.Sentence);
        }
    }
}
