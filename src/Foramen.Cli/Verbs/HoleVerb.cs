using System.CommandLine;
using System.Globalization;
using Foramen.Cli.Kit;
using Foramen.Cli.Options;
using Foramen.Cli.Output;
using Foramen.Cli.Scans;
using Foramen.Engine.Camera;
using Foramen.Engine.Light;
using Foramen.Engine.Quantities;
using Foramen.Imaging;
using Foramen.Journal.Kit;

namespace Foramen.Cli.Verbs;

/// <summary><c>foramen hole</c>: the hole's diameter and shape from a scan, and what it does in a camera.</summary>
internal static class HoleVerb
{
    public static Command Create(Page page)
    {
        var file = new Argument<string>("scan") { Description = "A scan or macro photograph of the hole (PNG, JPEG, WebP or TIFF)." };
        var dpi = new Option<double?>("--dpi") { Description = "Resolution of the scan; what the file says where nothing is said.", HelpName = "DPI" };
        var ruler = new Option<string?>("--ruler") { Description = "Two marks of a ruler in the scan, in pixels: \"10mm at 120,300 to 2120,310\". Safer than any stated resolution.", HelpName = "RULER" };
        var between = new Option<string?>("--between") { Description = "Two marks on the plate that the hole should be half-way between, in pixels: \"120,300 to 2120,310\".", HelpName = "PLACES" };
        var linear = new Option<bool>("--linear") { Description = "The scan's codes are in proportion to light (gamma 1); otherwise sRGB is assumed." };
        var camera = new Option<string?>("--camera") { Description = "Camera file the hole belongs to: says what the hole does there.", HelpName = "FILE" };
        var light = CommonOptions.Light();
        var save = new Option<string?>("--save") { Description = "Write the camera with the hole as measured to this file.", HelpName = "FILE" };
        var json = CommonOptions.Json();
        var verb = new Command(
            "hole",
            """
            Measures a hole on a scan: diameter, roundness, burr and offset, with the doubt in the diameter and what it costs in stops and sharpness.
            Scan the plate flat, with light from behind or over black, at 2400 dpi or more, and with some plate on every side.

            Try:
              foramen hole scan.png --dpi 4800
              foramen hole scan.png --ruler "10mm at 120,300 to 2120,310" --camera demo/kit/box-a.json --save box-a.json
            """)
        {
            file, dpi, ruler, between, linear, camera, light, save, json,
        };
        verb.SetAction(parsed =>
        {
            if (parsed.GetValue(save) is not null && parsed.GetValue(camera) is null)
            {
                throw new RefusalException("Say which camera the hole belongs to (--camera FILE), so that it can be saved with the hole as measured.");
            }

            var definition = parsed.GetValue(camera) is { } cameraPath ? KitFile.Camera(cameraPath) : null;
            var box = parsed.GetValue(camera) is { } known ? CommonOptions.CameraOf(known) : null;
            var (scan, tag) = ScanReader.Read(parsed.GetRequiredValue(file), parsed.GetValue(linear) ? ScanEncoding.Linear : ScanEncoding.Srgb);
            var (scale, from, note) = ScanResolution.Of(parsed.GetValue(ruler), parsed.GetValue(dpi), tag);
            var measured = HoleMeter.Measure(scan, scale, parsed.GetValue(between) is { } marks ? Middle(marks) : null);
            var paperLight = PaperLight.Of(CommonOptions.LightOf(parsed.GetValue(light)).ToSpectrum(), PaperSensitivity.BlueSensitive);
            var report = Report(measured, scale, from, note, box is null ? null : Consequence(box, measured, paperLight));
            if (parsed.GetValue(save) is { } target)
            {
                KitFile.Save(target, definition!.WithHole(measured), KitJson.Default.CameraDefinition, page);
            }

            return page.Show(parsed.GetValue(json), report, ReportJson.Default.HoleReport, () => Write(page, report));
        });
        return verb;
    }

    private static PixelPoint Middle(string marks)
    {
        var (from, to) = ScanPoints.Pair(marks, "the pair of marks");
        return PixelPoint.At((from.X + to.X) / 2, (from.Y + to.Y) / 2);
    }

