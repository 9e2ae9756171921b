using Foramen.Engine.Light;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Light;

public class TwilightTests
{
    [Fact]
    public void Light_grows_with_the_sun_from_night_to_noon()
    {
        var levels = Enumerable.Range(-17, 107).Select(degrees => Twilight.ClearHorizontal(Angle.FromDegrees(degrees)).Lux).ToList();
        Assert.All(levels.Zip(levels.Skip(1)), pair => Assert.True(pair.Second > pair.First));
    }

    [Fact]
    public void Deep_night_does_not_get_darker()
        => Assert.Equal(Twilight.ClearHorizontal(Angle.FromDegrees(-18)), Twilight.ClearHorizontal(Angle.FromDegrees(-90)));

    [Theory]
    [InlineData(-90.1)]
    [InlineData(90.1)]
    public void Beyond_nadir_and_zenith_is_refused(double degrees) => Assert.Throws<RefusalException>(() => Twilight.ClearHorizontal(Angle.FromDegrees(degrees)));
}
