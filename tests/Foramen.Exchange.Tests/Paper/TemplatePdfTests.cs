using System.Diagnostics;
using Foramen.Engine.Camera;
using Foramen.Engine.Paper;
using Foramen.Engine.Print;
using Foramen.Engine.Quantities;
using Foramen.Exchange.Paper;
using UglyToad.PdfPig;

namespace Foramen.Exchange.Tests.Paper;

public sealed class TemplatePdfTests : IDisposable
{
    private static readonly PinholeCamera Box = PinholeCamera.Create(
        "Box A", Hole.FromDiameter(Length.FromMillimetres(0.35)), Length.FromMillimetres(63), SheetSize.FromMillimetres(127, 102));

    private readonly DirectoryInfo directory = Directory.CreateTempSubdirectory("foramen-template-");

    public static TheoryData<string> All => ["marks", "mask"];

    public void Dispose() => directory.Delete(recursive: true);

    // 100 mm at 300 dpi: 100/25.4·300 = 1181.1 pixels. Rendered by poppler's pdftoppm, a program of its own.
    [Theory]
    [MemberData(nameof(All))]
    [Source("poppler", Basis.Library)]
    public void The_bar_of_100_mm_is_1181_pixels_at_300_dpi(string which)
    {
        var (width, height, grey) = Rendered(Template(which));
        var longest = 0;
        for (var row = height * 9 / 10; row < height; row++)
        {
            var run = 0;
            for (var column = 0; column < width; column++)
            {
                run = grey[(row * width) + column] < 128 ? run + 1 : 0;
                longest = Math.Max(longest, run);
            }
        }

        Assert.InRange(longest, 1180, 1182);
    }

    // The rear marks of box A's top stand 127 mm apart, 63 mm behind the front mark: read off by PdfPig, a library of its own.
    [Fact]
    [Source("pdfpig", Basis.Library)]
    public void The_marks_are_at_true_scale()
    {
        using var document = PdfDocument.Open(Written(Template("marks")));
        var page = document.GetPage(1);
        const double Points = 72 / 25.4;
        var bounds = page.Paths.Select(path => path.GetBoundingRectangle()).OfType<UglyToad.PdfPig.Core.PdfRectangle>().ToList();
        var lines = bounds.Where(box => Math.Abs(box.Height - (63 * Points)) < 0.01).ToList();
        Assert.Equal(3, lines.Count);
        Assert.Equal(127 * Points, lines.Max(box => box.Right) - lines.Min(box => box.Left), 0.02);
        Assert.Contains("sun", string.Join(' ', page.GetWords().Select(word => word.Text)), StringComparison.Ordinal);
    }

    [Fact]
    public void Two_faces_are_two_pages()
    {
        var marks = SightingMarks.For(Box);
        using var stream = new MemoryStream();
        TemplatePdf.Write(stream, [MarksTemplate.Of(marks, MarkFace.Top), MarksTemplate.Of(marks, MarkFace.RightSide)]);
        using var document = PdfDocument.Open(stream.ToArray());
        Assert.Equal(2, document.NumberOfPages);
    }

    private static Template Template(string which) => which == "marks"
        ? MarksTemplate.Of(SightingMarks.For(Box), MarkFace.Top)
        : MaskTemplate.Of(
            PrintMask.Create(MaskOutline.Text("CANAL"), Length.FromMillimetres(80), MaskPlace.InTray(Length.FromMillimetres(10))), Box, PaperKind.DirectPositive);

    private static byte[] Written(Template template)
    {
        using var stream = new MemoryStream();
        TemplatePdf.Write(stream, [template]);
        return stream.ToArray();
    }

    private (int Width, int Height, byte[] Grey) Rendered(Template template)
    {
        var pdf = Path.Combine(directory.FullName, "t.pdf");
        File.WriteAllBytes(pdf, Written(template));
        using var process = Process.Start(new ProcessStartInfo("pdftoppm", ["-r", "300", "-gray", "-singlefile", pdf, Path.Combine(directory.FullName, "t")]))!;
        Assert.True(process.WaitForExit(60_000), "pdftoppm took more than a minute.");
        Assert.Equal(0, process.ExitCode);

        // PGM: "P5", width, height, 255, then a byte a pixel.
        var bytes = File.ReadAllBytes(Path.Combine(directory.FullName, "t.pgm"));
        var (at, numbers) = (2, new List<int>());
        while (numbers.Count < 3)
        {
            var from = ++at;
            while (bytes[at] is >= (byte)'0' and <= (byte)'9')
            {
                at++;
            }

            numbers.Add(int.Parse(System.Text.Encoding.ASCII.GetString(bytes, from, at - from), System.Globalization.CultureInfo.InvariantCulture));
        }

        return (numbers[0], numbers[1], bytes[(at + 1)..]);
    }
}
