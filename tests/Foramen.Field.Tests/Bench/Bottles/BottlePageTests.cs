using Bunit;
using Foramen.Field.Bench;
using Foramen.Field.Bench.Bottles;
using Foramen.Field.Tests.TestKit;
using Foramen.Field.Units;
using Foramen.Journal;
using Foramen.Journal.Bodies;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;

namespace Foramen.Field.Tests.Bench.Bottles;

public sealed class BottlePageTests : IDisposable
{
    private readonly FieldContext field = new();

    public void Dispose() => field.Dispose();

    [Fact]
    public async Task A_bottle_is_mixed_and_stands_on_the_bench()
    {
        await field.Session.OpenAsync();
        var page = field.Render<MixBottlePage>();
        page.Find("#bottle-volume").Input("100");
        await page.Find("form").SubmitAsync();
        Assert.Contains("do not cover a sheet", page.Find("#bottle-volume-message").TextContent, StringComparison.Ordinal);
        page.Find("#bottle-volume").Input("400");
        page.Find("#bottle-temperature").Input("68");
        await page.Find("form").SubmitAsync();
        Assert.Contains("68 °F meant", page.Find("#bottle-temperature-message").TextContent, StringComparison.Ordinal);
        Assert.Empty(field.Session.Ledger.Bottles.All);
        Assert.Equal("400", page.Find("#bottle-volume").GetAttribute("value"));

        page.Find("#bottle-temperature").Input("20,5");
        await page.Find("form").SubmitAsync();
        var bottle = Assert.Single(field.Session.Ledger.Bottles.All);
        Assert.Equal((400.0, 20.5, "Developer"), (bottle.Mixed!.Body.VolumeMillilitres, bottle.Mixed.Body.TemperatureCelsius!.Value, bottle.Mixed.Body.Name));
        Assert.EndsWith($"bench/bottle/{bottle.Id}", field.Services.GetRequiredService<NavigationManager>().Uri, StringComparison.Ordinal);

        var bench = field.Render<BenchPage>();
        Assert.Contains("100 % of fresh", bench.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_fixer_is_mixed_with_its_kind_and_what_to_do_when_it_goes_wrong_is_at_hand()
    {
        await field.Session.OpenAsync();
        var page = field.Render<MixBottlePage>();
        Assert.Empty(page.FindAll("input[name=bottle-fixer]"));
        page.FindAll("input[name=bottle-contents]")[1].Change(true);
        page.FindAll("input[name=bottle-fixer]")[2].Change(true);
        Assert.Contains("poison centre", page.Markup, StringComparison.Ordinal);
        await page.Find("form").SubmitAsync();
        var bottle = Assert.Single(field.Session.Ledger.Bottles.All);
        Assert.Equal((BottleContents.Fixer, "sodium", 4.0), (bottle.Mixed!.Body.Contents, bottle.Mixed.Body.Fixer!.Kind, bottle.Mixed.Body.WaterParts));
    }

    [Fact]
    public async Task Its_page_says_what_first_tones_taught_and_calls_the_rest_assumed()
    {
        await field.Session.OpenAsync();
        var (first, next) = (field.Session.NewId(), field.Session.NewId());
        BottleMixed Mixed(Ulid id) => new() { Bottle = id, Contents = BottleContents.Developer, Name = "one of two", VolumeMillilitres = 300, TemperatureCelsius = 20 };
        await field.Session.AppendAsync(Mixed(first));
        await field.Session.AppendAsync(Mixed(next));
        var page = field.Render<BottlePage>(parameters => parameters.Add(one => one.IdText, next.ToString()));
        Assert.Contains("No first tone has been seen", page.Find("#learned").TextContent, StringComparison.Ordinal);
        Assert.Contains("7.5×, assumed", page.Find("#learned").TextContent, StringComparison.Ordinal);

        // 75 s over 12.5 s is 6 where common practice has 7.5: between the two, as both are known about as well.
        for (var n = 0; n < 4; n++)
        {
            await field.Session.AppendAsync(new DevelopedIn { Sheet = field.Session.NewId(), Bottle = first, TemperatureCelsius = 20, AppearedAfterSeconds = 12.5 });
        }

        page = field.Render<BottlePage>(parameters => parameters.Add(one => one.IdText, next.ToString()));
        var said = page.Find("#learned").TextContent;
        Assert.Contains("4 first tones in 1 bottle say most of its factor", said, StringComparison.Ordinal);
        Assert.DoesNotContain("7.5×, assumed", said, StringComparison.Ordinal);
        Assert.Contains("2.0×, assumed", said, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Its_page_shows_its_strength_and_takes_a_topping_up_a_pouring_away_and_a_temperature()
    {
        var day = await BottleDay.BeginAsync(field, capacity: 0.9);
        for (var sheet = 0; sheet < 3; sheet++)
        {
            await day.ProcessAsync();
        }

        var page = Render(day);
        var percent = $"{day.Account.Now.Activity.Middle * 100:0} %";
        Assert.Contains(percent, page.Find(".gauge figcaption").TextContent, StringComparison.Ordinal);
        Assert.Contains(percent, page.Find(".gauge svg").GetAttribute("aria-label"), StringComparison.Ordinal);
        Assert.Contains("longer time", page.Markup, StringComparison.Ordinal);
        Assert.Contains("4.5 ml", page.Find("dl").TextContent, StringComparison.Ordinal);

        page.Find("#top-poured").Input("400");
        await page.Find("#top-up").ClickAsync(new());
        Assert.Contains("between 0 and 300 ml", page.Find("#top-poured-message").TextContent, StringComparison.Ordinal);
        page.Find("#top-poured").Input("0");
        page.Find("#top-fresh").Input("-30");
        await page.Find("#top-up").ClickAsync(new());
        Assert.Contains("between 0 and 300 ml", page.Find("#top-fresh-message").TextContent, StringComparison.Ordinal);
        page.Find("#top-fresh").Input("100");
        await page.Find("#top-up").ClickAsync(new());
        Assert.Contains("pour 95.5 ml to waste", page.Find("#top-poured-message").TextContent, StringComparison.Ordinal);
        page.Find("#top-poured").Input("95.5");
        await page.Find("#top-up").ClickAsync(new());
        Assert.Equal(300, day.Account.Now.Volume.Millilitres, 1e-9);
        page.Find("#top-fresh").Input("");
        page.Find("#top-poured").Input("50");
        await page.Find("#top-up").ClickAsync(new());
        Assert.Equal(250, day.Account.Now.Volume.Millilitres, 1e-9);

        page.Find("#warmth").Input("68");
        await page.Find("#warmth-read").ClickAsync(new());
        Assert.Contains("68 °F meant", page.Find("#warmth-message").TextContent, StringComparison.Ordinal);
        page.Find("#warmth").Input("17");
        await page.Find("#warmth-read").ClickAsync(new());
        Assert.Equal(17, day.Account.Temperature.Celsius);
        await page.Find("#stand").ClickAsync(new());
        Assert.True(day.Account.IsOpen);
        await page.Find("#discard").ClickAsync(new());
        Assert.False(field.Session.Ledger.Bottles.Find(day.Bottle)!.InUse);
        Assert.Empty(page.FindAll("#top-up"));
        Assert.DoesNotContain("the day's bottle", field.Render<BenchPage>().Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_full_device_says_so_and_keeps_what_was_typed()
    {
        var day = await BottleDay.BeginAsync(field);
        var page = Render(day);
        field.Store.Refuse = Foramen.Field.Storage.StoreRefusal.Full;
        page.Find("#warmth").Input("18");
        await page.Find("#warmth-read").ClickAsync(new());
        Assert.Contains("no room", page.Find(".notice.refusal").TextContent, StringComparison.Ordinal);
        Assert.Equal("18", page.Find("#warmth").GetAttribute("value"));
        Assert.Equal(20, day.Account.Temperature.Celsius);
    }

    [Fact]
    public void Temperatures_are_read_in_the_users_scale()
    {
        var messages = new Dictionary<string, string>();
        Assert.Equal(20, WarmthText.Read("68", UnitSystem.Imperial, messages, "T"), 1e-9);
        Assert.Equal("68", WarmthText.Bare(20, UnitSystem.Imperial));
        Assert.Empty(messages);
        WarmthText.Read("20", UnitSystem.Imperial, messages, "T");
        Assert.Contains("20 °C meant", messages["T"], StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_fixer_says_how_many_more()
    {
        await field.Session.OpenAsync();
        var fixer = field.Session.NewId();
        await field.Session.AppendAsync(new BottleMixed { Bottle = fixer, Contents = BottleContents.Fixer, Name = "fixer", VolumeMillilitres = 500 });
        var page = field.Render<BottlePage>(p => p.Add(one => one.IdText, fixer.ToString()));
        Assert.Contains("more sheets", page.Markup, StringComparison.Ordinal);
        Assert.Contains("Never mix fixer", page.Markup, StringComparison.Ordinal);
        Assert.Contains("no such bottle", field.Render<BottlePage>(p => p.Add(one => one.IdText, "x")).Markup, StringComparison.Ordinal);
    }

    private IRenderedComponent<BottlePage> Render(BottleDay day) => field.Render<BottlePage>(p => p.Add(one => one.IdText, day.Bottle.ToString()));
}
