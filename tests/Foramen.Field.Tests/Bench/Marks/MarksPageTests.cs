using Bunit;
using Foramen.Field.Bench.Marks;
using Foramen.Field.Tests.TestKit;

namespace Foramen.Field.Tests.Bench.Marks;

public sealed class MarksPageTests : IDisposable
{
    private readonly FieldContext field = new();

    public void Dispose() => field.Dispose();

    [Fact]
    public async Task The_template_is_at_true_scale_and_printed()
    {
        var page = await OpenAsync();
        Assert.Equal("210mm", page.Find(".template svg").GetAttribute("width"));
        Assert.Contains("63.5 mm", page.Markup, StringComparison.Ordinal);
        Assert.Contains("Never look at the sun", page.Find(".notice").TextContent, StringComparison.Ordinal);
        await page.Find(".thumb button").ClickAsync(new());
        Assert.Equal(1, field.Platform.Printed);
    }

    [Theory]
    [InlineData("3", "between 20")]
    [InlineData("400", "a page holds")]
    [InlineData("long", "should be a number")]
    public async Task A_base_that_cannot_be_is_said_beside_its_field(string typed, string says)
    {
        var page = await OpenAsync();
        page.Find("#marks-base").Input(typed);
        Assert.Contains(says, page.Find(".field .message").TextContent, StringComparison.Ordinal);
        Assert.Equal(typed, page.Find("#marks-base").GetAttribute("value"));
        Assert.Empty(page.FindAll(".template"));
    }

    private async Task<IRenderedComponent<MarksPage>> OpenAsync()
    {
        await field.LoadedSheetAsync();
        return field.Render<MarksPage>(p => p.Add(page => page.IdText, field.Session.Ledger.Cameras.All.Single().Id.ToString()));
    }
}
