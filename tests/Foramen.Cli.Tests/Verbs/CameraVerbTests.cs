namespace Foramen.Cli.Tests.Verbs;

public class CameraVerbTests
{
    // 63/0.35 = 180; half-angles atan(63.5/63) and atan(51/63); cos⁴ law in the corner, (f²/(f² + r²))², less a little for the edge's thickness.
    [Fact]
    public async Task The_demo_box_is_described()
    {
        var json = (await PromptRun.OfAsync("camera", PromptRun.Kit("box-a.json"), "--json")).Json("camera");
        Assert.Equal(180, (double)json["fNumber"]!, 1e-9);
        Assert.Equal(2 * Math.Atan(63.5 / 63) * 180 / Math.PI, (double)json["horizontalFieldDeg"]!, 1e-6);
        Assert.Equal(2 * Math.Atan(51.0 / 63) * 180 / Math.PI, (double)json["verticalFieldDeg"]!, 1e-6);
        var cosFourth = 2 * Math.Log2(63.0 * 63 / ((63.0 * 63) + (63.5 * 63.5) + (51.0 * 51)));
        Assert.InRange((double)json["cornerFalloffStops"]!, cosFourth - 0.5, cosFourth);
        Assert.InRange((double)json["bestDiameterMm"]!, 0.2, 0.35);
    }

    // By hand: 1 m at 2.5 m seen as 25.2 mm: f = 25.2·2500/1000 = 63 mm. Spread: 0.3/25.2 and twice 0.3 % as squares: 0.01264.
    [Fact]
    public async Task Marks_on_a_print_measure_the_distance_from_hole_to_paper()
    {
        var json = (await PromptRun.OfAsync("camera", PromptRun.Kit("box-a.json"), "--seen", "1m at 2.5 m as 25.2mm", "--json")).Json("camera");
        Assert.Equal(63, (double)json["focalDistanceMm"]!, 1e-9);
        Assert.Equal(63 * 0.01264, (double)json["focalDistanceSdMm"]!, 1e-3);
        Assert.True((bool)json["holeCoversCorners"]!);
        Assert.Equal((double)json["falloffStops"]![0]![0]!, (double)json["falloffStops"]![4]![6]!, 1e-9);
    }

    [Theory]
    [InlineData("how far apart", "one metre")]
    [InlineData("focal distance", "10mm at 900m as 200mm")]
    [InlineData("on the paper", "1m at 2.5m as 1mm")]
    public async Task Absurd_marks_are_refused(string containing, string seen)
        => (await PromptRun.OfAsync("camera", PromptRun.Kit("box-a.json"), "--seen", seen)).IsRefused(containing);

    [Fact]
    public async Task A_curved_camera_is_described()
        => Assert.InRange((double)(await PromptRun.OfAsync("camera", PromptRun.Kit("tin.json"), "--json")).Json("camera")["horizontalFieldDeg"]!, 125, 135);

    [Theory]
    [InlineData("without a unit", "--hole", "0.35", "--distance", "63mm", "--sheet", "127x102mm")]
    [InlineData("diameter", "--hole", "-0.35mm", "--distance", "63mm", "--sheet", "127x102mm")]
    [InlineData("too large", "--hole", "35mm", "--distance", "63mm", "--sheet", "127x102mm")]
    [InlineData("furlong", "--hole", "0.35mm", "--distance", "1furlong", "--sheet", "127x102mm")]
    [InlineData("width and height", "--hole", "0.35mm", "--distance", "63mm", "--sheet", "127mm")]
    [InlineData("hole's diameter", "--distance", "63mm")]
    public async Task Bad_cameras_are_refused(string containing, params string[] arguments)
        => (await PromptRun.OfAsync(["camera", .. arguments])).IsRefused(containing);
}
