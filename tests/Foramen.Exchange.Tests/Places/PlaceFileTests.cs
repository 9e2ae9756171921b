using System.Text;
using System.Text.Json;
using System.Xml;
using CsCheck;
using Foramen.Engine.Quantities;
using Foramen.Exchange.Places;
using Foramen.Journal.Tests.TestKit;
using NetTopologySuite.Features;
using NetTopologySuite.IO;
using NetTopologySuite.IO.Converters;
using static Foramen.Exchange.Tests.Examples;

namespace Foramen.Exchange.Tests.Places;

public class PlaceFileTests
{
    private static readonly JsonSerializerOptions AnotherReader = new() { Converters = { new GeoJsonConverterFactory() } };

    // Read by NetTopologySuite's reader of RFC 7946, which knows nothing of us.
    [Fact]
    [Source("nettopologysuite", Basis.Library)]
    public void Geojson_is_read_by_another_library() => GenPlace.List[1, 5].Sample(
        places =>
        {
            var text = Encoding.UTF8.GetString(Written(stream => GeoJsonPlaces.Write(stream, places)));
            var features = JsonSerializer.Deserialize<FeatureCollection>(text, AnotherReader)!;
            Assert.Equal(places.Count, features.Count);
            Assert.All(places.Zip(features), pair =>
            {
                Assert.Equal(pair.First.LongitudeDeg!.Value, pair.Second.Geometry.Coordinate.X, 1e-9);
                Assert.Equal(pair.First.LatitudeDeg!.Value, pair.Second.Geometry.Coordinate.Y, 1e-9);
                Assert.Equal(pair.First.Name, pair.Second.Attributes["name"]);
            });
        },
        iter: 50);

    [Fact]
    [Source("nettopologysuite", Basis.Library)]
    public void Gpx_is_read_by_another_library() => GenPlace.List[1, 5].Sample(
        places =>
        {
            using var stream = new MemoryStream(Written(into => GpxPlaces.Write(into, places)));
            using var reader = XmlReader.Create(stream);
            var file = GpxFile.ReadFrom(reader, null);
            Assert.Equal(places.Count, file.Waypoints.Count);
            Assert.All(places.Zip(file.Waypoints), pair =>
            {
                Assert.Equal(pair.First.LongitudeDeg!.Value, pair.Second.Longitude.Value, 1e-7);
                Assert.Equal(pair.First.LatitudeDeg!.Value, pair.Second.Latitude.Value, 1e-7);
                Assert.Equal(pair.First.ElevationMetres, pair.Second.ElevationInMeters);
                Assert.Equal(pair.First.Name, pair.Second.Name);
            });
        },
        iter: 50);

    [Fact]
    public void What_is_written_is_read_again() => GenPlace.List[1, 5].Sample(
        places =>
        {
            Assert.Equal(places, PlaceFile.Read(Written(stream => GeoJsonPlaces.Write(stream, places))));
            var fromGpx = PlaceFile.Read(Written(stream => GpxPlaces.Write(stream, places)));
            Assert.Equal(places.Select(place => (place.Name, place.LatitudeDeg, place.LongitudeDeg)), fromGpx.Select(place => (place.Name, place.LatitudeDeg, place.LongitudeDeg)));
        },
        iter: 50);

    [Fact]
    public void The_demo_places_are_complete()
    {
        var places = PlaceFile.Read(Demo).Select(record => record.ToPlace()).ToList();
        Assert.Equal(3, places.Count);
        Assert.Equal(150, places[0].Facade.Bearing.Degrees);
        Assert.Single(places[0].ShadeOnFacade);
    }

    [Fact]
    public void A_plain_list_is_read_and_a_facade_faces_the_camera()
    {
        var place = Assert.Single(PlaceFile.Read("""{"places":[{"name":"weir","latitudeDeg":52.5,"longitudeDeg":5.25,"cameraBearingDeg":300}]}"""u8.ToArray()));
        Assert.Equal(120, place.ToPlace().Facade.Bearing.Degrees);
    }

