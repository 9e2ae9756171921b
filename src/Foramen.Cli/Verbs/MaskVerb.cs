using System.CommandLine;
using System.Globalization;
using Foramen.Cli.Kit;
using Foramen.Cli.Options;
using Foramen.Cli.Output;
using Foramen.Cli.Scans;
using Foramen.Engine.Camera;
using Foramen.Engine.Paper;
using Foramen.Engine.Print;
using Foramen.Engine.Quantities;
using Foramen.Journal.Kit;

namespace Foramen.Cli.Verbs;

/// <summary><c>foramen mask</c>: a shape laid in the light, its template, and a file for <c>foramen preview --mask</c>.</summary>
internal static class MaskVerb
{
    public static Command Create(Page page)
    {
        var mask = new MaskOptions();
        var camera = new Option<string>("--camera") { Description = "Camera file.", HelpName = "FILE", Required = true };
        var paper = new Option<string>("--paper") { Description = "Paper file; its kind says what is mirrored.", HelpName = "FILE", Required = true };
        var format = new Option<string?>("--format") { Description = "level or upright; as the sheet lies in the camera where nothing is said.", HelpName = "FORMAT" };
        var pdf = new Option<string?>("--pdf") { Description = "Write the template at true scale.", HelpName = "FILE" };
        var svgOut = new Option<string?>("--svg-out") { Description = "Write the template at true scale as SVG.", HelpName = "FILE" };
        var save = new Option<string?>("--save") { Description = "Write the mask to this file.", HelpName = "FILE" };
        var json = CommonOptions.Json();
        var verb = new Command(
            "mask",
            """
            Lays a shape in the light: says how large to cut it, how it lies and how soft its edge will be, so that it reads right on the finished print; writes a template.

            Try:
              foramen mask --text "CANAL" --width 40mm --down 42mm --tray 5mm --camera demo/kit/box-a.json --paper demo/kit/positive.json --pdf mask.pdf --save mask.json
              foramen mask --ellipse 110x85mm --window --tray 15mm --camera demo/kit/box-a.json --paper demo/kit/grade-2.json
            """);
        mask.AddTo(verb);
        foreach (var option in new Option[] { camera, paper, format, pdf, svgOut, save, json })
        {
            verb.Options.Add(option);
        }

        verb.SetAction(parsed =>
        {
            var box = CommonOptions.CameraOf(parsed.GetRequiredValue(camera));
            var kind = CommonOptions.PaperOf(parsed.GetRequiredValue(paper)).Kind;
            var definition = mask.Read(parsed);
            var shape = definition.ToMask();
            var onItsSide = IsOnItsSide(box, parsed.GetValue(format));
            var cut = shape.ToCut(box, kind, onItsSide).SelectMany(ring => ring).ToList();
            var files = new List<string>();
            if (parsed.GetValue(pdf) is not null || parsed.GetValue(svgOut) is not null)
            {
                var template = MaskTemplate.Of(shape, box, kind, onItsSide);
                TemplateFiles.Pdf(parsed.GetValue(pdf), [template], files);
                TemplateFiles.Svg(parsed.GetValue(svgOut), template, files);
            }

            if (parsed.GetValue(save) is { } target)
            {
                KitFile.Save(target, definition, KitJson.Default.MaskDefinition);
                files.Add(target);
            }

            var report = new MaskReport
            {
                Name = definition.Name,
                WidthOnPrintMm = shape.Width.Millimetres,
                HeightOnPrintMm = shape.Height.Millimetres,
                WidthToCutMm = cut.Max(place => place.X) - cut.Min(place => place.X),
                HeightToCutMm = cut.Max(place => place.Y) - cut.Min(place => place.Y),
                PenumbraMm = shape.Place.PenumbraIn(box).Millimetres,
                SubjectMirrored = PrintMask.IsMirrored(kind),
                Lies = Lies(shape.Place, kind),
                Files = files,
            };
            return page.Show(parsed.GetValue(json), report, ReportJson.Default.MaskReport, () => Write(page, report));
        });
        return verb;
    }

    private static bool IsOnItsSide(PinholeCamera camera, string? format)
    {
        var (width, height) = (camera.Sheet.Width, camera.Sheet.Height);
        return format switch
        {
            null => false,
            "level" => width < height,
            "upright" => width > height,
            _ => throw new RefusalException($"The format is \"{format}\"; it should be level or upright."),
        };
    }

    private static string Lies(MaskPlace place, PaperKind paper) => (place.IsBeforeHole, paper) switch
    {
        (false, PaperKind.DirectPositive) => "turned by half a circle, seen from the hole",
        (false, _) => "turned by half a circle and mirrored, seen from the hole",
        (true, PaperKind.DirectPositive) => "reading right, seen from the subject",
        (true, _) => "mirrored, seen from the subject",
    };

    private static void Write(Page page, MaskReport report)
    {
        var culture = CultureInfo.CurrentCulture;
        page.Line(string.Create(culture, $"{report.Name}: {report.WidthOnPrintMm:0.0} × {report.HeightOnPrintMm:0.0} mm on the print"));
        page.Table(["", ""],
        [
            ["to cut", string.Create(culture, $"{report.WidthToCutMm:0.00} × {report.HeightToCutMm:0.00} mm")],
            ["it lies", report.Lies],
            ["its edge", string.Create(culture, $"soft over {report.PenumbraMm:0.00} mm on the print, diffraction apart")],
            ["the subject", report.SubjectMirrored ? "mirrored, left for right, as on every direct positive" : "as it was, on the print of the negative"],
        ]);
        foreach (var file in report.Files)
        {
            page.Line(file);
        }
    }
}
