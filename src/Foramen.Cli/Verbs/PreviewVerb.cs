using System.CommandLine;
using System.Globalization;
using Foramen.Cli.Options;
using Foramen.Cli.Output;
using Foramen.Cli.Scenes;
using Foramen.Engine.Camera;
using Foramen.Engine.Exposure;
using Foramen.Engine.Paper;
using Foramen.Engine.Print;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using Foramen.Imaging;

namespace Foramen.Cli.Verbs;

/// <summary><c>foramen preview</c>: the predicted print as a picture, before a sheet is spent.</summary>
internal static class PreviewVerb
{
    private const int UsualLongSide = 1600;
    private const double BorderMillimetres = 4;

    public static Command Create(Page page)
    {
        var scene = new SceneOptions();
        var output = new Option<string>("--out") { Description = "PNG file to write: 8-bit grey, as the print looks.", HelpName = "FILE", Required = true };
        var tiff = new Option<string?>("--tiff") { Description = "Also a 16-bit grey TIFF, linear in reflectance, for measuring.", HelpName = "FILE" };
        var negative = new Option<string?>("--negative-out") { Description = "Also a PNG of the sheet as it comes out of the bath, for negative-working paper.", HelpName = "FILE" };
        var size = new Option<int>("--size") { Description = "Pixels on the long side, 200 to 6000.", DefaultValueFactory = _ => UsualLongSide };
        var time = new Option<string?>("--time") { Description = "Open the hole for this long instead of the recommendation, such as 90s.", HelpName = "TIME" };
        var flash = new Option<string?>("--flash") { Description = "Flash for this long instead of the recommendation, such as 3s.", HelpName = "TIME" };
        var mask = new Option<string?>("--mask") { Description = "Mask file, of a mask that lies in the light all the while; make one with foramen mask … --save FILE.", HelpName = "FILE" };
        var moving = new Option<string?>("--moving") { Description = "File of what moves during the exposure, such as demo/moving.json: what turns, passes, goes away, sways, flows, or a lamp.", HelpName = "FILE" };
        var held = new Option<bool>("--as-held") { Description = "Draw a direct positive as it is in the hand, the subject mirrored left for right; with a mask it always is, so that the mask reads right." };
        var json = CommonOptions.Json();
        var verb = new Command(
            "preview",
            """
            Draws the predicted print: perspective of the sheet, falloff, the softness of the hole, the paper's curve with flash and failure.
            What the photograph does not cover is hatched, never invented.

            Try:
              foramen preview demo/canal-basin.jpg --camera demo/kit/box-a.json --paper demo/kit/positive.json --out print.png
              foramen preview demo/canal-basin.jpg --camera demo/kit/box-a.json --paper demo/kit/positive.json --moving demo/moving.json --out print.png
              foramen preview demo/canal-basin.jpg --camera demo/kit/box-a.json --paper demo/kit/grade-2.json --out print.png --negative-out sheet.png --time 60s
            """);
        scene.AddTo(verb);
        foreach (var option in new Option[] { output, tiff, negative, size, time, flash, mask, moving, held, json })
        {
            verb.Options.Add(option);
        }

        verb.SetAction((parsed, cancellation) => Task.Run(
            () =>
            {
                var longSide = (int)Guard.Within(parsed.GetValue(size), 200, 6000, "the size of the print", "pixels");
                var negativePath = parsed.GetValue(negative);
                var setup = SceneSetup.Read(parsed, scene);
                if (negativePath is not null && setup.Paper.Kind != PaperKind.NegativeWorking)
                {
                    throw new RefusalException("A direct-positive sheet has no negative; leave out --negative-out.");
                }

                var forecast = Forecast(setup, parsed.GetValue(time), parsed.GetValue(flash));
                var light = PaperLight.Of(setup.Light.ToSpectrum(), setup.Paper.Sensitivity);
                var spread = PointSpread.Of(setup.Camera, light);
                var map = LuminanceMap.AsPaperSees(setup.PhotographWith(parsed, scene, longSide), setup.Sight);
                var image = SheetImage.Make(map, setup.Projection, longSide, spread, page.Progress("print"), cancellation);
                var spot = spread.DiameterHolding(0.8);
                (image, var regions) = MovingScene.Of(parsed.GetValue(moving), image, setup, forecast.Exposure, spot);
                var maskPath = parsed.GetValue(mask);
                if (maskPath is not null)
                {
                    image = image.Masked(CommonOptions.MaskOf(maskPath), setup.Paper.Kind);
                }

                var mirrored = PrintMask.IsMirrored(setup.Paper.Kind) && (maskPath is not null || parsed.GetValue(held));
                if (mirrored)
                {
                    page.Note("The print is drawn as it is in the hand: a direct positive shows the subject mirrored, left for right.");
                }

                var exposure = PrintExposure.Of(setup.Response, forecast.Exposure, setup.Flash);
                var look = new PrintLook { Border = Length.FromMillimetres(BorderMillimetres), WhiteIsPaper = true, IsMirrored = mirrored };
                var print = PredictedPrint.Expose(image, setup.Paper.Curve, exposure, look);

                var files = new List<string>();
                WritePng(print, parsed.GetRequiredValue(output), files, cancellation);
                if (parsed.GetValue(tiff) is { } tiffPath)
                {
                    PrintWriter.WriteTiff(tiffPath, Linear(print, cancellation), print.Width, print.Height);
                    files.Add(tiffPath);
                }

                if (negativePath is not null)
                {
                    var processed = PredictedPrint.Expose(image, setup.Paper.Curve, exposure, look with { Side = PrintSide.AsProcessed });
                    WritePng(processed, negativePath, files, cancellation);
                }

                var report = new PreviewReport
                {
                    Files = files,
                    WidthPixels = print.Width,
                    HeightPixels = print.Height,
                    MillimetresPerPixel = print.PitchMillimetres,
                    SpotWidthMm = spot.Millimetres,
                    UnknownShare = 1 - print.KnownShare,
                    Moving = regions,
                    Plan = ExposeReporting.Report(setup, forecast, bracket: null),
                };
                return page.Show(parsed.GetValue(json), report, ReportJson.Default.PreviewReport, () => Write(page, report));
            },
            cancellation));
        return verb;
    }

