using System.Globalization;
using Bunit;
using Foramen.Engine.Light;
using Foramen.Engine.Quantities;
using Foramen.Field.Bench.Strips;
using Foramen.Field.Tests.TestKit;
using Foramen.Journal;
using Foramen.Journal.Bodies;
using Foramen.Journal.Fold;
using Foramen.Journal.Kit;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;

namespace Foramen.Field.Tests.Bench.Strips;

public sealed class StripPagesTests : IDisposable
{
    private const double Lux = 0.05;
    private readonly FieldContext field = new();

    public void Dispose() => field.Dispose();

    [Fact]
    public async Task A_strip_is_planned_made_read_and_used_for_the_box()
    {
        await field.LoadedSheetAsync();
        var box = Assert.Single(field.Session.Ledger.Papers.All);
        var plan = field.Render<StripPlanPage>(p => p.Add(page => page.IdText, box.Id.ToString()));
        Assert.Equal(8, plan.FindAll("#strip-moves li").Count);
        await plan.Find("#strip-through-1").ChangeAsync(new() { Value = "on" });
        plan.Find("#strip-lux").Input("0.05");
        plan.Find("#strip-first").Input("16");
        plan.Find("#strip-count").Input("11");
        await plan.Find("form").SubmitAsync();
        var strip = Assert.Single(field.Session.Ledger.Strips.All);
        Assert.Equal((Lux, 11, true), (strip.Made!.Body.OnStripLux, strip.Made.Body.Seconds.Count, strip.Made.Body.InSeveralOpenings));

        var read = field.Render<StripReadPage>(p => p.Add(page => page.IdText, strip.Id.ToString()));
        await read.Find("#strip-by-1").ChangeAsync(new() { Value = "on" });
        read.Find("#strip-masked").Input("1.98");
        foreach (var (density, number) in Densities(strip).Select((density, i) => (density, i + 1)))
        {
            read.Find($"#strip-density-{number}").Input(density.ToString("0.000", CultureInfo.InvariantCulture));
        }

        await read.Find("form").SubmitAsync();
        Assert.Equal(StripReader.Densitometer, field.Session.Ledger.Strips.Find(strip.Id)!.Read!.Body.By);

        var strips = field.Render<StripsPage>(p => p.Add(page => page.IdText, box.Id.ToString()));
        Assert.Equal(11, strips.FindAll("circle.patch").Count);
        Assert.Contains("nine times in ten", strips.Markup, StringComparison.Ordinal);
        Assert.Contains("still assumed", strips.Markup, StringComparison.Ordinal);
        await strips.Find(".thumb button").ClickAsync(new());
        var described = field.Session.Ledger.Papers.Find(box.Id)!.Current.Body;

        // The box was described as EI 2.5 at two minutes; the strip is of a paper a stop slower.
        Assert.Equal(1.25, described.Speed.ExposureIndex!.Value * Math.Pow(120 / described.Speed.AtSeconds!.Value, -0.1), 0.06);
        Assert.InRange(described.Speed.SdStops!.Value, 0.2, 0.3);

        using var again = new FieldContext(field.Store);
        await again.Session.OpenAsync();
        Assert.Equal(described, again.Session.Ledger.Papers.Find(box.Id)!.Current.Body);
    }

    [Fact]
    public async Task A_strip_that_says_nothing_is_answered_with_the_strip_to_make()
    {
        await field.LoadedSheetAsync();
        var box = Assert.Single(field.Session.Ledger.Papers.All);
        var strip = field.Session.NewId();
        await field.Session.AppendAsync(
            new StripMade { Strip = strip, Paper = box.Id, Purpose = StripPurpose.Curve, OnStripLux = 0.0001, LightKelvin = 5503, Seconds = [2, 4, 8, 16] },
            new StripRead { Strip = strip, By = StripReader.Densitometer, Densities = [1.95, 1.96, 1.95, 1.94] });
        var strips = field.Render<StripsPage>(p => p.Add(page => page.IdText, box.Id.ToString()));
        Assert.Contains("too little light", strips.Markup, StringComparison.Ordinal);
        Assert.Contains("Make next a strip of", strips.Markup, StringComparison.Ordinal);
        Assert.Empty(strips.FindAll(".thumb button"));
    }

