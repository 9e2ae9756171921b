using Bunit;
using Foramen.Field.Sheets;
using Foramen.Field.Tests.TestKit;
using Foramen.Field.Texts;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;

namespace Foramen.Field.Tests.Sheets.Motions;

public sealed class MovingPanelTests : IDisposable
{
    private readonly FieldContext field = new();

    public void Dispose() => field.Dispose();

    [Fact]
    public async Task A_wheel_is_marked_by_a_drag_and_written_down()
    {
        var (sheet, page) = await WithPhotographAsync();
        await page.Find("#moving-add").ClickAsync(new());
        field.Platform.Place = (0.4, 0.4);
        await page.Find(".overlay").PointerDownAsync(new PointerEventArgs { Buttons = 1 });
        field.Platform.Place = (0.6, 0.6);
        await page.Find(".overlay").PointerMoveAsync(new PointerEventArgs { Buttons = 1 });
        await page.Find(".overlay").PointerUpAsync(new PointerEventArgs());
        await page.Find("#moving-name").InputAsync(new ChangeEventArgs { Value = "crank wheel" });
        await page.Find("#moving-how").ChangeAsync(new ChangeEventArgs { Value = "turns" });
        await page.Find("#moving-turn").InputAsync(new ChangeEventArgs { Value = "20" });
        Assert.Single(page.FindAll(".overlay ellipse.motion"));
        await page.Find("#moving-form").SubmitAsync();

        var kept = Assert.Single(sheet.Sheet!.Motions).Body.Definition;
        Assert.Equal(("crank wheel", "turns", 20.0), (kept.Name, kept.How, kept.TurnSeconds!.Value));
        Assert.InRange(kept.Width, 0.05, 0.5);
        Assert.Empty(page.FindAll("#moving-form"));
        Assert.Equal(2, page.FindAll(".overlay rect.motion").Count);
    }

    // Enlarged three and a half times, the same drag marks something so much smaller.
    [Fact]
    public async Task Something_small_is_marked_from_closer_by()
    {
        var (sheet, page) = await WithPhotographAsync();
        await page.Find("#moving-add").ClickAsync(new());
        Assert.Empty(page.FindAll("#moving-closer"));
        await DragAsync(page);
        var view = page.Find(".overlay svg").GetAttribute("viewBox");
        await page.Find("#moving-closer").ClickAsync(new());
        Assert.NotEqual(view, page.Find(".overlay svg").GetAttribute("viewBox"));
        await DragAsync(page);
        await page.Find("#moving-closer").ClickAsync(new());
        Assert.Equal(view, page.Find(".overlay svg").GetAttribute("viewBox"));
        await page.Find("#moving-name").InputAsync(new ChangeEventArgs { Value = "cyclist" });
        await page.Find("#moving-form").SubmitAsync();
        var small = Assert.Single(sheet.Sheet!.Motions).Body.Definition;
        await page.Find("#moving-add").ClickAsync(new());
        await DragAsync(page);
        await page.Find("#moving-name").InputAsync(new ChangeEventArgs { Value = "barge" });
        await page.Find("#moving-form").SubmitAsync();
        Assert.Equal(3.5, sheet.Sheet!.Motions[1].Body.Definition.Width / small.Width, 0.01);
    }

    private async Task DragAsync(IRenderedComponent<SheetPage> page)
    {
        field.Platform.Place = (0.4, 0.4);
        await page.Find(".overlay").PointerDownAsync(new PointerEventArgs { Buttons = 1 });
        field.Platform.Place = (0.6, 0.6);
        await page.Find(".overlay").PointerMoveAsync(new PointerEventArgs { Buttons = 1 });
        await page.Find(".overlay").PointerUpAsync(new PointerEventArgs());
    }

    [Fact]
    public async Task What_is_missing_is_said_and_nothing_is_written()
    {
        var (sheet, page) = await WithPhotographAsync();
        await page.Find("#moving-add").ClickAsync(new());
        await page.Find("#moving-form").SubmitAsync();
        Assert.Equal(Words.Motions.PlaceMissing, page.Find("#moving-place-message").TextContent);
        Assert.Contains(Words.Motions.NameMissing, page.Markup, StringComparison.Ordinal);
        Assert.Empty(sheet.Sheet!.Motions);
    }

    [Fact]
    public async Task The_keys_mark_it_too_and_an_open_form_is_not_lost_on_the_way_on()
    {
        var (sheet, page) = await WithPhotographAsync();
        await page.Find("#moving-add").ClickAsync(new());
        await page.Find(".overlay").KeyDownAsync(new KeyboardEventArgs { Key = "ArrowRight" });
        await page.Find("#moving-name").InputAsync(new ChangeEventArgs { Value = "barge" });
        await page.Find(".thumb button").ClickAsync(new());
        Assert.Equal(Words.Motions.Unfinished, page.Find("#moving-place-message").TextContent);
        Assert.Equal("barge", page.Find("#moving-name").GetAttribute("value"));
        await page.Find("#moving-form").SubmitAsync();
        Assert.Equal("goesAway", Assert.Single(sheet.Sheet!.Motions).Body.Definition.How);
    }

    private async Task<(SheetState Sheet, IRenderedComponent<SheetPage> Page)> WithPhotographAsync()
    {
        var sheet = await field.LoadedSheetAsync();
        var page = field.Render<SheetPage>(p => p.Add(one => one.SheetText, sheet.Id.ToString()).Add(one => one.StepText, "frame"));
        field.Pictures.Next = PictureExamples.CanalBasin();
        await page.Find("#photo-take").ChangeAsync(new ChangeEventArgs { Value = "x" });
        page.WaitForElement(".overlay");
        return (sheet, page);
    }
}
