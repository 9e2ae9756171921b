using Bunit;
using Foramen.Field.Learning;
using Foramen.Field.Sheets;
using Foramen.Field.Sheets.Judge;
using Foramen.Field.Tests.TestKit;
using Foramen.Field.Texts;
using Foramen.Journal.Bodies;
using Microsoft.Extensions.DependencyInjection;

namespace Foramen.Field.Tests.Learning;

public sealed class ReshootStateTests : IDisposable
{
    private readonly FieldContext field = new();

    public void Dispose() => field.Dispose();

    [Fact]
    public async Task A_sheet_half_a_stop_over_moves_the_belief_shortens_the_next_time_and_is_named_as_the_reason()
    {
        var (sheet, plan) = await JudgedSheets.PlannedAsync(field);
        Assert.Equal(0, plan.Teaching);
        await JudgedSheets.ExposeAndJudgeAsync(field, sheet, plan, halfStops: 1);

        var card = Card(sheet)!;

        // No belief goes further than what was seen of the sheet.
        var lesson = Assert.Single(field.Services.GetRequiredService<Lessons>().All.Evidence);
        var surprise = lesson.Tones.Average(tone => tone.Seen.Value - tone.Foretold.Value);
        Assert.InRange(card.After.Mean - card.Before.Mean, surprise / 4, surprise);
        Assert.True(card.After.Spread < card.Before.Spread);
        Assert.True(card.Advice.Next.Time < card.Advice.Given.Time);
        Assert.True(card.Advice.Odds.Total > card.Advice.OddsUnchanged);
        Assert.Equal(sheet.Id, Assert.Single(card.Why).Sheet);

        // The next plan of the same scene rests on it, and says so.
        var (_, next) = await JudgedSheets.PlannedAsync(field, sheet);
        Assert.Equal(1, next.Teaching);
        Assert.Equal(card.Advice.Next.Time.Seconds, next.Recommended!.Exposure.Time.Seconds, 0.15 * card.Advice.Next.Time.Seconds);
        Assert.True(next.Recommended.Exposure.Time < plan.Recommended!.Exposure.Time);
        Assert.Equal(sheet.Id, Assert.Single(next.Why).Sheet);
    }

    [Fact]
    public async Task Whether_it_is_worth_a_sheet_depends_on_what_is_left()
    {
        var (sheet, plan) = await JudgedSheets.PlannedAsync(field);
        await JudgedSheets.ExposeAndJudgeAsync(field, sheet, plan, halfStops: 4, keeper: false, MishapCause.Frame);
        var card = Card(sheet)!;
        Assert.True(card.Advice.Reframe);
        Assert.False(card.Advice.IsWorthASheet);
        card.Say(3, 0);
        Assert.True(card.Advice.IsWorthASheet);
        card.Say(0, 0);
        Assert.False(card.Advice.IsWorthASheet);
    }

    [Fact]
    public async Task A_sheet_that_says_nothing_of_its_exposure_has_no_card()
    {
        var sheet = await field.PlannedSheetAsync(90);
        Assert.True(await new JudgeState(sheet) { Keeper = true }.SaveAsync());
        Assert.Null(Card(sheet));
    }

    [Fact]
    public async Task The_card_says_what_to_change_and_refuses_half_a_sheet_beside_its_field()
    {
        var (sheet, plan) = await JudgedSheets.PlannedAsync(field);
        await JudgedSheets.ExposeAndJudgeAsync(field, sheet, plan, halfStops: 3);
        var page = field.Render<ReshootCard>(parameters => parameters.Add(card => card.Card, Card(sheet)!));
        Assert.Contains("less exposure", page.Markup, StringComparison.Ordinal);
        page.Find("#sheets-left").Input("2.5");
        Assert.Contains(Words.Reshoot.Count, page.Markup, StringComparison.Ordinal);
        page.Find("#sheets-left").Input("4");
        Assert.Contains("Yes:", page.Markup, StringComparison.Ordinal);
        Assert.Equal(4, field.Services.GetRequiredService<Bag>().SheetsLeft);
    }

    [Fact]
    public async Task What_the_sheet_taught_is_worked_out_when_it_is_asked_for()
    {
        var (sheet, plan) = await JudgedSheets.PlannedAsync(field);
        await JudgedSheets.ExposeAndJudgeAsync(field, sheet, plan, halfStops: 3);
        var card = Card(sheet)!;
        var page = field.Render<ReshootCard>(parameters => parameters.Add(card => card.Card, card));
        Assert.Empty(page.FindAll("#taught p"));
        page.Find("#taught").TriggerEvent("ontoggle", EventArgs.Empty);
        // The first judged sheet: before it nothing was known, and it came out lighter.
        Assert.Equal(0, card.Before.Mean, 1e-9);
        Assert.True(card.After.Mean > 0.1);
        Assert.True(card.After.Spread < card.Before.Spread);
        Assert.Equal(Words.Learned.Change(card.Before, card.After), page.Find("#taught p").TextContent);
    }

    private ReshootState? Card(SheetState sheet)
        => ReshootState.Of(sheet, field.Services.GetRequiredService<Lessons>(), field.Services.GetRequiredService<Bag>());
}
