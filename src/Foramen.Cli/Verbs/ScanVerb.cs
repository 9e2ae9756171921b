using System.CommandLine;
using System.Globalization;
using Foramen.Cli.Options;
using Foramen.Cli.Output;
using Foramen.Cli.Scans;
using Foramen.Cli.Scenes;
using Foramen.Cli.Time;
using Foramen.Engine.Camera;
using Foramen.Engine.Exposure;
using Foramen.Engine.Light;
using Foramen.Engine.Print;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using Foramen.Exif;
using Foramen.Imaging;

namespace Foramen.Cli.Verbs;

/// <summary><c>foramen scan</c>: a real print, measured on a scan or a photograph of it and laid over the predicted one.</summary>
internal static class ScanVerb
{
    private const int LongSide = 900;
    private static readonly Length UsualRim = Length.FromMillimetres(4);

    public static Command Create(Page page)
    {
        var scene = new SceneOptions();
        var print = new PrintScanOptions();
        var time = new Option<string>("--time") { Description = "How long the hole was open, such as 90s.", HelpName = "TIME", Required = true };
        var flash = new Option<string?>("--flash") { Description = "How long the flash was, such as 3s; none where nothing is said.", HelpName = "TIME" };
        var output = new Option<string?>("--out") { Description = "PNG file to write: the print straightened and upright, a negative turned into its positive; says how the print was made as Exif and XMP.", HelpName = "FILE" };
        var opened = new Option<string?>("--opened") { Description = "When the hole was opened, for the file of --out: an instant with its offset, such as 2026-05-09T15:32+02:00.", HelpName = "INSTANT" };
        var place = new Option<double[]>("--place")
        {
            Description = "Latitude and longitude in degrees, north and east positive, to be written into the file of --out; without it no place goes out.", HelpName = "LAT LON", Arity = new ArgumentArity(2, 2), AllowMultipleArgumentsPerToken = true,
        };
        var moving = new Option<string?>("--moving") { Description = "File of what moved during the exposure, as for foramen preview.", HelpName = "FILE" };
        var difference = new Option<string?>("--difference") { Description = "PNG file to write: middle grey where the print is as predicted, 40 codes lighter for each stop that it came out lighter; black where it cannot be told.", HelpName = "FILE" };
        var json = CommonOptions.Json();
        var verb = new Command(
            "scan",
            """
            Measures a print on a scan or photograph of it: finds the sheet, straightens it, reads the density of each tone, and lays it over the predicted print.
            Lay the print flat on plain ground that is clearly darker or lighter than its rim, with every automatic correction off. Densities are to be trusted to about 1.7.

            Try:
              foramen scan demo/canal-basin.jpg --print demo/scans/print.jpg --ground 0.35 --camera demo/kit/box-a.json --paper demo/kit/grade-2.json --time 60s
              foramen scan demo/canal-basin.jpg --print demo/scans/print.jpg --known "90,110 = 0.06" --known "90,230 = 1.35" --camera demo/kit/box-a.json --paper demo/kit/grade-2.json --time 60s --out real.png --difference off.png
            """);
        scene.AddTo(verb);
        print.AddTo(verb);
        foreach (var option in new Option[] { time, flash, output, opened, place, moving, difference, json })
        {
            verb.Options.Add(option);
        }

        verb.SetAction((parsed, cancellation) => Task.Run(
            () =>
            {
                var setup = SceneSetup.Read(parsed, scene);
                var rim = parsed.GetValue(print.Rim) is { } width ? QuantityText.Length(width, "the rim") : UsualRim;
                var given = new SheetExposure(
                    QuantityText.Duration(parsed.GetRequiredValue(time), "the exposure time"),
                    parsed.GetValue(flash) is { } flashed ? QuantityText.Duration(flashed, "the flash") : Duration.FromSeconds(0));
                var (picture, _) = ScanReader.Read(parsed.GetRequiredValue(print.Print));
                var setting = print.Read(parsed, picture);
                var light = PaperLight.Of(setup.Light.ToSpectrum(), setup.Paper.Sensitivity);
                var map = LuminanceMap.AsPaperSees(setup.PhotographWith(parsed, scene, LongSide), setup.Sight);
                var image = SheetImage.Make(map, setup.Projection, LongSide, PointSpread.Of(setup.Camera, light), page.Progress("print"), cancellation);
                (image, _) = MovingScene.Of(parsed.GetValue(moving), image, setup, given, setup.Camera.Hole.Diameter);
                var comparison = PrintComparison.Of(setting, image, setup.Paper.Curve, PrintExposure.Of(setup.Response, given, setup.Flash), rim, cancellation);
                var files = new List<string>();
                var facts = new PictureFacts
                {
                    ExposureTime = given.Time,
                    FNumber = setup.Camera.FNumber,
                    FocalDistance = setup.Camera.FocalDistance,
                    OpenedAt = parsed.GetValue(opened) is { } instant ? InstantText.Parse(instant, "The opening of the hole") : null,
                    Place = parsed.GetValue(place) is [var latitude, var longitude] ? GeographicPosition.FromDegrees(latitude, longitude) : null,
                };
                if (parsed.GetValue(output) is { } path)
                {
                    PrintWriter.WritePng(path, comparison.Print.PositiveCodes(setup.Paper.Curve), comparison.Print.Width, comparison.Print.Height, facts);
                    files.Add(path);
                }

                if (parsed.GetValue(difference) is { } differencePath)
                {
                    PrintWriter.WritePng(differencePath, comparison.DifferenceCodes(), comparison.Print.Width, comparison.Print.Height);
                    files.Add(differencePath);
                }

                var report = Report(setup, setup.Planner.Forecast(given), setting, comparison, files);
                return page.Show(parsed.GetValue(json), report, ReportJson.Default.ScanReport, () => Write(page, report));
            },
            cancellation));
        return verb;
    }

