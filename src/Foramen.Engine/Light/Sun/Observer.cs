namespace Foramen.Engine.Light;

/// <summary>
/// A spot on the turning Earth: turns places in space into directions seen from there, parallax included.
/// J. Meeus, Astronomical Algorithms, 2nd ed. (1998), chapters 11, 13 and 40, in rectangular form.
/// </summary>
internal sealed class Observer
{
    private const double EquatorKilometres = 6378.14;

    private const double PolarOverEquatorial = 0.99664719;

    private readonly double longitude;
    private readonly double sinLatitude;
    private readonly double cosLatitude;
    private readonly double axisDistance;
    private readonly double equatorDistance;

    public Observer(GeographicPosition place)
    {
        longitude = place.Longitude.Radians;
        (sinLatitude, cosLatitude) = Math.SinCos(place.Latitude.Radians);
        var reduced = Math.Atan2(PolarOverEquatorial * sinLatitude, cosLatitude);
        var height = place.ElevationMetres / 1000;
        axisDistance = (EquatorKilometres * Math.Cos(reduced)) + (height * cosLatitude);
        equatorDistance = (EquatorKilometres * PolarOverEquatorial * Math.Sin(reduced)) + (height * sinLatitude);
    }

    /// <summary>The direction of a place in space at an apparent sidereal time of Greenwich (radians), without refraction.</summary>
    public HorizonVector Sight(in EquatorialVector body, double siderealTime)
    {
        var (sin, cos) = Math.SinCos(siderealTime + longitude);
        var outward = (body.X * cos) + (body.Y * sin) - axisDistance;
        var west = (body.X * sin) - (body.Y * cos);
        var polar = body.Z - equatorDistance;
        return new HorizonVector(
            -west,
            (polar * cosLatitude) - (outward * sinLatitude),
            (polar * sinLatitude) + (outward * cosLatitude));
    }

    /// <summary>How far west of the local meridian a place in space stands, km; zero in transit, above or below.</summary>
    public double WestOfMeridian(in EquatorialVector body, double siderealTime, out bool above)
    {
        var (sin, cos) = Math.SinCos(siderealTime + longitude);
        above = (body.X * cos) + (body.Y * sin) > 0;
        return (body.X * sin) - (body.Y * cos);
    }
}
