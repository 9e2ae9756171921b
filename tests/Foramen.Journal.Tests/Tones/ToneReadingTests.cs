using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using Foramen.Journal.Bodies;
using Foramen.Journal.Tones;
using static Foramen.Journal.Tests.TestKit.Make;

namespace Foramen.Journal.Tests.Tones;

public class ToneReadingTests
{
    private static readonly ToneRead Wall = new()
    {
        Sheet = Id(1), Tone = Id(2), Name = "wall", LuminanceCandelasPerSquareMetre = 320, Rendering = WantedRendering.Mid,
    };

    [Fact]
    public void What_is_written_down_is_what_is_computed_with()
    {
        var tone = Read(Wall with { ActinicRatio = 0.4, SdStops = 0.7, PhotographX = 0.25, PhotographY = 0.75 });
        Assert.Equal(("wall", 320.0, 0.4, 0.7), (tone.Name, tone.Luminance.CandelasPerSquareMetre, tone.ActinicRatio, tone.MeterSpread.Value));
        Assert.Equal(PhotographPosition.FromFractions(0.25, 0.75), tone.Position);
    }

    [Fact]
    public void What_is_missing_is_neutral_exact_nowhere_and_as_well_known_as_usual()
    {
        var tone = Read(Wall);
        Assert.Equal((1.0, 0.2, LuminanceLimit.Exact), (tone.ActinicRatio, tone.MeterSpread.Value, tone.ReadingLimit));
        Assert.Null(tone.Position);
        Assert.Null(Read(Wall with { PhotographX = 0.5 }).Position);
        Assert.Null(Read(Wall with { PhotographY = 0.5 }).Position);
    }

    // The journal takes up to 10 stops, the Engine 5: wider than that says no more.
    [Theory]
    [InlineData(4.9, 4.9)]
    [InlineData(5, 5)]
    [InlineData(10, 5)]
    public void A_reading_that_says_nothing_is_five_stops_wide(double said, double spread)
        => Assert.Equal(spread, Read(Wall with { SdStops = said }).MeterSpread.Value);

    [Theory]
    [InlineData(WantedRendering.OpenShadow, Rendering.OpenShadow)]
    [InlineData(WantedRendering.Mid, Rendering.Mid)]
    [InlineData(WantedRendering.TexturedHighlight, Rendering.TexturedHighlight)]
    [InlineData(WantedRendering.MayBurn, Rendering.MayBurn)]
    [InlineData(WantedRendering.MayBlock, Rendering.MayBlock)]
    public void A_tone_is_wanted_as_said(WantedRendering said, Rendering rendering) => Assert.Equal(rendering, Read(Wall with { Rendering = said }).Rendering);

    [Theory]
    [InlineData(ReadingLimit.Exact, LuminanceLimit.Exact)]
    [InlineData(ReadingLimit.AtLeast, LuminanceLimit.AtLeast)]
    [InlineData(ReadingLimit.AtMost, LuminanceLimit.AtMost)]
    public void A_burnt_or_blocked_reading_is_a_bound(ReadingLimit said, LuminanceLimit limit) => Assert.Equal(limit, Read(Wall with { Limit = said }).ReadingLimit);

    private static Tone Read(ToneRead read) => read.ToTone(Stops.FromValue(0.2));
}