    // One light says nothing of failure; four stops dimmer does, and finds the exponent that the strips were drawn with.
    [Fact]
    public async Task Failure_is_assumed_until_strips_in_different_light_say_it()
    {
        await field.LoadedSheetAsync();
        var box = Assert.Single(field.Session.Ledger.Papers.All);
        await DrawnAsync(box.Id, 0.8, 1);
        var one = field.Render<StripsPage>(p => p.Add(page => page.IdText, box.Id.ToString()));
        one.WaitForAssertion(() => Assert.NotEmpty(one.FindAll("a[href$='strip?for=failure']")), TimeSpan.FromSeconds(20));
        Assert.Contains("p 0.9 assumed", Squeezed(one.Find(".measure:last-of-type .value").TextContent), StringComparison.Ordinal);
        field.Services.GetRequiredService<NavigationManager>().NavigateTo($"bench/paper/{box.Id}/strip?for=failure");
        var plan = field.Render<StripPlanPage>(p => p.Add(page => page.IdText, box.Id.ToString()));
        Assert.Contains("less light", plan.Markup, StringComparison.Ordinal);

        await DrawnAsync(box.Id, 0.05, 16);
        await DrawnAsync(box.Id, 0.003, 300);
        var several = field.Render<StripsPage>(p => p.Add(page => page.IdText, box.Id.ToString()));
        Assert.Contains("by your strips", several.Markup, StringComparison.Ordinal);
        Assert.Empty(several.FindAll("a[href$='strip?for=failure']"));
    }

    [Fact]
    public async Task Nothing_typed_writes_nothing()
    {
        await field.LoadedSheetAsync();
        var box = Assert.Single(field.Session.Ledger.Papers.All);
        var strip = field.Session.NewId();
        await field.Session.AppendAsync(new StripMade { Strip = strip, Paper = box.Id, Purpose = StripPurpose.Curve, OnStripLux = 1, LightKelvin = 5503, Seconds = [2, 4, 8] });
        var read = field.Render<StripReadPage>(p => p.Add(page => page.IdText, strip.ToString()));
        await read.Find("form").SubmitAsync();
        Assert.Null(field.Session.Ledger.Strips.Find(strip)!.Read);
        read.Find("#strip-density-2").Input("dark");
        await read.Find("form").SubmitAsync();
        Assert.Contains("should be a number", read.Markup, StringComparison.Ordinal);
        Assert.Equal("dark", read.Find("#strip-density-2").GetAttribute("value"));
        Assert.Null(field.Session.Ledger.Strips.Find(strip)!.Read);
    }

    [Fact]
    public void A_strip_that_is_not_there_is_said()
        => Assert.Contains("no such strip", field.Render<StripReadPage>(p => p.Add(page => page.IdText, "nothing")).Markup, StringComparison.Ordinal);

    [Theory]
    [InlineData("", "0.5", "8", nameof(StripPlanForm.First))]
    [InlineData("8", "9", "8", nameof(StripPlanForm.Ratio))]
    [InlineData("8", "0.5", "many", nameof(StripPlanForm.Count))]
    [InlineData("1", "0.5", "8", "")]
    public void What_cannot_be_planned_is_said_beside_its_field(string first, string ratio, string count, string where)
    {
        var form = new StripPlanForm { First = first, Ratio = ratio, Count = count };
        Assert.Null(form.Plan());
        Assert.Equal([where], form.Messages.Keys);
    }

    [Fact]
    public void Without_a_camera_no_light_falls_through_a_hole()
    {
        var form = new StripPlanForm { Reading = "EV 13" };
        Assert.Null(form.Read(default, default, null));
        Assert.Equal([nameof(StripPlanForm.Reading)], form.Messages.Keys);
    }

    private static string Squeezed(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    private async Task DrawnAsync(Ulid box, double lux, double first)
    {
        var strip = field.Session.NewId();
        var made = new StripMade
        {
            Strip = strip, Paper = box, Purpose = StripPurpose.Curve, OnStripLux = lux, LightKelvin = LightColour.Noon.Temperature.Kelvin, LightSdStops = 0.05,
            Seconds = [.. Enumerable.Range(0, 11).Select(i => first * Math.Pow(2, 0.5 * i))],
        };
        await field.Session.AppendAsync(made);
        await field.Session.AppendAsync(new StripRead
        {
            Strip = strip, By = StripReader.Densitometer, Densities = [.. Densities(field.Session.Ledger.Strips.Find(strip)!).Select(density => (double?)Math.Round(density, 3))],
        });
    }

    private static IEnumerable<double> Densities(StripRecord strip)
    {
        var curve = FieldContext.Positive.ToPaper().Curve.Faster(Stops.FromValue(-1));
        var actinic = Actinic.Factor(LightColour.Noon.ToSpectrum(), PaperSensitivity.BlueSensitive);
        return strip.Made!.Body.Seconds.Select(seconds => curve.DensityAtLg(Math.Log10(strip.Made.Body.OnStripLux * actinic) + (0.9 * Math.Log10(seconds))));
    }
}
