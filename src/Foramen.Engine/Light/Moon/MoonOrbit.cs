using System.Globalization;

namespace Foramen.Engine.Light;

/// <summary>
/// Where the Moon stands seen from the Earth's middle: the largest terms of ELP-2000/82 as in J. Meeus, Astronomical Algorithms, 2nd ed.
/// (1998), chapter 47. Good to some 10″ in longitude, 4″ in latitude.
/// </summary>
internal static class MoonOrbit
{
    private const double Radian = Math.PI / 180;

    private static readonly Lazy<(Term[] LongitudeAndDistance, Term[] Latitude)> Terms = new(() => (
        Read("moon_longitude_distance_terms.csv"), Read("moon_latitude_terms.csv")));

    /// <summary>Ecliptic longitude and latitude (radians, mean equinox of date) and distance (km).</summary>
    /// <param name="centuries">Julian centuries of terrestrial time from J2000.0.</param>
    public static (double Longitude, double Latitude, double Distance) At(double centuries)
    {
        var t = centuries;
        var meanLongitude = Polynomial(t, 218.3164477, 481267.88123421, -0.0015786, 1 / 538841.0, -1 / 65194000.0);
        var elongation = Polynomial(t, 297.8501921, 445267.1114034, -0.0018819, 1 / 545868.0, -1 / 113065000.0);
        var sunAnomaly = Polynomial(t, 357.5291092, 35999.0502909, -0.0001536, 1 / 24490000.0, 0);
        var moonAnomaly = Polynomial(t, 134.9633964, 477198.8675055, 0.0087414, 1 / 69699.0, -1 / 14712000.0);
        var fromNode = Polynomial(t, 93.2720950, 483202.0175233, -0.0036539, -1 / 3526000.0, 1 / 863310000.0);
        var venus = (119.75 + (131.849 * t)) * Radian;
        var jupiter = (53.09 + (479264.290 * t)) * Radian;
        var third = (313.45 + (481266.484 * t)) * Radian;
        var eccentricity = 1 - (t * (0.002516 + (t * 0.0000074)));

        double longitude = 0, latitude = 0, distance = 0;
        var (longitudeTerms, latitudeTerms) = Terms.Value;
        foreach (var term in longitudeTerms)
        {
            var (sin, cos) = Math.SinCos(term.Argument(elongation, sunAnomaly, moonAnomaly, fromNode));
            var scale = term.Scale(eccentricity);
            longitude += term.First * scale * sin;
            distance += term.Second * scale * cos;
        }

        foreach (var term in latitudeTerms)
        {
            latitude += term.First * term.Scale(eccentricity) * Math.Sin(term.Argument(elongation, sunAnomaly, moonAnomaly, fromNode));
        }

        longitude += (3958 * Math.Sin(venus)) + (1962 * Math.Sin(meanLongitude - fromNode)) + (318 * Math.Sin(jupiter));
        latitude += (-2235 * Math.Sin(meanLongitude)) + (382 * Math.Sin(third)) + (175 * Math.Sin(venus - fromNode))
            + (175 * Math.Sin(venus + fromNode)) + (127 * Math.Sin(meanLongitude - moonAnomaly)) - (115 * Math.Sin(meanLongitude + moonAnomaly));
        return (meanLongitude + (longitude * 1e-6 * Radian), latitude * 1e-6 * Radian, 385000.56 + (distance * 1e-3));
    }

    private static double Polynomial(double t, double c0, double c1, double c2, double c3, double c4)
        => (c0 + (t * (c1 + (t * (c2 + (t * (c3 + (t * c4)))))))) % 360 * Radian;

    private static Term[] Read(string fileName) =>
    [
        .. TableLines.Read(fileName).Select(row =>
        {
            var cells = row.Select(cell => int.Parse(cell, CultureInfo.InvariantCulture)).ToArray();
            return new Term(cells[0], cells[1], cells[2], cells[3], cells[4], cells.Length > 5 ? cells[5] : 0);
        }),
    ];

    private readonly record struct Term(int Elongation, int SunAnomaly, int MoonAnomaly, int FromNode, double First, double Second)
    {
        public double Argument(double elongation, double sunAnomaly, double moonAnomaly, double fromNode)
            => (Elongation * elongation) + (SunAnomaly * sunAnomaly) + (MoonAnomaly * moonAnomaly) + (FromNode * fromNode);

        // Terms with the Sun's anomaly shrink as the Earth's orbit becomes rounder.
        public double Scale(double eccentricity) => SunAnomaly switch
        {
            0 => 1,
            1 or -1 => eccentricity,
            _ => eccentricity * eccentricity,
        };
    }
}
