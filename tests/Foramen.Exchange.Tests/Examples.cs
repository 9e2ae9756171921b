using CsCheck;
using Foramen.Exchange.Places;

namespace Foramen.Exchange.Tests;

internal static class Examples
{
    public static byte[] Demo => File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "demo", "places.geojson"));

    public static Gen<PlaceRecord> GenPlace { get; } = Gen.Select(
        Gen.String[Gen.Char["abcäéß <>&\"'木"], 1, 20], Gen.Double[-90, 90], Gen.Double[-180, 180], Gen.Double[-400, 8000].Nullable(), Gen.Double[0, 360].Nullable())
        .Select((name, latitude, longitude, elevation, bearing) => new PlaceRecord
        {
            Name = "x" + name.Trim(),
            LatitudeDeg = Math.Round(latitude, 7),
            LongitudeDeg = Math.Round(longitude, 7),
            ElevationMetres = elevation is { } metres ? Math.Round(metres, 2) : null,
            FacadeBearingDeg = bearing,
        });

    public static byte[] Written(Action<Stream> write)
    {
        using var stream = new MemoryStream();
        write(stream);
        return stream.ToArray();
    }
}
