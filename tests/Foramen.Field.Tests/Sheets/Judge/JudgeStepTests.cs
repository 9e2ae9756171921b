using Bunit;
using Foramen.Field.Sheets;
using Foramen.Field.Tests.TestKit;
using Foramen.Journal.Bodies;

namespace Foramen.Field.Tests.Sheets.Judge;

public sealed class JudgeStepTests : IDisposable
{
    private readonly FieldContext field = new();

    public void Dispose() => field.Dispose();

    [Fact]
    public async Task Half_stops_then_keeper_then_what_it_means()
    {
        var sheet = await field.PlannedSheetAsync(120);
        var page = Render(sheet);
        Assert.True(page.Find(".thumb button").HasAttribute("disabled"));
        page.FindAll(".way button")[1].Click();
        page.FindAll(".way button")[1].Click();
        Assert.Equal("1 stop too light", page.Find(".way output").TextContent);
        page.Find(".causes button").Click();
        page.FindAll("input[name=keeper]")[0].Change(true);
        await page.Find(".thumb button").ClickAsync(new());

        // 120·2^(−1/0.9) = 55.6 s (Schwarzschild, 1900, p = 0.9), worked by hand.
        Assert.Contains("56 s", page.Find(".numerals").TextContent, StringComparison.Ordinal);
        Assert.Contains("Keeper", page.Markup, StringComparison.Ordinal);
        var judged = sheet.Sheet!.Judgement!.Body;
        Assert.True(judged.Keeper);
        Assert.Equal([MishapCause.Frame], judged.Causes!);
        Assert.Equal(1, Assert.Single(judged.Tones!).LighterByStops);

        await page.Find(".thumb button").ClickAsync(new());
        Assert.Equal(2, field.Session.Ledger.Sheets.Count);
    }

    [Fact]
    public async Task A_full_device_keeps_the_judgement_on_the_screen()
    {
        var sheet = await field.PlannedSheetAsync(120);
        var page = Render(sheet);
        page.FindAll(".way button")[0].Click();
        page.FindAll("input[name=keeper]")[1].Change(true);
        field.Store.Refuse = Foramen.Field.Storage.StoreRefusal.Full;
        await page.Find(".thumb button").ClickAsync(new());
        Assert.Null(sheet.Sheet!.Judgement);
        Assert.Equal("half a stop too dark", page.Find(".way output").TextContent);
    }

    private IRenderedComponent<SheetPage> Render(SheetState sheet)
        => field.Render<SheetPage>(p => p.Add(page => page.SheetText, sheet.Id.ToString()).Add(page => page.StepText, "judge"));
}
