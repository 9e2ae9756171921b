using Bunit;
using Foramen.Field.Learning;
using Foramen.Field.Tests.TestKit;
using Foramen.Field.Texts;
using Foramen.Journal.Bodies;
using Foramen.Journal.Learning;
using Microsoft.Extensions.DependencyInjection;

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

    [Fact]
    public async Task A_long_journal_is_read_bit_by_bit_and_shown_when_it_is_read()
    {
        await JudgeAsync(60);
        var page = field.Render<LearnedPage>();
        page.WaitForAssertion(() => Assert.Contains("60 sheets judged, 30 kept", page.Markup, StringComparison.Ordinal));
        Assert.Empty(page.FindAll("#reading"));

        // Known once, it is there at once.
        Assert.Contains("60 sheets judged", field.Render<LearnedPage>().Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Before_each_bit_it_is_told_how_much_is_left_and_can_be_stopped()
    {
        await JudgeAsync(250);
        var lessons = field.Services.GetRequiredService<Lessons>();
        using var stop = new CancellationTokenSource();
        var told = new List<int>();
        await lessons.PrepareAsync(
            left =>
            {
                told.Add(left);
                if (left == 150)
                {
                    stop.Cancel();
                }
            },
            stop.Token);
        Assert.Equal([250, 150], told);
        Assert.Equal(150, lessons.SheetsLeft);
        Assert.False(lessons.IsAtHand);
        await lessons.PrepareAsync(told.Add, Xunit.TestContext.Current.CancellationToken);
        Assert.Equal([250, 150, 150, 50, 0], told);
        Assert.True(lessons.IsAtHand);
        Assert.Equal(250, lessons.All.Keepers.Count);
    }

    private async Task JudgeAsync(int sheets)
    {
        await field.Session.OpenAsync();
        for (var i = 0; i < sheets; i++)
        {
            var id = field.Session.NewId();
            await field.Session.AppendAsync(new SheetStarted { Sheet = id });
            await field.Session.AppendAsync(new PrintJudged { Sheet = id, Keeper = i % 2 == 0 });
        }
    }
}
