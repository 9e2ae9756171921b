using System.Globalization;

namespace Foramen.Engine.Light;

/// <summary>
/// Where the Earth stands on its way round the Sun: the largest terms of VSOP87, as the NREL Solar Position Algorithm (Reda and Andreas, 2004)
/// tabulates them. Good to 0.0003° over 1950 to 2050.
/// </summary>
internal static class EarthOrbit
{
    private static readonly Lazy<(Term[] Longitude, Term[] Latitude, Term[] Distance)> Terms = new(Read);

    /// <summary>Heliocentric longitude and latitude (radians, mean equinox of date; longitude not reduced) and distance (astronomical units).</summary>
    /// <param name="centuries">Julian centuries of terrestrial time from J2000.0.</param>
    public static (double Longitude, double Latitude, double Distance) At(double centuries)
    {
        var millennia = centuries / 10;
        var (longitude, latitude, distance) = Terms.Value;
        return (Sum(longitude, millennia), Sum(latitude, millennia), Sum(distance, millennia));
    }

    private static double Sum(Term[] terms, double millennia)
    {
        Span<double> powers = stackalloc double[] { 0, 0, 0, 0, 0 };
        foreach (var term in terms)
        {
            powers[term.Power] += term.Amplitude * Math.Cos(term.Phase + (term.Frequency * millennia));
        }

        var sum = 0.0;
        for (var power = powers.Length - 1; power >= 0; power--)
        {
            sum = (sum * millennia) + powers[power];
        }

        return sum * 1e-8;
    }

    private static (Term[] Longitude, Term[] Latitude, Term[] Distance) Read()
    {
        var rows = TableLines.Read("earth_vsop87_terms.csv");
        Term[] Of(string series) =>
        [
            .. rows.Where(row => row[0] == series).Select(row => new Term(
                int.Parse(row[1], CultureInfo.InvariantCulture),
                double.Parse(row[2], CultureInfo.InvariantCulture),
                double.Parse(row[3], CultureInfo.InvariantCulture),
                double.Parse(row[4], CultureInfo.InvariantCulture))),
        ];
        return (Of("L"), Of("B"), Of("R"));
    }

    private readonly record struct Term(int Power, double Amplitude, double Phase, double Frequency);
}
