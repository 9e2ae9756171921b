using System.Globalization;
using Bunit;
using Foramen.Field.Components;
using Foramen.Field.Texts;
using Foramen.Field.Units;

namespace Foramen.Field.Tests.Texts;

public sealed class ScreenCultureTests
{
    [Theory]
    [InlineData(".", ",", "1,234,567.8")]
    [InlineData(",", ".", "1.234.567,8")]
    [InlineData(",", "\u202f", "1\u202f234\u202f567,8")]
    [InlineData(",", "", "1234567,8")]
    public void Numbers_are_written_with_the_screens_signs(string tenths, string thousands, string written)
        => Assert.Equal(written, 1234567.8.ToString("#,0.0", ScreenCulture.Of(tenths, thousands)));

    [Theory]
    [InlineData("", "")]
    [InlineData("5", "55")]
    [InlineData("-", ".")]
    public void Signs_that_would_make_a_number_unreadable_are_not_used(string tenths, string thousands)
        => Assert.Equal("1234.5", 1234.5.ToString("#,0.0", ScreenCulture.Of(tenths, thousands)));

    [Theory]
    [InlineData(".", ",", -0.35)]
    [InlineData(",", ".", -0.35)]
    [InlineData(".", ",", 4321.07)]
    [InlineData(",", ".", 4321.07)]
    [InlineData(",", "\u202f", 1200)]
    public void What_a_field_shows_it_also_reads(string tenths, string thousands, double value)
        => Assert.Equal(value, NumberText.Read(On(ScreenCulture.Of(tenths, thousands), () => NumberText.Show(value)), -5000, 5000, "the number"), 9);

    [Fact]
    public void What_a_slider_holds_for_the_browser_keeps_the_point()
    {
        using var context = new BunitContext();
        var slider = On(ScreenCulture.Of(",", "."), () => context.Render<Slider>(parameters => parameters
            .Add(p => p.Id, "s").Add(p => p.Label, "Time").Add(p => p.Min, 0.5).Add(p => p.Max, 7.25).Add(p => p.Step, 0.05).Add(p => p.Value, 3.15)));
        Assert.Equal("3.15", slider.Find("input").GetAttribute("value"));
        Assert.Equal("0.05", slider.Find("input").GetAttribute("step"));
    }

    private static T On<T>(CultureInfo culture, Func<T> what)
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = culture;
            return what();
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
