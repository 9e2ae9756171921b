using Bunit;
using Foramen.Engine.Tests.Camera;
using Foramen.Field.Bench.Holes;
using Foramen.Field.Storage;
using Foramen.Field.Tests.TestKit;
using Foramen.Journal;

namespace Foramen.Field.Tests.Bench.Holes;

public sealed class HolePageTests : IDisposable
{
    private readonly FieldContext field = new();

    public void Dispose() => field.Dispose();

    // A hole 40 pixels across at 2540 dpi is 0.4 mm.
    [Fact]
    public async Task A_hole_is_measured_drawn_and_used_from_then_on()
    {
        var (camera, page) = await OpenAsync(new RenderedHole { LongAxis = 20, ShortAxis = 20 });
        await page.Find("#hole-scan").ChangeAsync(new());
        page.Find("#hole-dpi").Input("2540");
        await page.Find(".thumb button").ClickAsync(new());
        page.WaitForAssertion(() => Assert.NotNull(page.Find("path.found")));
        Assert.Contains("0.4", page.Find("[aria-live=polite]").TextContent, StringComparison.Ordinal);
        await page.Find(".thumb button").ClickAsync(new());
        var known = field.Session.Ledger.Cameras.Find(camera)!;
        Assert.Equal(2, known.Versions.Count);
        Assert.InRange(known.Current.Body.HoleDiameterMillimetres, 0.398, 0.402);
        Assert.InRange(known.Current.Body.HoleDiameterRelativeSd!.Value, 0.001, 0.02);
        Assert.Equal(63, known.Current.Body.FocalDistanceMillimetres);
    }

    [Fact]
    public async Task A_missing_resolution_is_said_beside_its_field_and_a_missing_hole_beside_the_scan()
    {
        var (_, page) = await OpenAsync(new RenderedHole { X = -40, Noise = 0.005 });
        await page.Find("#hole-scan").ChangeAsync(new());
        await page.Find(".thumb button").ClickAsync(new());
        page.WaitForAssertion(() => Assert.Equal("true", page.Find("#hole-dpi").GetAttribute("aria-invalid")));
        page.Find("#hole-dpi").Input("2400");
        await page.Find(".thumb button").ClickAsync(new());
        page.WaitForAssertion(() => Assert.Contains("no hole", page.Find("#hole-message").TextContent, StringComparison.Ordinal));
    }

    // Drawn half as large by the browser, the hole has half as many pixels and each is twice as wide.
    [Fact]
    public async Task A_scan_drawn_smaller_keeps_its_millimetres()
    {
        var (camera, page) = await OpenAsync(new RenderedHole { LongAxis = 20, ShortAxis = 20 }, times: 2);
        await page.Find("#hole-scan").ChangeAsync(new());
        page.Find("#hole-dpi").Input("5080");
        await page.Find(".thumb button").ClickAsync(new());
        page.WaitForAssertion(() => page.Find("path.found"));
        await page.Find(".thumb button").ClickAsync(new());
        Assert.InRange(field.Session.Ledger.Cameras.Find(camera)!.Current.Body.HoleDiameterMillimetres, 0.398, 0.402);
    }

    [Fact]
    public void An_unknown_camera_is_said()
        => Assert.Contains("no such camera", field.Render<HolePage>(p => p.Add(page => page.IdText, "nothing")).Markup, StringComparison.Ordinal);

    private async Task<(Ulid Camera, IRenderedComponent<HolePage> Page)> OpenAsync(RenderedHole hole, int times = 1)
    {
        await field.LoadedSheetAsync();
        var rgba = hole.Codes().SelectMany(code => new[] { code, code, code, byte.MaxValue }).ToArray();
        field.Pictures.Next = new TakenPicture(new string('c', 64), "image/png", [1], hole.Width * times, hole.Height * times, hole.Width, hole.Height, rgba);
        var camera = field.Session.Ledger.Cameras.All.Single().Id;
        return (camera, field.Render<HolePage>(p => p.Add(page => page.IdText, camera.ToString())));
    }
}
