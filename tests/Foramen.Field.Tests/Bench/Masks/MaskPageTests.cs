using Bunit;
using Foramen.Field.Bench.Masks;
using Foramen.Field.Tests.TestKit;

namespace Foramen.Field.Tests.Bench.Masks;

public sealed class MaskPageTests : IDisposable
{
    private readonly FieldContext field = new();

    public void Dispose() => field.Dispose();

    [Fact]
    public async Task Words_are_shown_on_the_print_and_kept()
    {
        var page = await OpenAsync();
        page.Find("#mask-text").Input("canal 7");
        Assert.NotEmpty(page.Find(".on-print path").GetAttribute("d")!);

        // A tray 5 mm before the paper of a box 63 mm deep: 40·58/63 = 36.83 mm.
        Assert.Contains("36.83", page.Markup, StringComparison.Ordinal);
        await page.Find("#mask-keep").ClickAsync(new());
        var mask = Assert.Single(field.Session.Ledger.Masks.All).Body.Definition;
        Assert.Equal(("text", "canal 7", "blocks"), (mask.Shape, mask.Text, mask.Sense));
    }

    [Fact]
    public async Task Words_without_glyphs_are_said_beside_the_field_and_kept_as_typed()
    {
        var page = await OpenAsync();
        page.Find("#mask-text").Input("日本");
        Assert.Equal("日本", page.Find("#mask-text").GetAttribute("value"));
        Assert.Contains("has no", page.Find("#mask-text").ParentElement!.TextContent, StringComparison.Ordinal);
        Assert.Empty(page.FindAll(".template"));
    }

    [Fact]
    public async Task A_tray_at_the_hole_is_refused()
    {
        var page = await OpenAsync();
        page.Find("#mask-text").Input("A");
        page.Find("#mask-tray").Input("63");
        Assert.Contains("nearer to the paper", page.Find("[role=alert].notice").TextContent, StringComparison.Ordinal);
    }

    // Similar triangles with the hole as their tip: 40 mm on a sheet 63 mm behind it is 40·30/63 = 19.05 mm at 30 mm before it.
    [Fact]
    public async Task A_mask_before_the_hole_is_kept_with_its_camera()
    {
        var page = await OpenAsync();
        page.Find("#mask-text").Input("A");
        await page.Find("#mask-place-1").ChangeAsync(new() { Value = "on" });
        page.Find("#mask-outside").Input("30");
        Assert.Contains("19.05", page.Markup, StringComparison.Ordinal);
        await page.Find("#mask-keep").ClickAsync(new());
        var mask = Assert.Single(field.Session.Ledger.Masks.All).Body;
        Assert.Equal(("beforeHole", 30.0), (mask.Definition.Place, mask.Definition.DistanceMillimetres));
        Assert.Equal(field.Session.Ledger.Cameras.All.Single().Id, mask.Camera);
    }

    [Fact]
    public async Task The_paths_of_an_svg_file_are_taken()
    {
        var page = await OpenFileAsync("<svg xmlns=\"http://www.w3.org/2000/svg\"><path d=\"M0 0H10V5Z\"/></svg>");
        Assert.Equal("M0 0H10V5Z", page.Find("#mask-path").GetAttribute("value")!.Trim());
        Assert.NotEmpty(page.FindAll(".on-print path"));
        Assert.Equal("", page.Find("#mask-file-message").TextContent);
    }

    [Theory]
    [InlineData("<svg xmlns=\"http://www.w3.org/2000/svg\"><script>alert(1)</script><path d=\"M0 0H10V5Z\"/></svg>", "script")]
    [InlineData("<svg xmlns=\"http://www.w3.org/2000/svg\"><path onload=\"x()\" d=\"M0 0H10V5Z\"/></svg>", "script")]
    [InlineData("<svg xmlns=\"http://www.w3.org/2000/svg\"><image href=\"elsewhere.png\"/></svg>", "only paths")]
    [InlineData("no drawing", "XML")]
    public async Task A_file_that_could_run_or_fetch_is_said_beside_it_and_the_path_stays(string file, string containing)
    {
        var page = await OpenFileAsync(file, "M0 0H3V3Z");
        Assert.Contains(containing, page.Find("#mask-file-message").TextContent, StringComparison.Ordinal);
        Assert.Equal("M0 0H3V3Z", page.Find("#mask-path").GetAttribute("value"));
    }

    private async Task<IRenderedComponent<MaskPage>> OpenFileAsync(string file, string path = "")
    {
        var page = await OpenAsync();
        await page.Find("#mask-shape-2").ChangeAsync(new() { Value = "on" });
        page.Find("#mask-path").Input(path);
        field.Pictures.File = System.Text.Encoding.UTF8.GetBytes(file);
        await page.Find("#mask-file").ChangeAsync(new());
        return page;
    }

    private async Task<IRenderedComponent<MaskPage>> OpenAsync()
    {
        await field.LoadedSheetAsync();
        return field.Render<MaskPage>(p => p.Add(page => page.IdText, field.Session.Ledger.Cameras.All.Single().Id.ToString()));
    }
}
