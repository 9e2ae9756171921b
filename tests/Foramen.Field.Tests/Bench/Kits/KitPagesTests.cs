using Bunit;
using Foramen.Field.Bench.Kits;
using Foramen.Field.Tests.TestKit;
using Foramen.Field.Units;

namespace Foramen.Field.Tests.Bench.Kits;

public sealed class KitPagesTests : IDisposable
{
    private readonly FieldContext field = new();

    public void Dispose() => field.Dispose();

    [Fact]
    public async Task A_kit_is_planned_kept_and_checked_off_and_the_journal_remembers()
    {
        await field.LoadedSheetAsync();
        var plan = field.Render<PlanKitPage>();
        // The size is that of the first camera; ten sheets and three spares.
        Assert.Equal("127", plan.Find("#kit-width").GetAttribute("value"));
        Assert.Contains("13 sheets of paper", plan.Markup, StringComparison.Ordinal);
        plan.Find("#kit-people").Input("5");
        plan.Find("#kit-sheets").Input("2");
        Assert.Contains("One bottle develops one sheet at a time", plan.Markup, StringComparison.Ordinal);
        await plan.Find(".thumb button").ClickAsync(new());

        var kit = Assert.Single(field.Session.Ledger.Kits.All);
        Assert.Equal("13 sheets, 5 people", kit.Planned!.Body.Name);
        var list = field.Render<PackingPage>(p => p.Add(page => page.IdText, kit.Id.ToString()));
        var lines = kit.Planned.Body.Lines.Count;
        Assert.Equal(lines, list.FindAll("input[type=checkbox]").Count);
        await list.FindAll("input[type=checkbox]")[1].ChangeAsync(new() { Value = true });
        Assert.Equal([1], field.Session.Ledger.Kits.Find(kit.Id)!.Packed);
        Assert.Contains($"{lines - 1} still to pack", list.Markup, StringComparison.Ordinal);
        await list.FindAll("input[type=checkbox]")[1].ChangeAsync(new() { Value = false });
        Assert.Empty(field.Session.Ledger.Kits.Find(kit.Id)!.Packed);

        using var again = new FieldContext(field.Store);
        await again.Session.OpenAsync();
        Assert.Equal(lines, again.Session.Ledger.Kits.Find(kit.Id)!.Left);
    }

    [Theory]
    [InlineData("0", "127", "500", "50", nameof(KitForm.Sheets))]
    [InlineData("2.5", "127", "500", "50", nameof(KitForm.Sheets))]
    [InlineData("ten", "127", "500", "50", nameof(KitForm.Sheets))]
    [InlineData("10", "5", "500", "50", nameof(KitForm.Width))]
    [InlineData("10", "127", "", "50", nameof(KitForm.Developer))]
    [InlineData("10", "127", "500", "-50", nameof(KitForm.TopUp))]
    [InlineData("10", "127", "500", "501", nameof(KitForm.TopUp))]
    [InlineData("10", "127", "100", "10", "")]
    public void What_cannot_be_is_said_beside_its_field(string sheets, string width, string developer, string topUp, string where)
    {
        var form = new KitForm(UnitSystem.Metric) { Sheets = sheets, Width = width, Developer = developer, TopUp = topUp };
        Assert.Null(form.Read());
        Assert.Equal([where], form.Messages.Keys);
    }

    // By hand: 10 + 3 sheets at 0.9, 500 + 13·50 = 1150 ml at 1 + 9 are 115 ml at 24 a litre: 11.70 + 2.76.
    [Fact]
    public void Prices_may_stay_empty_or_add_up()
    {
        Assert.Null(new KitForm(UnitSystem.Metric).Read()!.Cost);
        Assert.Equal(14.46, new KitForm(UnitSystem.Metric) { SheetPrice = "0.9", DeveloperPrice = "24" }.Read()!.Cost!.Value, 1e-9);
    }
}
