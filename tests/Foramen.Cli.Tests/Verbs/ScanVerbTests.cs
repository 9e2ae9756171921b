using Foramen.Exif;
using SkiaSharp;

namespace Foramen.Cli.Tests.Verbs;

/// <summary>The demo print was exposed 85 s and laid aslant by a program that shares nothing with the engine; its grey card has a density of 0.35.</summary>
public sealed class ScanVerbTests : IDisposable
{
    private readonly DirectoryInfo directory = Directory.CreateTempSubdirectory("foramen-scan-");

    public void Dispose() => directory.Delete(recursive: true);

    [Fact]
    public async Task As_long_as_it_was_open_the_print_is_as_predicted()
    {
        var json = (await PromptRun.OfAsync([.. Base(ground: false), "--known", "90,110 = 0.06", "--known", "90,230 = 1.35", "--time", "85s", "--json"])).Json("scan");
        Assert.True((double)json["agreement"]! > 0.97);
        Assert.True((bool)json["mirrored"]!);
        Assert.Equal(0, (double)json["medianOffStops"]!, 0.1);
        Assert.True((double)json["withinHalfStop"]! > 0.95);
        Assert.Equal(0, (double)json["aimedRightDegrees"]!, 0.1);
        foreach (var tone in json["tones"]!.AsArray())
        {
            Assert.Equal((double)tone!["plannedDensity"]!, (double)tone["density"]!, 0.05);
        }

        // Where the sheet was laid down.
        double[] corners = [250, 170, 1400, 130, 1440, 1050, 210, 1020];
        Assert.All(json["corners"]!.AsArray().SelectMany(corner => corner!.AsArray()).Zip(corners), pair => Assert.Equal(pair.Second, (double)pair.First!, 1.5));
    }

    // 85 s against 60 s are half a stop of light.
    [Fact]
    public async Task More_light_than_said_is_seen()
        => Assert.Equal(0.5, (double)(await PromptRun.OfAsync([.. Base(), "--time", "60s", "--json"])).Json("scan")["medianOffStops"]!, 0.1);

    [Fact]
    public async Task The_positive_is_upright_and_the_right_way_round()
    {
        var (real, off) = (Path.Combine(directory.FullName, "real.png"), Path.Combine(directory.FullName, "off.png"));
        Assert.Equal(0, (await PromptRun.OfAsync([.. Base(), "--time", "85s", "--out", real, "--difference", off])).ExitCode);
        using var print = SKBitmap.Decode(real);
        using var difference = SKBitmap.Decode(off);

        // The elevator stands left of the middle and is light; the pump house stands right of it and is dark.
        Assert.True(Code(print, 0.395, 0.40) > 150, "the elevator is light");
        Assert.True(Code(print, 0.80, 0.42) < 60, "the pump house is dark");
        Assert.InRange(Code(difference, 0.70, 0.15), (byte)120, (byte)136);
    }

    [Fact]
    public async Task The_positive_says_how_it_was_made_and_where_only_if_asked()
    {
        var real = Path.Combine(directory.FullName, "real.png");
        string[] wish = [.. Base(), "--time", "85s", "--out", real, "--opened", "2026-05-09T15:32:07+02:00"];
        Assert.Equal(0, (await PromptRun.OfAsync(wish)).ExitCode);
        var facts = PhotographFactsReader.Read(await File.ReadAllBytesAsync(real, TestContext.Current.CancellationToken));
        Assert.Equal(85, facts.ExposureTime!.Value.Seconds, 1e-6);
        Assert.Equal(new DateTime(2026, 5, 9, 15, 32, 7), facts.TakenLocal);
        Assert.DoesNotContain("GPS", await File.ReadAllTextAsync(real, System.Text.Encoding.Latin1, TestContext.Current.CancellationToken), StringComparison.Ordinal);

        Assert.Equal(0, (await PromptRun.OfAsync([.. wish, "--place", "52.1", "-4.9"])).ExitCode);
        Assert.Contains("GPSLongitude>4,54.0000W<", await File.ReadAllTextAsync(real, System.Text.Encoding.Latin1, TestContext.Current.CancellationToken), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("without an offset", "--time", "60s", "--ground", "0.35", "--out", "never.png", "--opened", "2026-05-09T15:32")]
    [InlineData("latitude", "--time", "60s", "--ground", "0.35", "--out", "never.png", "--place", "200", "4")]
    [InlineData("known density", "--time", "60s")]
    [InlineData("without a unit", "--time", "60", "--ground", "0.35")]
    [InlineData("four places", "--time", "60s", "--ground", "0.35", "--corners", "1,2 3,4")]
    [InlineData("wrong way round", "--time", "60s", "--ground", "0.35", "--corners", "1400,130 250,170 210,1020 1440,1050")]
    [InlineData("known patch", "--time", "60s", "--known", "90;110")]
    [InlineData("border", "--time", "60s", "--known", "2,2,30 = 0.06")]
    [InlineData("--even-light", "--time", "60s", "--ground", "0.35", "--even-light")]
    public async Task Bad_wishes_are_refused(string containing, params string[] arguments)
        => (await PromptRun.OfAsync([.. Base(ground: false), .. arguments])).IsRefused(containing);

    [Fact]
    public async Task A_picture_of_something_else_is_refused()
        => (await PromptRun.OfAsync(["scan", PromptRun.Demo, "--print", PromptRun.Demo, "--ground", "0.35", "--time", "60s", .. Gear])).IsRefused("print");

    private static string[] Gear => ["--camera", PromptRun.Kit("box-a.json"), "--paper", PromptRun.Kit("grade-2.json"), "--no-flash"];

    private static string[] Base(bool ground = true)
        => ["scan", PromptRun.Demo, "--print", Path.Combine(AppContext.BaseDirectory, "demo", "print.jpg"), .. Gear, .. ground ? new[] { "--ground", "0.35" } : []];

    private static byte Code(SKBitmap picture, double x, double y) => picture.GetPixel((int)(x * picture.Width), (int)(y * picture.Height)).Red;
}
