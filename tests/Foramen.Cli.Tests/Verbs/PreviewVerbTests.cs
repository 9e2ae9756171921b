using SkiaSharp;

namespace Foramen.Cli.Tests.Verbs;

public sealed class PreviewVerbTests : IDisposable
{
    private readonly DirectoryInfo directory = Directory.CreateTempSubdirectory("foramen-preview-");

    public void Dispose() => directory.Delete(recursive: true);

    [Fact]
    public async Task The_print_is_written_and_looks_like_the_plan()
    {
        var png = Path.Combine(directory.FullName, "print.png");
        var json = (await PromptRun.OfAsync([.. Base("positive.json"), "--out", png, "--tiff", png + ".tif", "--size", "400", "--json",
            "--tone", "elevator: textured highlight at 34%,30%", "--tone", "pump house: may block at 72%,43%"])).Json("preview");
        Assert.Equal(2, json["files"]!.AsArray().Count);
        using var print = SKBitmap.Decode(png);
        Assert.Equal((int)json["widthPixels"]!, print.Width);

        // The elevator stands left of the middle, the pump house right of it; the rim of a direct-positive sheet stays black.
        Assert.True(Code(print, 0.33, 0.40) > 170, "the elevator is light");
        Assert.True(Code(print, 0.80, 0.42) < 60, "the pump house is dark");
        Assert.True(Code(print, 0.005, 0.5) < 50, "the rim is black");
        Assert.Equal(2, directory.GetFiles().Length);
    }

    [Theory]
    [InlineData("300")]
    [InlineData("1700")]
    public async Task The_plan_is_that_of_expose_whatever_the_size_of_the_print(string size)
    {
        var kit = Base("positive.json");
        var expose = (await PromptRun.OfAsync(["expose", .. kit[1..], "--json"])).Json("expose");
        var preview = (await PromptRun.OfAsync([.. kit, "--out", Path.Combine(directory.FullName, "p.png"), "--size", size, "--json"])).Json("preview");
        Assert.Equal(expose["exposureSeconds"]!.GetValue<double>(), preview["plan"]!["exposureSeconds"]!.GetValue<double>());
        Assert.Equal(expose["tones"]!.ToJsonString(), preview["plan"]!["tones"]!.ToJsonString());
    }

    [Fact]
    public async Task A_negative_is_the_other_way_round()
    {
        var (positive, negative) = (Path.Combine(directory.FullName, "p.png"), Path.Combine(directory.FullName, "n.png"));
        Assert.Equal(0, (await PromptRun.OfAsync([.. Base("grade-2.json"), "--out", positive, "--negative-out", negative, "--size", "300"])).ExitCode);
        using var p = SKBitmap.Decode(positive);
        using var n = SKBitmap.Decode(negative);
        Assert.True(Code(p, 0.33, 0.40) > Code(p, 0.80, 0.42));
        Assert.True(Code(n, 0.33, 0.40) < Code(n, 0.80, 0.42));
    }

    [Fact]
    public async Task More_time_makes_a_lighter_print()
    {
        var (brief, full) = (Path.Combine(directory.FullName, "a.png"), Path.Combine(directory.FullName, "b.png"));
        await PromptRun.OfAsync([.. Base("positive.json"), "--out", brief, "--size", "200", "--time", "20s", "--no-flash"]);
        await PromptRun.OfAsync([.. Base("positive.json"), "--out", full, "--size", "200", "--time", "2 min", "--no-flash"]);
        using var a = SKBitmap.Decode(brief);
        using var b = SKBitmap.Decode(full);
        Assert.True(Code(b, 0.5, 0.8) > Code(a, 0.5, 0.8) + 20);
    }

    [Theory]
    [InlineData("no folder", "nowhere/print.png")]
    public async Task A_place_that_is_not_there_is_refused_and_nothing_is_left(string containing, string file)
    {
        (await PromptRun.OfAsync([.. Base("positive.json"), "--size", "200", "--out", Path.Combine(directory.FullName, file)])).IsRefused(containing);
        Assert.Empty(directory.GetFileSystemInfos());
    }

    [Theory]
    [InlineData("size of the print", "--size", "9")]
    [InlineData("without a unit", "--time", "90")]
    [InlineData("no negative", "--negative-out", "x.png")]
    [InlineData("nothing to flash at", "--flash", "3s", "--no-flash")]
    public async Task Bad_wishes_are_refused(string containing, params string[] arguments)
        => (await PromptRun.OfAsync([.. Base("positive.json"), "--out", Path.Combine(directory.FullName, "p.png"), .. arguments])).IsRefused(containing);

    private static string[] Base(string paper) => ["preview", PromptRun.Demo, "--camera", PromptRun.Kit("box-a.json"), "--paper", PromptRun.Kit(paper)];

    private static byte Code(SKBitmap picture, double x, double y) => picture.GetPixel((int)(x * picture.Width), (int)(y * picture.Height)).Red;
}
