using System.CommandLine;
using System.Globalization;
using Foramen.Cli.Kit;
using Foramen.Cli.Options;
using Foramen.Cli.Output;
using Foramen.Cli.Scans;
using Foramen.Engine.Camera;
using Foramen.Engine.Light;
using Foramen.Engine.Quantities;
using Foramen.Journal.Kit;

namespace Foramen.Cli.Verbs;

/// <summary><c>foramen camera</c>: what a camera sees and how sharply, or a file for a new one.</summary>
internal static class CameraVerb
{
    private const double LeastContrast = 0.1;

    public static Command Create(Page page)
    {
        var file = new Argument<string?>("file") { Description = "A camera file. Leave it out to describe a camera by the options.", Arity = ArgumentArity.ZeroOrOne };
        var name = new Option<string?>("--name") { Description = "What you call the camera." };
        var hole = new Option<string?>("--hole") { Description = "Diameter of the hole, such as 0.35mm.", HelpName = "LENGTH" };
        var distance = new Option<string?>("--distance") { Description = "From the hole to the paper, such as 63mm.", HelpName = "LENGTH" };
        var sheet = new Option<string?>("--sheet") { Description = "Width and height of the sheet as it lies level, such as 127x102mm.", HelpName = "SIZE" };
        var wall = new Option<string?>("--wall-radius") { Description = "Radius of the wall that curved paper lies on; flat paper where nothing is said.", HelpName = "LENGTH" };
        var edge = new Option<string?>("--edge") { Description = "Thickness of the hole's edge; 0.05mm where nothing is said.", HelpName = "LENGTH" };
        var seen = new Option<string?>("--seen") { Description = "Measures the distance from hole to paper: two marks, or a ruler's ends, at a known distance and as far apart on the print: \"1m at 2.5m as 25.2mm\".", HelpName = "MARKS" };
        var light = CommonOptions.Light();
        var save = new Option<string?>("--save") { Description = "Write the camera to this file.", HelpName = "FILE" };
        var json = CommonOptions.Json();
        var verb = new Command(
            "camera",
            """
            Says what a camera sees, how the light falls off and how sharp the hole is; or makes a file for a new camera.

            Try:
              foramen camera demo/kit/box-a.json
              foramen camera demo/kit/box-a.json --seen "1m at 2.5m as 25.2mm"
              foramen camera --name "Box B" --hole 0.4mm --distance 80mm --sheet 127x102mm --save box-b.json
            """)
        {
            file, name, hole, distance, sheet, wall, edge, seen, light, save, json,
        };
        verb.SetAction(parsed =>
        {
            var path = parsed.GetValue(file);
            var definition = path is not null
                ? KitFile.Camera(path)
                : Define(
                    parsed.GetValue(name),
                    Required(parsed.GetValue(hole), "the hole's diameter", "--hole 0.35mm"),
                    Required(parsed.GetValue(distance), "the distance from the hole to the paper", "--distance 63mm"),
                    Required(parsed.GetValue(sheet), "the size of the sheet", "--sheet 127x102mm"),
                    parsed.GetValue(wall),
                    parsed.GetValue(edge));
            var camera = path is not null ? CommonOptions.CameraOf(path) : definition.ToCamera();
            if (parsed.GetValue(seen) is { } marks)
            {
                definition = definition.WithChamber(ChamberText.Parse(marks));
                camera = definition.ToCamera();
            }

            var report = Report(camera, PaperLight.Of(CommonOptions.LightOf(parsed.GetValue(light)).ToSpectrum(), PaperSensitivity.BlueSensitive));
            if (parsed.GetValue(save) is { } target)
            {
                KitFile.Save(target, definition, KitJson.Default.CameraDefinition, page);
            }

            return page.Show(parsed.GetValue(json), report, ReportJson.Default.CameraReport, () => Write(page, report));
        });
        return verb;
    }

    private static string Required(string? value, string what, string example)
        => value ?? throw new RefusalException($"Say {what} ({example}), or name a camera file.");

    private static CameraDefinition Define(string? name, string hole, string distance, string sheet, string? wall, string? edge)
    {
        var (width, height) = QuantityText.Size(sheet, "the size of the sheet");
        return new CameraDefinition
        {
            Name = name ?? "camera",
            HoleDiameterMillimetres = QuantityText.Length(hole, "the hole's diameter").Millimetres,
            HoleThicknessMillimetres = edge is null ? null : QuantityText.Length(edge, "the thickness of the hole's edge").Millimetres,
            FocalDistanceMillimetres = QuantityText.Length(distance, "the distance from the hole to the paper").Millimetres,
            SheetWidthMillimetres = width.Millimetres,
            SheetHeightMillimetres = height.Millimetres,
            PaperShape = wall is null ? "flat" : "curved",
            WallRadiusMillimetres = wall is null ? null : QuantityText.Length(wall, "the radius of the wall").Millimetres,
        };
    }

