using SkiaSharp;

namespace Foramen.Cli.Tests.Verbs;

/// <summary>The demo photograph with what moves on it.</summary>
public sealed class PreviewMovingTests : IDisposable
{
    private readonly DirectoryInfo directory = Directory.CreateTempSubdirectory("foramen-moving-");

    public void Dispose() => directory.Delete(recursive: true);

    [Fact]
    public async Task The_cyclist_is_gone_and_the_wheel_is_a_disc()
    {
        var (still, moved) = (Path.Combine(directory.FullName, "still.png"), Path.Combine(directory.FullName, "moved.png"));
        await PromptRun.OfAsync([.. Base, "--out", still]);
        var json = (await PromptRun.OfAsync([.. Base, "--moving", PromptRun.Moving, "--out", moved, "--json"])).Json("preview");
        Assert.Equal(["cyclist", "crank wheel", "clouds", "water"], json["moving"]!.AsArray().Select(one => (string)one!["name"]!));
        Assert.Equal("vanishes", (string)json["moving"]![0]!["verdict"]!);
        Assert.True((double)json["moving"]![1]!["movedDifference"]! < 0.2 * (double)json["moving"]![1]!["stillDifference"]!);

        using var before = SKBitmap.Decode(still);
        using var after = SKBitmap.Decode(moved);

        // Around the hub, a third of the way to the rim: spokes and gaps before, one tone after.
        Assert.True(Swing(before) > 2.5 * Swing(after), $"{Swing(before)} and {Swing(after)}");

        // What does not move is as it was.
        Assert.Equal(before.GetPixel(before.Width * 2 / 5, before.Height / 3), after.GetPixel(before.Width * 2 / 5, before.Height / 3));
    }

    [Fact]
    public async Task Without_the_file_nothing_moves()
        => Assert.Empty((await PromptRun.OfAsync([.. Base, "--out", Path.Combine(directory.FullName, "still.png"), "--json"])).Json("preview")["moving"]!.AsArray());

    [Theory]
    [InlineData("""{"moving":[{"name":"kite","how":"turns","left":0.05,"top":0.97,"width":0.01,"height":0.02,"turnSeconds":2}]}""", "The moving region \"kite\" lies outside the frame")]
    [InlineData("""{"moving":[{"name":"kite","how":"turns","left":0.5,"top":0.5,"width":0.1,"height":0.1}]}""", "The time of a turn is missing; say it.")]
    [InlineData("""{"moving":[{"name":"kite","how":"turns","left":0.5,"top":0.5,"width":0.1,"height":0.1,"turnSeconds":0}]}""", "The time of a turn is 0 s; it should be between 0.001 and")]
    [InlineData("""{"moving":[{"name":"kite","how":"flies","left":0.5,"top":0.5,"width":0.1,"height":0.1}]}""", "it should be turns, passes, goesAway, sways, flows or lamp")]
    [InlineData("""{"moving":[{"name":"kite","how":"goesAway","left":0.95,"top":0.5,"width":0.1,"height":0.1}]}""", "should be between 0 and 1")]
    [InlineData("""{"moving":[""", "cannot be read as a moving-regions file")]
    public async Task What_cannot_be_is_refused_in_a_sentence(string text, string containing)
    {
        var file = Path.Combine(directory.FullName, "moving.json");
        await File.WriteAllTextAsync(file, text, TestContext.Current.CancellationToken);
        (await PromptRun.OfAsync([.. Base, "--moving", file, "--out", Path.Combine(directory.FullName, "p.png")])).IsRefused(containing);
        Assert.False(File.Exists(Path.Combine(directory.FullName, "p.png")));
    }

    [Fact]
    public async Task A_file_that_is_not_there_is_said()
        => (await PromptRun.OfAsync([.. Base, "--moving", Path.Combine(directory.FullName, "none.json"), "--out", Path.Combine(directory.FullName, "p.png")]))
            .IsRefused("There is no moving-regions file");

    private static string[] Base => ["preview", PromptRun.Demo, "--camera", PromptRun.Kit("box-a.json"), "--paper", PromptRun.Kit("positive.json"), "--size", "640"];

    // The greatest less the least code on the left half of a circle about the wheel's hub, where nothing else stands before it.
    private static int Swing(SKBitmap print)
    {
        var codes = Enumerable.Range(0, 60)
            .Select(i => Math.PI * (0.5 + (i / 60.0)))
            .Select(angle => (int)print.GetPixel(
                (int)((0.6405 + (0.021 * Math.Cos(angle))) * print.Width), (int)((0.5335 * print.Height) - (0.021 * Math.Sin(angle) * print.Width))).Red)
            .ToList();
        return codes.Max() - codes.Min();
    }
}
