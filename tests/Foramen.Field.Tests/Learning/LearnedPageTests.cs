using Bunit;
using Foramen.Field.Learning;
using Foramen.Field.Tests.TestKit;
using Foramen.Field.Texts;
using Foramen.Journal.Learning;

namespace Foramen.Field.Tests.Learning;

public sealed class LearnedPageTests : IDisposable
{
    private readonly FieldContext field = new();

    public void Dispose() => field.Dispose();

    [Fact]
    public async Task An_empty_ledger_says_how_it_begins()
    {
        await field.Session.OpenAsync();
        Assert.Contains(Words.Learned.None, field.Render<LearnedPage>().Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task It_draws_a_bar_for_every_belief_a_point_for_every_bar_of_odds_and_names_every_sheet()
    {
        var (first, plan) = await JudgedSheets.PlannedAsync(field);
        await JudgedSheets.ExposeAndJudgeAsync(field, first, plan, 2);
        var (second, next) = await JudgedSheets.PlannedAsync(field, first);
        await JudgedSheets.ExposeAndJudgeAsync(field, second, next, 0, keeper: true);

        var page = field.Render<LearnedPage>();
        var lessons = LedgerLessons.Of(field.Session.Ledger);
        Assert.Contains("2 sheets judged, 1 kept", page.Markup, StringComparison.Ordinal);
        Assert.Equal(lessons.BeliefsAsOf(field.Time.GetUtcNow()).All.Count, page.FindAll(".belief").Count);
        Assert.Equal(lessons.Scores!.Bins.Count, page.FindAll(".reach").Count);
        Assert.Equal(2, page.FindAll("li.sheet").Count);
        Assert.Contains("until then chance speaks louder", page.Markup, StringComparison.Ordinal);
    }
}
