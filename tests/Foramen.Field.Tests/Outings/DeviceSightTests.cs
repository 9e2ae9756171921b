using Bunit;
using Foramen.Field.Device;
using Foramen.Field.Outings;
using Foramen.Field.Tests.TestKit;
using Foramen.Field.Texts;

namespace Foramen.Field.Tests.Outings;

public sealed class DeviceSightTests : IDisposable
{
    private readonly FieldContext field = new();

    public void Dispose() => field.Dispose();

    [Fact]
    public async Task A_touch_takes_the_bearing_that_is_shown_and_lets_the_sensor_rest()
    {
        var page = field.Render<PlacePage>();
        page.Find("#place-sight").Click();
        Assert.Contains(Words.Frame.LevelWaits, page.Find("#place-sight").TextContent, StringComparison.Ordinal);
        await page.InvokeAsync(() => field.Level.OnReading!(new LevelReading(12.2, 0, 317.6)));
        Assert.Contains("Towards 318°, 12° up", page.Find("#place-sight").TextContent, StringComparison.Ordinal);
        Assert.Contains(Words.Sights.Compass, page.Find("#place-sight").TextContent, StringComparison.Ordinal);
        page.Find("#place-sight button").Click();
        Assert.Equal("318", page.Find("#place-faces").GetAttribute("value"));
        Assert.Null(field.Level.OnReading);
        Assert.Equal("BUTTON", page.Find("#place-sight").TagName);
    }

    // Just west of north a bearing rounds to 0, not to 360.
    [Fact]
    public async Task Just_west_of_north_is_north()
    {
        var page = field.Render<PlacePage>();
        page.Find("#place-sight").Click();
        await page.InvokeAsync(() => field.Level.OnReading!(new LevelReading(0, 0, 359.7)));
        Assert.Contains("Towards 0°, level", page.Find("#place-sight").TextContent, StringComparison.Ordinal);
        Assert.Contains(": 0°", page.Find("#place-sight button").TextContent, StringComparison.Ordinal);
        page.Find("#place-sight button").Click();
        Assert.Equal("0", page.Find("#place-faces").GetAttribute("value"));
    }

    [Fact]
    public async Task Without_a_compass_no_bearing_can_be_taken_and_the_page_says_so()
    {
        var page = field.Render<PlacePage>();
        page.Find("#place-sight").Click();
        await page.InvokeAsync(() => field.Level.OnReading!(new LevelReading(-20, 0)));
        Assert.True(page.Find("#place-sight button").HasAttribute("disabled"));
        Assert.Contains("20° down", page.Find("#place-sight").TextContent, StringComparison.Ordinal);
        Assert.Contains(Words.Sights.NoCompass, page.Find("#place-sight").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task One_sight_at_a_time_has_the_sensor()
    {
        var page = field.Render<PlacePage>();
        page.Find("#shade-add").Click();
        page.Find("#shade-add").Click();
        page.Find("#shade-1-name").Input("hill");
        page.Find("#place-sight").Click();
        page.Find("#shade-1-sight").Click();
        Assert.Equal("BUTTON", page.Find("#place-sight").TagName);
        await page.InvokeAsync(() => field.Level.OnReading!(new LevelReading(15, 0, 90)));
        Assert.Contains("Towards 90°", page.Find("#shade-1-sight").TextContent, StringComparison.Ordinal);

        // The first is taken out, the second moves up: its sight has ended with it, and what was typed stays.
        page.FindAll("button").First(button => button.TextContent == Words.Shades.Remove).Click();
        Assert.Equal("hill", page.Find("#shade-0-name").GetAttribute("value"));
        Assert.Equal("BUTTON", page.Find("#shade-0-sight").TagName);
        page.Find("#shade-0-sight").Click();
        page.FindAll("button").First(button => button.TextContent == Words.Shades.Remove).Click();
        Assert.Null(field.Level.OnReading);
    }

    [Theory]
    [InlineData(LevelState.Missing)]
    [InlineData(LevelState.Refused)]
    public void A_device_that_does_not_say_how_it_is_held_leaves_all_to_be_typed(LevelState state)
    {
        field.Level.State = state;
        var page = field.Render<PlacePage>();
        page.Find("#place-sight").Click();
        Assert.Equal("BUTTON", page.Find("#place-sight").TagName);
        Assert.Contains(state == LevelState.Missing ? Words.Frame.LevelMissing : Words.Frame.LevelRefused, page.Markup, StringComparison.Ordinal);
    }
}
