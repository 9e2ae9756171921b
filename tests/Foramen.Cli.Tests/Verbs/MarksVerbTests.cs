namespace Foramen.Cli.Tests.Verbs;

public sealed class MarksVerbTests : IDisposable
{
    private readonly DirectoryInfo directory = Directory.CreateTempSubdirectory("foramen-marks-");

    public void Dispose() => directory.Delete(recursive: true);

    // Box A: half of 127 mm seen from 63 mm; marks 100 mm apart: 100·63.5/63 = 100.79 mm.
    [Fact]
    public async Task The_demo_box_gets_its_marks()
    {
        var json = (await PromptRun.OfAsync("marks", PromptRun.Kit("box-a.json"), "--base", "100mm", "--json")).Json("marks");
        var right = json["marks"]!.AsArray().Single(mark => (string)mark!["shows"]! == "right edge")!;
        Assert.Equal(-100 * 63.5 / 63, (double)right["rearMm"]!, 1e-9);
        Assert.Contains("sun", (string)json["caution"]!, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Templates_are_written()
    {
        var (pdf, svg) = (Path.Combine(directory.FullName, "m.pdf"), Path.Combine(directory.FullName, "m.svg"));
        var run = await PromptRun.OfAsync("marks", PromptRun.Kit("box-a.json"), "--pdf", pdf, "--svg-top", svg);
        Assert.Equal(0, run.ExitCode);
        Assert.StartsWith("%PDF-1.4", await File.ReadAllTextAsync(pdf, TestContext.Current.CancellationToken), StringComparison.Ordinal);
        var root = System.Xml.Linq.XDocument.Load(svg).Root!;
        Assert.Equal("210mm", root.Attribute("width")!.Value);
        Assert.Equal("0 0 210 297", root.Attribute("viewBox")!.Value);
    }

    [Theory]
    [InlineData("without a unit", "--base", "100")]
    [InlineData("between 20", "--base", "1mm")]
    [InlineData("a page holds", "--base", "300mm", "--pdf", "x.pdf")]
    public async Task Bad_orders_are_refused(string containing, params string[] arguments)
        => (await PromptRun.OfAsync(["marks", PromptRun.Kit("box-a.json"), .. arguments])).IsRefused(containing);
}
