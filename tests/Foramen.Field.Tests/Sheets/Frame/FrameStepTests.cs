using Bunit;
using Foramen.Engine.Quantities;
using Foramen.Field.Device;
using Foramen.Field.Sheets;
using Foramen.Field.Tests.TestKit;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.Extensions.DependencyInjection;

namespace Foramen.Field.Tests.Sheets.Frame;

public sealed class FrameStepTests : IDisposable
{
    private readonly FieldContext field = new();

    public void Dispose() => field.Dispose();

    [Fact]
    public async Task A_photograph_is_drawn_with_the_sheet_over_it()
    {
        var page = await WithPhotographAsync();
        Assert.Equal("blob:" + new string('a', 64), page.Find(".overlay image").GetAttribute("href"));
        Assert.Equal(2, page.FindAll(".overlay path.edge").Count);
    }

    [Fact]
    public async Task How_far_frames_land_off_is_drawn_and_said_beside_the_frame()
    {
        var page = await WithPhotographAsync();
        Assert.Single(page.FindAll(".overlay path.aiming"));
        Assert.StartsWith("A frame is taken to land 3 % of a side off", page.Find("#aiming").TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("in 100", page.Find("#aiming").TextContent, StringComparison.Ordinal);
        await page.Find("#marking-1").ChangeAsync(new ChangeEventArgs { Value = true });
        field.Platform.Place = (0.0, 0.0);
        await page.Find(".overlay").PointerDownAsync(new PointerEventArgs { Buttons = 1 });
        field.Platform.Place = (0.5, 0.5);
        await page.Find(".overlay").PointerMoveAsync(new PointerEventArgs { Buttons = 1 });
        Assert.Matches(@"about \d+ in 100 are cut", page.Find("#aiming").TextContent);
    }

    [Fact]
    public async Task Arrow_keys_point_the_camera()
    {
        var page = await WithPhotographAsync();
        await page.Find(".overlay").KeyDownAsync(new KeyboardEventArgs { Key = "ArrowRight" });
        await page.Find(".overlay").KeyDownAsync(new KeyboardEventArgs { Key = "ArrowUp", ShiftKey = true });
        Assert.Equal("0.5° to the right, 5° up", page.Find(".pair p[role=status]").TextContent);
    }

    [Fact]
    public async Task A_drag_moves_the_frame_with_the_finger()
    {
        var page = await WithPhotographAsync();
        field.Platform.Place = (0.5, 0.5);
        await page.Find(".overlay").PointerDownAsync(new PointerEventArgs { Buttons = 1 });
        field.Platform.Place = (0.6, 0.5);
        await page.Find(".overlay").PointerMoveAsync(new PointerEventArgs { Buttons = 1 });
        Assert.Contains("to the right, level", page.Markup, StringComparison.Ordinal);
        await page.Find(".overlay").PointerUpAsync(new PointerEventArgs());
        var before = page.Find(".overlay path.edge").GetAttribute("d");
        field.Platform.Place = (0.2, 0.5);
        await page.Find(".overlay").PointerMoveAsync(new PointerEventArgs());
        Assert.Equal(before, page.Find(".overlay path.edge").GetAttribute("d"));
    }

    [Fact]
    public async Task A_subject_near_the_edge_is_warned_of()
    {
        var page = await WithPhotographAsync();
        await page.Find("#marking-1").ChangeAsync(new ChangeEventArgs { Value = true });
        field.Platform.Place = (0.0, 0.0);
        await page.Find(".overlay").PointerDownAsync(new PointerEventArgs { Buttons = 1 });
        field.Platform.Place = (0.5, 0.5);
        await page.Find(".overlay").PointerMoveAsync(new PointerEventArgs { Buttons = 1 });
        Assert.Contains("cut off", page.Find(".notice.caution").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_picture_the_browser_cannot_read_is_said_beside_the_input()
    {
        var page = Show(await field.LoadedSheetAsync());
        field.Pictures.Refuse = new RefusalException("This browser cannot read the picture (image/x); choose a JPEG, PNG or WebP file.");
        await page.Find("#photo-choose").ChangeAsync(new ChangeEventArgs { Value = "x" });
        Assert.Contains("cannot read", page.Find("#photo-message").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task On_to_Meter_without_a_photograph()
    {
        var sheet = await field.LoadedSheetAsync();
        var page = Show(sheet);
        Assert.Contains("Without a photograph", page.Find(".thumb").TextContent, StringComparison.Ordinal);
        await page.Find(".thumb button").ClickAsync(new());
        Assert.NotNull(sheet.Sheet!.Frame);
        Assert.EndsWith($"sheet/{sheet.Id}/meter", field.Services.GetRequiredService<NavigationManager>().Uri, StringComparison.Ordinal);
    }

    [Fact]
    public async Task By_hand_says_whether_it_fits_and_where_to_stand()
    {
        var page = Show(await field.LoadedSheetAsync());
        await page.Find("#how-1").ChangeAsync(new ChangeEventArgs { Value = true });
        await page.Find("#distance").InputAsync(new ChangeEventArgs { Value = "10" });
        await page.Find("#height").InputAsync(new ChangeEventArgs { Value = "20" });
        Assert.Contains("does not fit", page.Find(".notice.caution").TextContent, StringComparison.Ordinal);
        // 20 m level with the hole, 63 mm before 47.94 mm (51 less 3 % of 102): 20·63/47.94 = 26.3 m.
        Assert.Contains("26.3 m", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_level_is_shown_where_the_device_has_one()
    {
        var page = Show(await field.LoadedSheetAsync());
        await page.FindAll("button").First(button => button.TextContent == "Show the level").ClickAsync(new());
        field.Level.OnReading!(new LevelReading(2.5, -4));
        page.WaitForAssertion(() => Assert.Contains("2.5° looks up, 4° turned to the left", page.Find(".dial").TextContent, StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_device_without_a_level_says_so()
    {
        field.Level.State = LevelState.Missing;
        var page = Show(await field.LoadedSheetAsync());
        await page.FindAll("button").First(button => button.TextContent == "Show the level").ClickAsync(new());
        Assert.Contains("spirit level", page.Markup, StringComparison.Ordinal);
    }

    private async Task<IRenderedComponent<SheetPage>> WithPhotographAsync()
    {
        var page = Show(await field.LoadedSheetAsync());
        field.Pictures.Next = PictureExamples.CanalBasin();
        await page.Find("#photo-take").ChangeAsync(new ChangeEventArgs { Value = "x" });
        page.WaitForElement(".overlay");
        return page;
    }

    private IRenderedComponent<SheetPage> Show(SheetState sheet)
        => field.Render<SheetPage>(p => p.Add(page => page.SheetText, sheet.Id.ToString()).Add(page => page.StepText, "frame"));
}
