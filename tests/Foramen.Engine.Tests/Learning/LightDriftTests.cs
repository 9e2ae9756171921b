using Foramen.Engine.Learning;

namespace Foramen.Engine.Tests.Learning;

public class LightDriftTests
{
    [Theory]
    [InlineData("thin cloud", 0.5)]
    [InlineData("Passing Clouds", 0.5)]
    [InlineData("broken sky", 0.5)]
    [InlineData("noon", 0.2)]
    [InlineData("", 0.2)]
    [InlineData(null, 0.2)]
    public void Light_wanders_more_where_the_sky_is_said_to_be_broken_or_clouded(string? sky, double stops)
        => Assert.Equal(stops, LightDrift.For(sky).Value);
}
