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
}
