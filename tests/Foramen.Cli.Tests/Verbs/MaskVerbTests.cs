using SkiaSharp;

namespace Foramen.Cli.Tests.Verbs;

public sealed class MaskVerbTests : IDisposable
{
    private readonly DirectoryInfo directory = Directory.CreateTempSubdirectory("foramen-mask-");

    private static string[] Box(string paper) => ["--camera", PromptRun.Kit("box-a.json"), "--paper", PromptRun.Kit(paper)];

    public void Dispose() => directory.Delete(recursive: true);

    // Box A, 63 mm deep, hole 0.35 mm; a tray 5 mm before the paper is 58 mm from the hole: 40·58/63 = 36.825 mm to cut, edge 0.35·5/58 = 0.0302 mm.
    [Fact]
    public async Task A_text_is_sized_for_its_tray()
    {
        var json = (await PromptRun.OfAsync(["mask", "--text", "canal 7", "--width", "40mm", "--tray", "5mm", .. Box("positive.json"), "--json"])).Json("mask");
        Assert.Equal(40 * 58 / 63.0, (double)json["widthToCutMm"]!, 1e-6);
        Assert.Equal(0.35 * 5 / 58, (double)json["penumbraMm"]!, 1e-9);
        Assert.True((bool)json["subjectMirrored"]!);
    }

    // A part of the sky at the upper left of the print is covered; the finished print in the hand must show it there, whatever mirrors.
    [Theory]
    [InlineData("positive.json")]
    [InlineData("grade-2.json")]
    public async Task The_predicted_print_shows_it_where_it_was_asked_for(string paper)
    {
        var (mask, png) = (Path.Combine(directory.FullName, "mask.json"), Path.Combine(directory.FullName, "print.png"));
        var made = await PromptRun.OfAsync(["mask", "--ellipse", "40x20mm", "--left", "40mm", "--up", "38mm", "--tray", "5mm", .. Box(paper), "--save", mask]);
        Assert.Equal(0, made.ExitCode);
        var run = await PromptRun.OfAsync(["preview", PromptRun.Demo, .. Box(paper), "--mask", mask, "--out", png, "--size", "300", "--no-flash"]);
        Assert.Equal(0, run.ExitCode);
        using var print = SKBitmap.Decode(png);
        int Code(double right, double up) => print.GetPixel(
            (int)((print.Width / 2.0) + (right * (print.Width - 1) / 135)), (int)((print.Height / 2.0) - (up * (print.Width - 1) / 135))).Red;
        Assert.True(Code(-40, 38) < 60, $"covered: {Code(-40, 38)}");
        Assert.True(Code(40, 38) > Code(-40, 38) + 20, $"free: {Code(40, 38)}");
    }

    [Fact]
    public async Task A_silhouette_comes_from_a_plain_svg_and_a_template_is_written()
    {
        var (svg, pdf) = (Path.Combine(directory.FullName, "s.svg"), Path.Combine(directory.FullName, "t.pdf"));
        await File.WriteAllTextAsync(svg, "<svg xmlns=\"http://www.w3.org/2000/svg\"><path d=\"M0 0H20L10 30Z\"/></svg>", TestContext.Current.CancellationToken);
        var json = (await PromptRun.OfAsync(["mask", "--svg", svg, "--width", "20mm", "--before-hole", "30mm", .. Box("grade-2.json"), "--pdf", pdf, "--json"])).Json("mask");
        Assert.Equal(30, (double)json["heightOnPrintMm"]!, 1e-6);
        Assert.True(File.Exists(pdf));
    }

    [Theory]
    [InlineData("what the mask shows")]
    [InlineData("several shapes", "--text", "A", "--ellipse", "10x10mm")]
    [InlineData("where the mask lies", "--text", "A", "--width", "10mm")]
    [InlineData("how wide", "--text", "A", "--tray", "5mm")]
    [InlineData("has no", "--text", "日", "--width", "10mm", "--tray", "5mm")]
    [InlineData("nearer to the paper", "--text", "A", "--width", "10mm", "--tray", "63mm")]
    [InlineData("begin with M", "--path", "hello", "--width", "10mm", "--tray", "5mm")]
    [InlineData("no file", "--svg", "missing.svg", "--width", "10mm", "--tray", "5mm")]
    [InlineData("no mask file", "missing.json")]
    [InlineData("level or upright", "--text", "A", "--width", "10mm", "--tray", "5mm", "--format", "square")]
    public async Task Bad_orders_are_refused(string containing, params string[] arguments)
        => (await PromptRun.OfAsync(["mask", .. arguments, .. Box("positive.json")])).IsRefused(containing);

    [Fact]
    public async Task An_svg_with_a_script_is_refused()
    {
        var svg = Path.Combine(directory.FullName, "s.svg");
        await File.WriteAllTextAsync(svg, "<svg><script/></svg>", TestContext.Current.CancellationToken);
        (await PromptRun.OfAsync(["mask", "--svg", svg, "--width", "20mm", "--tray", "5mm", .. Box("positive.json")])).IsRefused("script");
    }
}
