using Bunit;
using Foramen.Field.Ledgers;
using Foramen.Field.Tests.TestKit;
using Foramen.Journal.Bodies;

namespace Foramen.Field.Tests.Ledgers;

public sealed class LedgerPageTests : IDisposable
{
    private readonly FieldContext field = new();

    public void Dispose() => field.Dispose();

    [Fact]
    public async Task Of_many_sheets_the_latest_are_shown_first_and_the_rest_on_request()
    {
        await field.Session.AppendAsync([.. Enumerable.Range(1, 70).Select(i => new SheetStarted { Sheet = field.Session.NewId(), Name = $"Number {i}" })]);
        var page = field.Render<LedgerPage>();
        Assert.Equal(60, page.FindAll(".sheet-card").Count);
        Assert.Contains("Number 70", page.Find(".sheet-card").TextContent, StringComparison.Ordinal);
        Assert.Contains("70 sheets", page.Markup, StringComparison.Ordinal);
        page.Find("#more").Click();
        Assert.Equal(70, page.FindAll(".sheet-card").Count);
        Assert.Empty(page.FindAll("#more"));
    }
}
