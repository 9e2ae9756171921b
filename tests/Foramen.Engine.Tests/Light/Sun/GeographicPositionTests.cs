using Foramen.Engine.Light;

namespace Foramen.Engine.Tests.Light;

public sealed class GeographicPositionTests
{
    // Worked by hand from the spherical triangle: along the equator, to the pole, and from 45° north a quarter round the Earth, tan = cos 45° / (cos 45° · sin 45°).
    [Theory]
    [InlineData(0, 0, 0, 90, 90)]
    [InlineData(0, 0, 0, -90, 270)]
    [InlineData(0, 0, 89, 0, 0)]
    [InlineData(10, 0, -10, 0, 180)]
    [InlineData(45, 0, 45, 90, 54.7356)]
    [InlineData(0, 179, 0, -179, 90)]
    public void A_great_circle_sets_out_at_its_bearing(double latitude, double longitude, double toLatitude, double toLongitude, double degrees)
        => Assert.Equal(degrees, GeographicPosition.FromDegrees(latitude, longitude).BearingTo(GeographicPosition.FromDegrees(toLatitude, toLongitude)).Degrees, 1e-3);
}
