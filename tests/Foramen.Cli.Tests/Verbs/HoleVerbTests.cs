using SkiaSharp;

namespace Foramen.Cli.Tests.Verbs;

public sealed class HoleVerbTests : IDisposable
{
    private readonly DirectoryInfo directory = Directory.CreateTempSubdirectory("foramen-hole-");

    private static string Scan => Path.Combine(AppContext.BaseDirectory, "demo", "hole.png");

    public void Dispose() => directory.Delete(recursive: true);

    // The demo scan is drawn by demo/Foramen.Demo.Render: an ellipse 0.360 × 0.340 mm at 4800 dpi, equivalent diameter √(0.360·0.340) = 0.34986 mm, ratio 0.944.
    [Fact]
    public async Task The_demo_hole_is_measured()
    {
        var json = (await PromptRun.OfAsync("hole", Scan, "--dpi", "4800", "--json")).Json("hole");
        Assert.InRange((double)json["diameterMm"]!, 0.34986 * 0.995, 0.34986 * 1.005);
        Assert.InRange((double)json["diameterSdMm"]!, 0.0005, 0.004);
        Assert.InRange((double)json["roundness"]!, 0.934, 0.954);
        Assert.Contains("dust", (string)json["doubts"]![0]!, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_ruler_gives_the_same_as_the_resolution_it_agrees_with()
    {
        // 1 mm is 188.976 pixels at 4800 dpi.
        var json = (await PromptRun.OfAsync("hole", Scan, "--ruler", "2mm at 10,20 to 387.95,20", "--json")).Json("hole");
        Assert.Equal(4800, (double)json["dotsPerInch"]!, 0.1);
        Assert.Equal("ruler", (string)json["resolutionFrom"]!);
    }

    [Fact]
    public async Task The_camera_is_saved_with_the_hole_as_measured_and_exposes_by_it()
    {
        var saved = Path.Combine(directory.FullName, "box.json");
        var json = (await PromptRun.OfAsync("hole", Scan, "--dpi", "4800", "--camera", PromptRun.Kit("box-a.json"), "--save", saved, "--json")).Json("hole");
        Assert.InRange((double)json["camera"]!["lightStops"]!, -0.02, 0.02);
        var camera = (await PromptRun.OfAsync("camera", saved, "--json")).Json("camera");
        Assert.Equal((double)json["diameterMm"]!, (double)camera["holeDiameterMm"]!, 1e-9);

        // The area's spread is 2·lg2(1 + s/d): what Exposure counts with from now on.
        var relative = (double)json["diameterSdMm"]! / (double)json["diameterMm"]!;
        Assert.Equal(2 * Math.Log2(1 + relative), (double)camera["holeSdStops"]!, 1e-9);
    }

    [Fact]
    public async Task The_offset_is_from_half_way_between_two_marks()
    {
        var json = (await PromptRun.OfAsync("hole", Scan, "--dpi", "2540", "--between", "105.3,187.8 to 305.3,187.8", "--json")).Json("hole");
        Assert.InRange((double)json["offsetRightMm"]!, -0.002, 0.002);
        Assert.InRange((double)json["offsetUpMm"]!, -0.002, 0.002);
    }

    [Fact]
    public async Task A_file_that_contradicts_the_command_is_said()
    {
        var tagged = Tagged(2400);
        var json = (await PromptRun.OfAsync("hole", tagged, "--dpi", "4800", "--json")).Json("hole");
        Assert.Contains("2400", (string)json["doubts"]![0]!, StringComparison.Ordinal);
        Assert.Equal(2400, (double)(await PromptRun.OfAsync("hole", tagged, "--json")).Json("hole")["dotsPerInch"]!, 0.1);
    }

    [Fact]
    public async Task Colour_is_taken_as_grey()
    {
        using var grey = SKBitmap.Decode(Scan);
        using var colour = grey.Copy(SKColorType.Rgba8888);
        var path = Path.Combine(directory.FullName, "colour.png");
        await File.WriteAllBytesAsync(path, colour.Encode(SKEncodedImageFormat.Png, 100).ToArray(), TestContext.Current.CancellationToken);
        var json = (await PromptRun.OfAsync("hole", path, "--dpi", "4800", "--json")).Json("hole");
        Assert.InRange((double)json["diameterMm"]!, 0.34986 * 0.995, 0.34986 * 1.005);
    }

    [Theory]
    [InlineData("how large a pixel is")]
    [InlineData("resolution", "--dpi", "1")]
    [InlineData("ruler is", "--ruler", "10mm between here and there")]
    [InlineData("without a unit", "--ruler", "10 at 1,1 to 300,1")]
    [InlineData("pixels", "--ruler", "10mm at 1,1 to 2,1")]
    [InlineData("two places", "--dpi", "4800", "--between", "nowhere")]
    [InlineData("which camera", "--dpi", "4800", "--save", "x.json")]
    [InlineData("no camera file", "--dpi", "4800", "--camera", "missing.json")]
    public async Task Bad_orders_are_refused(string containing, params string[] arguments)
        => (await PromptRun.OfAsync(["hole", Scan, .. arguments])).IsRefused(containing);

    [Fact]
    public async Task Files_without_a_hole_are_refused()
    {
        (await PromptRun.OfAsync("hole", Path.Combine(directory.FullName, "none.png"), "--dpi", "4800")).IsRefused("no file");
        var text = Path.Combine(directory.FullName, "text.png");
        await File.WriteAllTextAsync(text, "not a picture", TestContext.Current.CancellationToken);
        (await PromptRun.OfAsync("hole", text, "--dpi", "4800")).IsRefused("not a scan");
        var whole = await File.ReadAllBytesAsync(Scan, TestContext.Current.CancellationToken);
        await File.WriteAllBytesAsync(text, whole[..(whole.Length / 2)], TestContext.Current.CancellationToken);
        (await PromptRun.OfAsync("hole", text, "--dpi", "4800")).IsRefused("truncated");
    }

    /// <summary>The demo scan with a pHYs chunk put in after its header.</summary>
    private string Tagged(double dotsPerInch)
    {
        var file = File.ReadAllBytes(Scan);
        const int HeaderEnd = 8 + 25;
        var perMetre = (uint)Math.Round(dotsPerInch / 0.0254);
        byte[] number = [(byte)(perMetre >> 24), (byte)(perMetre >> 16), (byte)(perMetre >> 8), (byte)perMetre];
        byte[] chunk = [.. "pHYs"u8, .. number, .. number, 1];
        var check = Crc(chunk);
        byte[] whole = [.. file[..HeaderEnd], 0, 0, 0, 9, .. chunk, (byte)(check >> 24), (byte)(check >> 16), (byte)(check >> 8), (byte)check, .. file[HeaderEnd..]];
        var path = Path.Combine(directory.FullName, "tagged.png");
        File.WriteAllBytes(path, whole);
        return path;
    }

    // ISO/IEC 15948, annex D.
    private static uint Crc(byte[] bytes)
    {
        var crc = 0xFFFFFFFFu;
        foreach (var one in bytes)
        {
            crc ^= one;
            for (var bit = 0; bit < 8; bit++)
            {
                crc = (crc & 1) != 0 ? (crc >> 1) ^ 0xEDB88320u : crc >> 1;
            }
        }

        return ~crc;
    }
}
