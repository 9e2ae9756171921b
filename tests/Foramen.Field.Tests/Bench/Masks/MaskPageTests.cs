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

    private async Task<IRenderedComponent<MaskPage>> OpenAsync()
    {
        await field.LoadedSheetAsync();
        return field.Render<MaskPage>(p => p.Add(page => page.IdText, field.Session.Ledger.Cameras.All.Single().Id.ToString()));
    }
}
