using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;

namespace Foramen.Engine.Tests.Scene;

public class ScenePhotographTests
{
    [Theory]
    [InlineData(0, 2, 0, "width")]
    [InlineData(2, 0, 0, "height")]
    [InlineData(70_000, 1, 280_000, "width")]
    [InlineData(2, 3, 23, "23 bytes; 2 × 3 pixels need 24")]
    public void A_photograph_holds_as_many_pixels_as_it_says(int width, int height, int bytes, string says)
        => Assert.Contains(says, Assert.Throws<RefusalException>(() => new ScenePhotograph(width, height, new byte[bytes], new PhotographFacts())).Message, StringComparison.Ordinal);

    [Fact]
    public void An_exposure_is_time_f_number_and_sensitivity()
    {
        var whole = Photographs.Exposed(8, 0.01, 100);
        Assert.True(whole.HasExposure);
        Assert.False((whole with { ExposureTime = null }).HasExposure);
        Assert.False((whole with { FNumber = null }).HasExposure);
        Assert.False((whole with { Speed = null }).HasExposure);
    }

    [Theory]
    [InlineData(0, 300)]
    [InlineData(400, 0)]
    public void A_field_of_no_pixels_is_refused(int width, int height)
        => Assert.Throws<RefusalException>(() => PhotographField.FromHorizontalAngle(width, height, Angle.FromDegrees(60)));

    [Fact]
    public void A_tones_name_may_have_eighty_characters_and_its_spread_five_stops()
    {
        Tone Named(int characters, double spread) => new()
        {
            Name = new string('w', characters), Rendering = Rendering.Mid, Luminance = Luminance.FromCandelasPerSquareMetre(1), MeterSpread = Stops.FromValue(spread),
        };
        Assert.Equal(80, Named(80, 5).Name.Length);
        Assert.Throws<RefusalException>(() => Named(81, 1));
        Assert.Throws<RefusalException>(() => Named(80, 5.1));
        Assert.Throws<RefusalException>(() => Named(80, -0.1));
    }
}
