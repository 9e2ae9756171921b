using Bunit;
using Foramen.Field.Bench.Chambers;
using Foramen.Field.Tests.TestKit;
using Foramen.Journal;
using Foramen.Journal.Bodies;

namespace Foramen.Field.Tests.Bench.Chambers;

public sealed class ChamberPageTests : IDisposable
{
    private readonly FieldContext field = new();

    public void Dispose() => field.Dispose();

    // Similar triangles by hand: 25.2 mm · 2.5 m / 1 m = 63 mm; spreads 0.3/25.2 and twice 0.003 as squares: 0.0127, 0.799 mm.
    [Fact]
    public async Task Two_marks_give_the_distance_and_the_camera_has_it_from_then_on()
    {
        var (camera, page) = await OpenAsync(focal: 70);
        page.Find("#chamber-apart").Input("1");
        page.Find("#chamber-away").Input("2.5");
        Assert.True(page.Find(".thumb button").HasAttribute("disabled"));
        page.Find("#chamber-seen").Input("25.2");
        await page.Find(".thumb button").ClickAsync(new());
        var known = field.Session.Ledger.Cameras.Find(camera)!.Current.Body;
        Assert.Equal(63, known.FocalDistanceMillimetres, 1e-9);
        Assert.Equal(0.0127, known.FocalDistanceRelativeSd!.Value, 1e-4);
    }

    // 2·arctan(63.5/63) and 2·arctan(51/63), worked by hand: 90.45° and 77.98°.
    [Fact]
    public async Task Angles_and_falloff_stand_before_anything_is_measured()
    {
        var (_, page) = await OpenAsync(focal: 63);
        Assert.Contains("90.5° wide, 78.0° high", page.Markup, StringComparison.Ordinal);
        Assert.Equal(35, page.FindAll("rect.cell").Count);
    }

    // An edge half a millimetre thick hides a hole of 0.35 mm from a corner at 52°.
    [Fact]
    public async Task A_thick_edge_is_said()
    {
        var (_, page) = await OpenAsync(focal: 63, thickness: 0.5);
        Assert.Contains("too thick for the corners", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_cannot_be_is_said_beside_its_field_and_stays()
    {
        var (_, page) = await OpenAsync(focal: 63);
        page.Find("#chamber-seen").Input("two");
        Assert.Equal(("true", "two"), (page.Find("#chamber-seen").GetAttribute("aria-invalid"), page.Find("#chamber-seen").GetAttribute("value")));
        page.Find("#chamber-seen").Input("3");
        page.Find("#chamber-apart").Input("100");
        page.Find("#chamber-away").Input("1");
        Assert.Contains("focal distance that follows", page.Find("[role=alert].notice").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void An_unknown_camera_is_said()
        => Assert.Contains("no such camera", field.Render<ChamberPage>(p => p.Add(page => page.IdText, "nothing")).Markup, StringComparison.Ordinal);

    private async Task<(Ulid Camera, IRenderedComponent<ChamberPage> Page)> OpenAsync(double focal, double? thickness = null)
    {
        await field.Session.OpenAsync();
        var camera = field.Session.NewId();
        await field.Session.AppendAsync(new CameraDefined { Camera = camera, Definition = FieldContext.BoxA with { FocalDistanceMillimetres = focal, HoleThicknessMillimetres = thickness } });
        return (camera, field.Render<ChamberPage>(p => p.Add(page => page.IdText, camera.ToString())));
    }
}
