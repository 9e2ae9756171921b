using Foramen.Cli.Tones;
using Foramen.Engine.Light;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;

namespace Foramen.Cli.Tests.Tones;

public class ToneTextTests
{
    [Fact]
    public void A_point()
    {
        var tone = ToneText.Parse("elevator: textured highlight at 45%,30.5%", LightMeter.Usual);
        Assert.Equal(("elevator", Rendering.TexturedHighlight), (tone.Name, tone.Rendering));
        var point = Assert.IsType<PointInPhotograph>(tone.Source);
        Assert.Equal((0.45, 0.305), (point.Position.X, point.Position.Y));
    }

    [Fact]
    public void A_rectangle()
    {
        var tone = ToneText.Parse("wall: mid at 10%,60% to 20%,70%", LightMeter.Usual);
        var area = Assert.IsType<RectangleInPhotograph>(tone.Source);
        Assert.Equal(0.15, area.Middle.X, 1e-9);
        Assert.Equal(0.65, area.Middle.Y, 1e-9);
    }

    [Fact]
    public void A_reading_by_hand()
    {
        var tone = ToneText.Parse("doorway: open shadow reads EV 10", LightMeter.Usual);
        Assert.Equal(128, Assert.IsType<HandReading>(tone.Source).Luminance.CandelasPerSquareMetre, 1e-9);
    }

    [Theory]
    [InlineData("elevator at 45%,30%", "not clear")]
    [InlineData("elevator: shiny at 45%,30%", "textured highlight")]
    [InlineData("elevator: mid at 145%,30%", "outside")]
    [InlineData("elevator: mid at 4.5.5%,30%", "not a number")]
    [InlineData("elevator: mid at 20%,30% to 10%,40%", "empty")]
    [InlineData("elevator: mid reads 12", "EV 12.3")]
    [InlineData("", "not clear")]
    public void What_is_not_clear_is_refused(string text, string containing)
        => Assert.Contains(containing, Assert.Throws<RefusalException>(() => ToneText.Parse(text, LightMeter.Usual)).Message, StringComparison.Ordinal);
}
