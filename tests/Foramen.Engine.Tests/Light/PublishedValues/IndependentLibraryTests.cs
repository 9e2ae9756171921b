using System.Globalization;
using Foramen.Engine.Light;

namespace Foramen.Engine.Tests.Light.PublishedValues;

/// <summary>
/// A random sample over 1950 to 2050 and the whole Earth from the npm package astronomy-engine 2.1.19 (tools/sky-oracle). Directions must
/// agree to 0.01° of arc for the Sun and 0.02° for the Moon (0.1° is promised).
/// </summary>
[Source("astronomy-engine", Basis.Library)]
public class IndependentLibraryTests
{
    private static readonly List<double[]> Rows = [];

    private static readonly List<DateTimeOffset> Instants = [];

    static IndependentLibraryTests()
    {
        using var stream = typeof(IndependentLibraryTests).Assembly.GetManifestResourceStream("Foramen.Engine.Tests.Light.Samples.sky_positions.csv")!;
        using var reader = new StreamReader(stream);
        while (reader.ReadLine() is { } line)
        {
            if (char.IsAsciiDigit(line[0]))
            {
                var cells = line.Split(',');
                Instants.Add(DateTimeOffset.Parse(cells[0], CultureInfo.InvariantCulture));
                Rows.Add([.. cells.Skip(1).Select(cell => double.Parse(cell, CultureInfo.InvariantCulture))]);
            }
        }
    }

    [Fact]
    [OwnRule]
    public void The_sample_is_there() => Assert.Equal(400, Rows.Count);

    [Fact]
    public void The_sun_stands_where_it_should() => Check(0.01, (row, instant) =>
        Separation(Sun.At(instant, Place(row)), row[3], row[4]));

    [Fact]
    public void So_it_does_on_a_track() => Check(0.01, (row, instant) =>
        Separation(SunTrack.Over(instant.AddHours(-3), instant.AddHours(5)).At(instant, Place(row)), row[3], row[4]));

    [Fact]
    public void The_moon_stands_where_it_should() => Check(0.02, (row, instant) =>
        Separation(Moon.At(instant, Place(row)), row[5], row[6]));

    [Fact]
    public void The_moon_is_lit_as_it_should_be()
    {
        Check(0.01, (row, instant) => Math.Abs(Math.IEEERemainder(Moon.PhaseAt(instant).Elongation.Degrees - row[7], 360)));
        Check(0.0005, (row, instant) => Math.Abs(Moon.PhaseAt(instant).LitFraction - row[8]));
    }

    private static void Check(double tolerance, Func<double[], DateTimeOffset, double> difference)
    {
        for (var i = 0; i < Rows.Count; i++)
        {
            Assert.InRange(difference(Rows[i], Instants[i]), 0, tolerance);
        }
    }

    private static GeographicPosition Place(double[] row) => GeographicPosition.FromDegrees(row[0], row[1], row[2]);

    private static double Separation(SkyPosition found, double azimuth, double elevation)
    {
        var up = found.TrueElevation.Degrees - elevation;
        var across = Math.IEEERemainder(found.Azimuth.Degrees - azimuth, 360) * Math.Cos(found.TrueElevation.Radians);
        return double.Hypot(up, across);
    }
}