    private static ScanReport Report(
        SceneSetup setup, ExposureForecast forecast, PrintSetting setting, PrintComparison comparison, List<string> files)
    {
        var (right, up) = comparison.AimedOffDegrees(setup.Camera);
        PixelPoint[] corners = [setting.Corners.TopLeft, setting.Corners.TopRight, setting.Corners.BottomRight, setting.Corners.BottomLeft];
        return new ScanReport
        {
            Files = files,
            Corners = [.. corners.Select(corner => (IReadOnlyList<double>)[Math.Round(corner.X, 1), Math.Round(corner.Y, 1)])],
            QuarterTurns = comparison.Lie.Quarters,
            Mirrored = comparison.Lie.Mirrored,
            Agreement = comparison.Agreement,
            AimedRightDegrees = right,
            AimedUpDegrees = up,
            MedianOffStops = comparison.MedianOff?.Value,
            WithinHalfStop = comparison.WithinHalfStop,
            ExtraSpreadMm = comparison.Sharpness?.ExtraSpreadMillimetres,
            Tones = [.. setup.Tones.Select((tone, i) => Tone(setup, tone, forecast.Tones[i], comparison))],
            Doubts = [.. Doubts(comparison, setting.Scale)],
        };
    }

    private static ScanToneReport Tone(SceneSetup setup, Tone tone, ToneForecast planned, PrintComparison comparison)
    {
        var measured = comparison.ToneAt(tone, setup.Projection, setup.Paper.Curve);
        return new ScanToneReport
        {
            Name = tone.Name,
            Rendering = ReportWords.Camel(tone.Rendering),
            PlannedDensity = planned.Density.Value,
            Density = measured?.Density.Value,
            DensitySd = measured?.DensitySd,
            FromAimStops = measured?.FromAim?.Value,
            FromAimSdStops = measured?.FromAimSd?.Value,
            Outcome = measured is null ? null : ReportWords.Camel(measured.Outcome),
        };
    }

    private static IEnumerable<string> Doubts(PrintComparison comparison, ReflectanceScale scale)
    {
        if (scale.Densities == 1)
        {
            yield return "Only one density is known, so flare is not corrected and deep blacks read too light; name a dark patch too.";
        }

        if (comparison.Print.IsClippedLight)
        {
            yield return string.Create(CultureInfo.CurrentCulture, $"{comparison.Print.ClippedLight * 100:0} % of the print is clipped to white on the picture; take it again darker.");
        }

        if (comparison.Print.IsClippedDark)
        {
            yield return string.Create(CultureInfo.CurrentCulture, $"{comparison.Print.ClippedDark * 100:0} % of the print is clipped to black on the picture; take it again lighter.");
        }
    }

    private static void Write(Page page, ScanReport report)
    {
        var culture = CultureInfo.CurrentCulture;
        foreach (var file in report.Files)
        {
            page.Line(file);
        }

        page.Table(
            ["tone", "wanted", "expected", "measured", "from aim", "outcome"],
            report.Tones.Select(tone => (IReadOnlyList<string>)
            [
                tone.Name,
                ReportWords.Words(tone.Rendering),
                tone.PlannedDensity.ToString("0.00", culture),
                tone.Density is { } density ? string.Create(culture, $"{density:0.00} ± {tone.DensitySd:0.00}") : "beside the sheet",
                tone.FromAimStops is { } off ? string.Create(culture, $"{off:+0.0;-0.0;0.0} ± {tone.FromAimSdStops:0.0} stops") : "",
                tone.Outcome is { } outcome ? ReportWords.Words(outcome) : "",
            ]));
        page.Line();
        page.Line(report.MedianOffStops is { } middle
            ? string.Create(culture, $"The print is {middle:+0.0;-0.0;0.0} stops from the predicted one in the middle of its tones; {report.WithinHalfStop * 100:0} % of what can be told is within half a stop.")
            : "Nowhere do both prints show a tone, so the difference cannot be told.");
        page.Line(string.Create(
            culture, $"The camera was aimed {Aimed(report.AimedRightDegrees, "too far right", "too far left", culture)} and {Aimed(report.AimedUpDegrees, "too high", "too low", culture)} (agreement with the predicted print {report.Agreement:0.00} of 1)."));
        page.Line(report.ExtraSpreadMm is { } soft
            ? string.Create(culture, $"It is softer than predicted, by a spread of {soft:0.00} mm; the picture of the print has a part in that.")
            : "It is not softer than predicted, as far as its detail tells.");
        foreach (var doubt in report.Doubts)
        {
            page.Note(doubt);
        }
    }

    private static string Aimed(double degrees, string positive, string negative, CultureInfo culture)
        => string.Create(culture, $"{Math.Abs(degrees):0.0}° {(degrees >= 0 ? positive : negative)}");
}
