using Foramen.Engine.Quantities;

namespace Foramen.Engine.Light;

/// <summary>A spot on the Earth (WGS 84). Latitude counts north, longitude east. Immutable.</summary>
public sealed record GeographicPosition
{
    private GeographicPosition(Angle latitude, Angle longitude, double elevationMetres)
    {
        Latitude = latitude;
        Longitude = longitude;
        ElevationMetres = elevationMetres;
    }

    /// <summary>Latitude, −90° to 90°, north positive.</summary>
    public Angle Latitude { get; }

    /// <summary>Longitude, −180° to 180°, east positive.</summary>
    public Angle Longitude { get; }

    /// <summary>Height above sea level, m, −500 to 9000; below zero behind a dike.</summary>
    public double ElevationMetres { get; }

    /// <summary>From latitude and longitude in degrees.</summary>
    /// <param name="latitude">−90 to 90, north positive.</param>
    /// <param name="longitude">−180 to 180, east positive.</param>
    /// <param name="elevationMetres">−500 to 9000 m.</param>
    /// <exception cref="RefusalException">Out of range; a latitude that could be a longitude is asked after.</exception>
    public static GeographicPosition FromDegrees(double latitude, double longitude, double elevationMetres = 0)
    {
        if (Math.Abs(latitude) is > 90 and <= 180 && Math.Abs(longitude) <= 90)
        {
            throw new RefusalException(FormattableString.Invariant(
                $"The latitude is {latitude:0.######} °, which should be between -90 and 90 °; latitude and longitude look swapped."));
        }

        return new GeographicPosition(
            Angle.FromDegrees(Guard.Within(latitude, -90, 90, "the latitude", "°")),
            Angle.FromDegrees(Guard.Within(longitude, -180, 180, "the longitude", "°")),
            Guard.Within(elevationMetres, -500, 9000, "the height above sea level", "m"));
    }

    /// <summary>Metres to another place along the Earth's surface, taken as a sphere of 6371 km (haversine; any textbook of navigation).</summary>
    public double MetresTo(GeographicPosition other)
    {
        var (a, b) = (Latitude.Radians, other.Latitude.Radians);
        var (north, east) = (Math.Sin((b - a) / 2), Math.Sin((other.Longitude.Radians - Longitude.Radians) / 2));
        return 2 * 6_371_000 * Math.Asin(Math.Min(1, Math.Sqrt((north * north) + (Math.Cos(a) * Math.Cos(b) * east * east))));
    }

    /// <summary>Bearing at which a great circle sets out to another place, from true north through east, 0° to 360° (any textbook of navigation).</summary>
    public Angle BearingTo(GeographicPosition other)
    {
        var (a, b, east) = (Latitude.Radians, other.Latitude.Radians, other.Longitude.Radians - Longitude.Radians);
        var degrees = Angle.FromRadians(Math.Atan2(
            Math.Sin(east) * Math.Cos(b), (Math.Cos(a) * Math.Sin(b)) - (Math.Sin(a) * Math.Cos(b) * Math.Cos(east)))).Degrees;
        return Angle.FromDegrees((degrees + 360) % 360);
    }
}