    [Theory]
    [InlineData("", "empty")]
    [InlineData("hello", "neither")]
    [InlineData("{\"places\":[]}", "no place")]
    [InlineData("{\"type\":\"Topology\"}", "neither")]
    [InlineData("{\"type\":3}", "text")]
    [InlineData("{\"a\":1}", "no list")]
    [InlineData("[1,2]", "no list")]
    [InlineData("{\"places\":3}", "cannot be read")]
    [InlineData("{\"places\":[{\"name\":\"a\"", "cannot be read")]
    [InlineData("{\"type\":\"Feature\",\"geometry\":{\"type\":\"Point\",\"coordinates\":[\"x\"]}}", "coordinates")]
    [InlineData("<html></html>", "no GPX")]
    [InlineData("<gpx><wpt lat=\"x\" lon=\"1\"/></gpx>", "no lat")]
    [InlineData("<gpx><wpt lat=\"1\" lon=\"1\"><ele>high</ele></wpt></gpx>", "no number")]
    [InlineData("<gpx><wpt lat=\"1\"", "line 1")]
    [InlineData("<!DOCTYPE gpx [<!ENTITY a \"aaaa\">]><gpx>&a;</gpx>", "document type")]
    [InlineData("{\"type\":\"\\ud800\"}", "no letter")]
    public void What_holds_no_places_is_refused(string text, string containing)
    {
        var refusal = Assert.Throws<RefusalException>(() => PlaceFile.Read(Encoding.UTF8.GetBytes(text)));
        Assert.Contains(containing, refusal.Message, StringComparison.Ordinal);
        Assert.EndsWith(".", refusal.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("{\"name\":\"a\",\"latitudeDeg\":105,\"longitudeDeg\":52,\"facadeBearingDeg\":1}", "swapped")]
    [InlineData("{\"name\":\"a\",\"latitudeDeg\":52,\"longitudeDeg\":5,\"facadeBearingDeg\":361}", "bearing")]
    [InlineData("{\"name\":\"a\",\"latitudeDeg\":52,\"longitudeDeg\":5}", "faces")]
    [InlineData("{\"name\":\"a\",\"facadeBearingDeg\":1}", "position")]
    [InlineData("{\"latitudeDeg\":52,\"longitudeDeg\":5,\"facadeBearingDeg\":1}", "name")]
    [InlineData("{\"name\":\"a\",\"latitudeDeg\":52,\"longitudeDeg\":5,\"facadeBearingDeg\":1,\"reflectance\":0}", "reflectance")]
    public void Places_that_cannot_be_are_refused_by_name(string place, string containing)
        => Assert.Contains(
            containing,
            Assert.Throws<RefusalException>(() => PlaceFile.Read(Encoding.UTF8.GetBytes($"{{\"places\":[{place}]}}"))[0].ToPlace()).Message,
            StringComparison.Ordinal);

    // Any bytes end in places or in a refusal; here the demo with one byte changed.
    [Fact]
    public void Damage_ends_in_places_or_a_refusal() => Gen.Select(Gen.Int[0, 400], Gen.Byte).Sample(
        (at, value) =>
        {
            var bytes = Demo;
            bytes[at % bytes.Length] = value;
            try
            {
                Assert.NotEmpty(PlaceFile.Read(bytes));
            }
            catch (RefusalException refusal)
            {
                Assert.EndsWith(".", refusal.Message, StringComparison.Ordinal);
            }
        },
        iter: 2000);

    [Fact]
    public void Bytes_that_are_no_text_are_refused()
        => Assert.Contains("UTF-8", Assert.Throws<RefusalException>(() => PlaceFile.Read(new byte[] { (byte)'{', 0x80, (byte)'}' })).Message, StringComparison.Ordinal);

    [Fact]
    public void Files_beyond_measure_are_refused_unread()
        => Assert.Contains("MB", Assert.Throws<RefusalException>(() => PlaceFile.Read(new byte[PlaceFile.LargestBytes + 1])).Message, StringComparison.Ordinal);

    [Fact]
    public void Damaged_lists_of_every_kind_end_in_places_or_a_refusal_within_bounds()
    {
        using var gpx = new MemoryStream();
        GpxPlaces.Write(gpx, PlaceFile.Read(Demo));
        Mutations.Survives([Demo, gpx.ToArray()], file => PlaceFile.Read(file), 64_000_000, 4_000);
    }
}
