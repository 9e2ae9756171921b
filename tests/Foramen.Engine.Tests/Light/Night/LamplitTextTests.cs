using Foramen.Engine.Light;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Light.Night;

public class LamplitTextTests
{
    // L = K·2^EV/100 with K 12.5 (ISO 2720): EV 4 is 2 cd/m². Floodlit is EV 3 to 5, so EV 4; lit signs are 9 to 10, so EV 9.5.
    [Theory]
    [InlineData("EV 4", 2)]
    [InlineData("12 cd/m2", 12)]
    [InlineData("floodlit", 2)]
    [InlineData(" Floodlit building ", 2)]
    [InlineData("lit signs", 90.51)]
    [InlineData("full moon", 0.022097)]
    [Source("iso-2720", Basis.Worked)]
    public void A_reading_or_a_scene_is_a_luminance(string text, double candelas)
        => Assert.Equal(candelas, LamplitText.Luminance(text, LightMeter.Usual).CandelasPerSquareMetre, candelas * 1e-4);

    [Theory]
    [InlineData("candle", "no reading such as EV 4; and of names: The night scene is \"candle\"")]
    [InlineData("skyline", "write enough of one of these: landscape under a full moon; distant")]
    [InlineData("", "write enough")]
    [InlineData("EV 4 7", "what the lamps light")]
    public void What_is_neither_is_refused_with_what_would_do(string text, string says)
        => Assert.Contains(says, Assert.Throws<RefusalException>(() => LamplitText.Luminance(text, LightMeter.Usual)).Message, StringComparison.OrdinalIgnoreCase);
}