    private static HoleCameraReport Consequence(PinholeCamera camera, HoleMeasurement measured, PaperLight light)
    {
        var effect = HoleConsequence.Of(camera, measured.ToHole(camera.Hole.EdgeThickness), light);
        return new HoleCameraReport
        {
            Name = camera.Name,
            LightStops = effect.Light.Value,
            LightSdStops = effect.LightSd.Value,
            FNumber = effect.FNumber.Value,
            BestDiameterMm = effect.BestDiameter.Millimetres,
            LinePairsPerMmAtTenth = effect.FinestLines,
            LinePairsPerMmAtTenthBest = effect.FinestLinesAtBest,
        };
    }

    private static HoleReport Report(HoleMeasurement measured, ScanScale scale, string from, string? note, HoleCameraReport? camera) => new()
    {
        DiameterMm = measured.Diameter.Millimetres,
        DiameterSdMm = measured.DiameterSd.Millimetres,
        Roundness = measured.Roundness,
        LeastWidthMm = measured.LeastWidth.Millimetres,
        MostWidthMm = measured.MostWidth.Millimetres,
        RoundnessDeviationMm = measured.RoundnessDeviation.Millimetres,
        BurrMm = measured.Burr.Millimetres,
        NotchMm = measured.Notch.Millimetres,
        XPixels = measured.Middle.X,
        YPixels = measured.Middle.Y,
        DiameterPixels = measured.DiameterPixels,
        BlurPixels = measured.BlurPixels,
        DotsPerInch = scale.DotsPerInch,
        ResolutionFrom = from,
        OffsetRightMm = measured.Offset?.RightMillimetres,
        OffsetUpMm = measured.Offset?.UpMillimetres,
        Camera = camera,
        Doubts = note is null ? measured.Doubts : [note, .. measured.Doubts],
    };

    // Rounded first, because what rounds to nothing has no sign.
    private static string Signed(double value, int digits)
        => (Math.Round(value, digits) + 0.0).ToString($"+0.{new string('0', digits)};-0.{new string('0', digits)};0", CultureInfo.CurrentCulture);

    private static void Write(Page page, HoleReport report)
    {
        var culture = CultureInfo.CurrentCulture;
        page.Line(string.Create(culture, $"a hole of {report.DiameterMm:0.0000} ± {report.DiameterSdMm:0.0000} mm"));
        var rows = new List<string[]>
        {
            new[] { "roundness", string.Create(culture, $"{report.Roundness:0.000} (narrowest {report.LeastWidthMm:0.0000} over widest {report.MostWidthMm:0.0000} mm)") },
            new[] { "burr", report.BurrMm > 0 || report.NotchMm > 0 ? string.Create(culture, $"{report.BurrMm:0.000} mm into the hole, {report.NotchMm:0.000} mm out of it") : "none larger than the scan's noise" },
            new[] { "in the scan", string.Create(culture, $"{report.DiameterPixels:0.0} pixels across at {report.XPixels:0.0},{report.YPixels:0.0}; {report.DotsPerInch:0} dpi by {report.ResolutionFrom}") },
        };
        if (report is { OffsetRightMm: { } right, OffsetUpMm: { } up })
        {
            rows.Add(["off its place", string.Create(culture, $"{Signed(right, 3)} mm to the right, {Signed(up, 3)} mm up")]);
        }

        if (report.Camera is { } camera)
        {
            rows.Add([$"in {camera.Name}", string.Create(culture, $"{Signed(camera.LightStops, 2)} stops (± {camera.LightSdStops:0.00}) against its description, f/{camera.FNumber:0}")]);
            rows.Add(["finest lines", string.Create(culture, $"{camera.LinePairsPerMmAtTenth:0.0} pairs per mm; the best hole there, {camera.BestDiameterMm:0.00} mm, gives {camera.LinePairsPerMmAtTenthBest:0.0}")]);
        }

        page.Table(["", ""], rows);
        foreach (var doubt in report.Doubts)
        {
            page.Note(doubt);
        }
    }
}