    private static CameraReport Report(PinholeCamera camera, PaperLight light)
    {
        var field = camera.Field();
        var spread = PointSpread.Of(camera, light);
        var falloff = FalloffMap.Of(camera);
        var (x, y) = (camera.Sheet.Width.Millimetres / 2, camera.Sheet.Height.Millimetres / 2);
        double Falloff(double px, double py) => camera.FalloffStops(SheetPoint.FromMillimetres(px, py)).Value;
        return new CameraReport
        {
            Name = camera.Name,
            HoleDiameterMm = camera.Hole.Diameter.Millimetres,
            FocalDistanceMm = camera.FocalDistance.Millimetres,
            FNumber = camera.FNumber.Value,
            HoleSdStops = 2 * Math.Log2(1 + double.Hypot(camera.Hole.DiameterRelativeSd, camera.FocalDistanceRelativeSd)),
            HorizontalFieldDeg = field.Horizontal.Degrees,
            VerticalFieldDeg = field.Vertical.Degrees,
            DiagonalFieldDeg = field.Diagonal.Degrees,
            CornerFalloffStops = new[] { Falloff(x, y), Falloff(-x, y), Falloff(x, -y), Falloff(-x, -y) }.Min(),
            EdgeFalloffStops = new[] { Falloff(x, 0), Falloff(-x, 0), Falloff(0, y), Falloff(0, -y) }.Min(),
            SpotWidthMm = spread.DiameterHolding(0.8).Millimetres,
            LinePairsPerMmAtTenth = spread.LinePairsPerMillimetreAt(LeastContrast),
            BestDiameterMm = BestDiameter.Compute(camera.FocalDistance, light, SharpnessCriterion.Usual).Millimetres,
            RayleighDiameterMm = BestDiameter.Classical(BestDiameter.RayleighFactor, camera.FocalDistance, light.MeanNanometres).Millimetres,
            MeanNanometres = light.MeanNanometres,
            FocalDistanceSdMm = camera.FocalDistance.Millimetres * camera.FocalDistanceRelativeSd,
            FalloffStops = [.. falloff.Rows.Select(row => row.Select(stops => stops.Value).ToList())],
            CornerOpenPart = falloff.CornerOpenPart,
            HoleCoversCorners = falloff.CoversCorners,
        };
    }

    private static void Write(Page page, CameraReport report)
    {
        var culture = CultureInfo.CurrentCulture;
        page.Line(string.Create(culture, $"{report.Name}: a hole of {report.HoleDiameterMm:0.###} mm, {report.FocalDistanceMm:0.#} mm before the paper"));
        page.Table(["", ""],
        [
            ["f-number", string.Create(culture, $"f/{report.FNumber:0} (± {report.HoleSdStops:0.00} stops from the doubt in hole and distance)")],
            ["field", string.Create(culture, $"{report.HorizontalFieldDeg:0.0}° across, {report.VerticalFieldDeg:0.0}° high, {report.DiagonalFieldDeg:0.0}° corner to corner")],
            ["light lost", string.Create(culture, $"{report.EdgeFalloffStops:0.0} stops at the edge, {report.CornerFalloffStops:0.0} in the corner")],
            ["a point becomes", string.Create(culture, $"{report.SpotWidthMm:0.00} mm wide (80 % of its light), in {report.MeanNanometres:0} nm light")],
            ["finest lines", string.Create(culture, $"{report.LinePairsPerMmAtTenth:0.0} pairs per mm at a tenth of their contrast")],
            ["best hole here", string.Create(culture, $"{report.BestDiameterMm:0.00} mm for the finest lines; Rayleigh's rule says {report.RayleighDiameterMm:0.00} mm")],
        ]);
        if (report.FocalDistanceSdMm > 0)
        {
            page.Line(string.Create(culture, $"The distance from hole to paper is {report.FocalDistanceMm:0.00} ± {report.FocalDistanceSdMm:0.00} mm, by marks on a print."));
        }

        page.Line("Stops against the middle, over the sheet:");
        page.Table(
            [.. Enumerable.Repeat("", report.FalloffStops[0].Count)],
            report.FalloffStops.Select(row => (IReadOnlyList<string>)[.. row.Select(stops => stops <= -59 ? "none" : stops.ToString("0.0", culture))]));
        page.Line(report.HoleCoversCorners
            ? string.Create(culture, $"The hole covers the corners: {report.CornerOpenPart * 100:0} % of it is open there.")
            : string.Create(culture, $"The hole's edge is too thick for the corners: {report.CornerOpenPart * 100:0} % of it is open there; thin the plate, or use less of the sheet."));
        page.Line("Sharpness holds near the axis, for a thin round hole and a far subject.");
    }
}
