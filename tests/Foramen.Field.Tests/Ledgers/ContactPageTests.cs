using Bunit;
using Foramen.Field.Ledgers;
using Foramen.Field.Tests.TestKit;
using Foramen.Field.Texts;

namespace Foramen.Field.Tests.Ledgers;

public sealed class ContactPageTests : IDisposable
{
    private readonly FieldContext field = new();

    public void Dispose() => field.Dispose();

    [Fact]
    public async Task Sheets_that_come_in_while_it_is_open_appear_on_it()
    {
        var page = field.Render<ContactPage>();
        Assert.Contains(Words.Records.None, page.Markup, StringComparison.Ordinal);
        Assert.Empty(page.FindAll(".contact li"));

        await field.LoadedSheetAsync();
        page.WaitForAssertion(() => Assert.Single(page.FindAll(".contact li")));
        Assert.DoesNotContain(Words.Records.None, page.Markup, StringComparison.Ordinal);
    }
}
