using Foramen.Engine.Light;
using Foramen.Engine.Quantities;

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

    // Shares of the way round a sphere of 6371 km: a quarter, a minute of arc along the equator and along a meridian, halfway round, and at 60° north half of the
    // equator's 1° but for the short cut over the pole's side.
    [Theory]
    [InlineData(0, 0, 90, 0, 10007543.4)]
    [InlineData(0, 0, 0, 90, 10007543.4)]
    [InlineData(0, 10, 0, 10.0166666667, 1853.25)]
    [InlineData(50, 10, 50.0166666667, 10, 1853.25)]
    [InlineData(30, 40, -30, -140, 20015086.8)]
    [InlineData(60, 5, 60, 6, 55596.3)]
    [InlineData(0, 179.5, 0, -179.5, 111194.9)]
    public void A_way_is_as_long_as_its_share_of_the_globe(double latitude, double longitude, double toLatitude, double toLongitude, double metres)
    {
        var (here, there) = (GeographicPosition.FromDegrees(latitude, longitude), GeographicPosition.FromDegrees(toLatitude, toLongitude));
        Assert.Equal(metres, here.MetresTo(there), 1.0);
        Assert.Equal(here.MetresTo(there), there.MetresTo(here), 1e-3);
    }

    [Theory]
    [InlineData(90, 180, 9000)]
    [InlineData(-90, -180, -500)]
    [InlineData(90, 90, 0)]
    public void The_edges_of_the_globe_are_on_it(double latitude, double longitude, double height)
    {
        var place = GeographicPosition.FromDegrees(latitude, longitude, height);
        Assert.Equal((latitude, longitude, height), (place.Latitude.Degrees, place.Longitude.Degrees, place.ElevationMetres));
    }

    [Theory]
    [InlineData(180, 90, 0, "swapped")]
    [InlineData(-180, -90, 0, "swapped")]
    [InlineData(180.1, 0, 0, "between -90 and 90 °.")]
    [InlineData(100, 91, 0, "between -90 and 90 °.")]
    [InlineData(0, 0, 9001, "height")]
    [InlineData(0, 0, -501, "height")]
    public void Beyond_them_is_refused_in_its_own_words(double latitude, double longitude, double height, string says)
        => Assert.Contains(says, Assert.Throws<RefusalException>(() => GeographicPosition.FromDegrees(latitude, longitude, height)).Message, StringComparison.Ordinal);
}
