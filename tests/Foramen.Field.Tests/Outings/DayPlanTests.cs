using Bunit;
using Foramen.Engine.Exposure;
using Foramen.Engine.Quantities;
using Foramen.Field.Outings;
using Foramen.Field.Tests.TestKit;
using Foramen.Field.Time;
using Foramen.Journal.Bodies;
using Microsoft.Extensions.DependencyInjection;

namespace Foramen.Field.Tests.Outings;

public sealed class DayPlanTests
{
    [Fact]
    public async Task A_day_is_planned_within_its_hours_and_sheets()
    {
        using var field = new FieldContext();
        await WithPlacesAsync(field);
        var form = new DayPlanForm(field.Services.GetRequiredService<Clock>()) { Sheets = "3", Each = "2", From = "7:30", To = "19:00", Cloud = "20" };
        form.Make(field.Session.Ledger);
        var plan = Assert.IsType<OutingPlan>(form.Plan);
        Assert.Equal(3, plan.Sheets);
        Assert.Equal(3 * 0.8, plan.SheetsHopedFor, 9);
        Assert.All(plan.Steps, step => Assert.True(step.Start.TimeOfDay >= new TimeSpan(7, 30, 0) && step.End.TimeOfDay <= TimeSpan.FromHours(19)));
        Assert.Equal(["The quay"], form.Undescribed);
    }

    [Theory]
    [InlineData("25:00", "20:00", "30", nameof(DayPlanForm.From))]
    [InlineData("08:00", "07:00", "30", nameof(DayPlanForm.To))]
    [InlineData("08:00", "20:00", "130", nameof(DayPlanForm.Cloud))]
    public async Task What_cannot_be_is_said_beside_its_field(string from, string to, string cloud, string wrong)
    {
        using var field = new FieldContext();
        await WithPlacesAsync(field);
        var form = new DayPlanForm(field.Services.GetRequiredService<Clock>()) { From = from, To = to, Cloud = cloud };
        form.Make(field.Session.Ledger);
        Assert.Null(form.Plan);
        Assert.Equal([wrong], form.Messages.Keys);
    }

    [Fact]
    public async Task Todays_tallies_say_how_long_suns_and_clouds_last()
    {
        using var field = new FieldContext();
        var sheet = await field.PlannedSheetAsync(300);
        await field.Session.AppendAsync(new HoleOpened { Sheet = sheet.Id, Light = LightWord.Sun, LightStops = 0 });
        field.Time.Advance(TimeSpan.FromSeconds(90));
        await field.Session.AppendAsync(new LightChanged { Sheet = sheet.Id, Light = LightWord.Cloud, LightStops = -2 });
        field.Time.Advance(TimeSpan.FromSeconds(60));
        await field.Session.AppendAsync(new LightChanged { Sheet = sheet.Id, Light = LightWord.Sun, LightStops = 0 });
        field.Time.Advance(TimeSpan.FromSeconds(30));
        var seen = LightToday.Of(field.Session.Ledger, field.Services.GetRequiredService<Clock>().Now, true, Duration.FromSeconds(30));
        Assert.Equal([90.0], seen.Suns.Select(sun => Math.Round(sun.Seconds, 3)));
        Assert.Equal([60.0], seen.Clouds.Select(cloud => Math.Round(cloud.Seconds, 3)));
    }

    [Fact]
    public async Task The_page_answers_whether_to_wait()
    {
        using var field = new FieldContext();
        await WithPlacesAsync(field);
        var page = field.Render<DayPlanPage>();
        page.FindAll("form")[0].Submit();
        Assert.NotEmpty(page.FindAll(".steps .expose"));
        page.Find("#wait-needs").Input("2");
        page.Find("#wait-wait").Input("0");
        page.FindAll("form")[1].Submit();
        // No tally yet: one sun of a minute that still lasts, and the prior; exponential with a gamma-distributed rate: ((5 + 1) / (5 + 1 + 2))^1 (Lomax).
        Assert.Contains("75 %", page.Markup, StringComparison.Ordinal);
        page.Find("#wait-wait").Input("many");
        page.FindAll("form")[1].Submit();
        Assert.Contains("should be a number", page.Markup, StringComparison.Ordinal);
    }

    private static async Task WithPlacesAsync(FieldContext field)
    {
        await field.LoadedSheetAsync();
        await field.Session.AppendAsync(
            new PlaceDefined { Place = field.Session.NewId(), Name = "Elevator", LatitudeDegrees = 52.5, LongitudeDegrees = 5.25, FacesDegrees = 0, ReflectancePercent = 40 },
            new PlaceDefined { Place = field.Session.NewId(), Name = "Weir", LatitudeDegrees = 52.502, LongitudeDegrees = 5.25, FacesDegrees = 30, ReflectancePercent = 30 },
            new PlaceDefined { Place = field.Session.NewId(), Name = "The quay" });
    }
}