    private static ExposureForecast Forecast(SceneSetup setup, string? time, string? flash)
    {
        var recommended = setup.Planner.Recommend();
        if (time is null && flash is null)
        {
            return recommended;
        }

        return setup.Planner.Forecast(new SheetExposure(
            time is null ? recommended.Exposure.Time : QuantityText.Duration(time, "the exposure time"),
            flash is null ? recommended.Exposure.Flash : QuantityText.Duration(flash, "the flash")));
    }

    private static void WritePng(PredictedPrint print, string path, List<string> files, CancellationToken cancellation)
    {
        var codes = GC.AllocateUninitializedArray<byte>(print.Width * print.Height);
        print.WriteGrey8(codes, cancellation);
        PrintWriter.WritePng(path, codes, print.Width, print.Height);
        files.Add(path);
    }

    private static ushort[] Linear(PredictedPrint print, CancellationToken cancellation)
    {
        var linear = GC.AllocateUninitializedArray<ushort>(print.Width * print.Height);
        for (var row = 0; row < print.Height; row++)
        {
            cancellation.ThrowIfCancellationRequested();
            print.WriteLinear16(row, linear.AsSpan(row * print.Width, print.Width));
        }

        return linear;
    }

    private static void Write(Page page, PreviewReport report)
    {
        var culture = CultureInfo.CurrentCulture;
        foreach (var file in report.Files)
        {
            page.Line(file);
        }

        page.Line(string.Create(culture, $"{report.WidthPixels} × {report.HeightPixels} pixels, a point is {report.SpotWidthMm:0.00} mm wide on the sheet"));
        if (report.UnknownShare > 0.001)
        {
            page.Line(string.Create(culture, $"{report.UnknownShare * 100:0} % of the sheet lies outside the photograph and is hatched; take a wider one to see it."));
        }

        if (report.Moving.Count > 0)
        {
            page.Line();
            page.Table(
                ["moving", "standing", "moving", "what is left"],
                [.. report.Moving.Select(one => (IReadOnlyList<string>)
                [
                    one.Name,
                    string.Create(culture, $"{one.StillDifference:0.00}"),
                    string.Create(culture, $"{one.MovedDifference:0.00}"),
                    one.Verdict switch { "vanishes" => "nothing that is seen", "ghost" => "a ghost", _ => "it stays as it is" },
                ])]);
            page.Note("Differences in density against what is around or along the way. What the photograph does not show, such as what is behind something that goes away, is guessed from the edges of the region.");
        }

        page.Line();
        ExposeReporting.Write(page, report.Plan);
    }
}
