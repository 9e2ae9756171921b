using System.CommandLine;
using System.Globalization;
using Foramen.Cli.Options;
using Foramen.Cli.Output;
using Foramen.Cli.Scans;
using Foramen.Engine.Camera;
using Foramen.Engine.Quantities;

namespace Foramen.Cli.Verbs;

/// <summary><c>foramen marks</c>: where sighting marks go on a camera box, and templates of them.</summary>
internal static class MarksVerb
{
    public static Command Create(Page page)
    {
        var camera = new Argument<string>("camera") { Description = "A camera file; make one with foramen camera … --save FILE." };
        var distance = new Option<string?>("--base") { Description = "From the front mark to the rear marks; as long as from the hole to the paper where nothing is said. Longer aims better.", HelpName = "LENGTH" };
        var pdf = new Option<string?>("--pdf") { Description = "Write both templates at true scale, a page each.", HelpName = "FILE" };
        var svgTop = new Option<string?>("--svg-top") { Description = "Write the template of the top at true scale.", HelpName = "FILE" };
        var svgSide = new Option<string?>("--svg-side") { Description = "Write the template of the right side at true scale.", HelpName = "FILE" };
        var json = CommonOptions.Json();
        var verb = new Command(
            "marks",
            """
            Says where front and rear marks go on a camera box, so that the lines over them are the picture's edges and its middle; on the top for left and right, on the right
            side for up and down (turned a quarter to the left, the side lies on top). Never look at the sun along the marks.

            Try:
              foramen marks demo/kit/box-a.json --base 100mm
              foramen marks demo/kit/box-a.json --pdf marks.pdf
            """)
        {
            camera, distance, pdf, svgTop, svgSide, json,
        };
        verb.SetAction(parsed =>
        {
            var marks = SightingMarks.For(
                CommonOptions.CameraOf(parsed.GetRequiredValue(camera)),
                parsed.GetValue(distance) is { } text ? QuantityText.Length(text, "the distance between front and rear marks") : null);
            var files = new List<string>();
            if (parsed.GetValue(pdf) is not null || parsed.GetValue(svgTop) is not null || parsed.GetValue(svgSide) is not null)
            {
                var (top, side) = (MarksTemplate.Of(marks, MarkFace.Top), MarksTemplate.Of(marks, MarkFace.RightSide));
                TemplateFiles.Pdf(parsed.GetValue(pdf), [top, side], files);
                TemplateFiles.Svg(parsed.GetValue(svgTop), top, files);
                TemplateFiles.Svg(parsed.GetValue(svgSide), side, files);
            }

            var report = Report(marks, files);
            return page.Show(parsed.GetValue(json), report, ReportJson.Default.MarksReport, () => Write(page, report));
        });
        return verb;
    }

    private static MarksReport Report(SightingMarks marks, List<string> files) => new()
    {
        Camera = marks.Camera.Name,
        BaseMm = marks.Base.Millimetres,
        Marks = [.. marks.Lines.Select(line => new MarkReport
        {
            Face = line.Face, Shows = line.Name, DirectionDeg = line.Direction.Degrees, RearMm = line.RearAcrossMillimetres,
        })],
        ToleranceDeg = marks.Tolerance.Degrees,
        ToleranceOfWidth = marks.WidthShare,
        ToleranceOfHeight = marks.HeightShare,
        Caution = SightingMarks.Caution,
        Files = files,
    };

    private static void Write(Page page, MarksReport report)
    {
        var culture = CultureInfo.CurrentCulture;
        page.Line(string.Create(culture, $"{report.Camera}: front marks at the hole, rear marks {report.BaseMm:0.#} mm behind them"));
        page.Table(
            ["line of sight", "points", "rear mark"],
            report.Marks.Select(mark => new[]
            {
                mark.Face == MarkFace.Top ? $"top: {mark.Shows}" : $"right side: {mark.Shows}",
                Way(mark.DirectionDeg, "0.0", "°", mark.Face == MarkFace.Top ? ("left", "right") : ("down", "up")),
                Way(mark.RearMm, "0.0", " mm", mark.Face == MarkFace.Top ? ("left", "right") : ("down", "up")),
            }));
        page.Line(string.Create(
            culture,
            $"Aimed over the marks the middle is true to ± {report.ToleranceDeg:0.00}°, {report.ToleranceOfWidth * 100:0.0} % of the width and {report.ToleranceOfHeight * 100:0.0} % of the height."));
        foreach (var file in report.Files)
        {
            page.Line(file);
        }

        page.Line(report.Caution);
    }

    private static string Way(double value, string format, string unit, (string Less, string More) ways)
    {
        var size = Math.Abs(value).ToString(format, CultureInfo.CurrentCulture);
        return Math.Abs(value) < 0.05 ? "straight" : $"{size}{unit} {(value < 0 ? ways.Less : ways.More)}";
    }
}
