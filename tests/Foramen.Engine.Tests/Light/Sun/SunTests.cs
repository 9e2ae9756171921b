using CsCheck;
using Foramen.Engine.Light;
using Foramen.Engine.Quantities;
using static Foramen.Engine.Tests.Light.Skies;

namespace Foramen.Engine.Tests.Light;

public class SunTests
{
    [Fact]
    public void A_track_says_what_the_whole_reckoning_says() => Gen.Select(GenInstant, GenPlace).Sample((instant, place) =>
    {
        var (whole, track) = (Sun.At(instant, place), SunTrack.Over(instant.AddDays(-1), instant.AddDays(1)).At(instant, place));
        Assert.Equal(whole.TrueElevation.Degrees, track.TrueElevation.Degrees, 0.00002);
        Assert.Equal(0, Math.IEEERemainder(whole.Azimuth.Degrees - track.Azimuth.Degrees, 360) * Math.Cos(whole.TrueElevation.Radians), 0.00002);
    });

    [Fact]
    public void A_track_filled_in_steps_says_the_same_as_one_by_one()
    {
        var from = new DateTimeOffset(2024, 6, 20, 0, 0, 0, TimeSpan.Zero);
        var track = SunTrack.Over(from, from.AddDays(1));
        var positions = new SkyPosition[24 * 60];
        track.Fill(from, TimeSpan.FromMinutes(1), Basin, positions);
        for (var i = 0; i < positions.Length; i += 37)
        {
            Assert.Equal(track.At(from.AddMinutes(i), Basin).Elevation.Degrees, positions[i].Elevation.Degrees, 1e-6);
        }
    }

    [Fact]
    public void The_sun_looks_no_lower_than_it_stands_and_order_is_kept() => Gen.Select(Gen.Double[-90, 90], Gen.Double[0.0001, 5]).Sample((elevation, more) =>
    {
        double Seen(double degrees) => degrees + Refraction(degrees);
        Assert.True(Refraction(elevation) > -0.001);
        Assert.True(Seen(Math.Min(90, elevation + more)) >= Seen(elevation));
    });

    // Refraction on the horizon as almanacs have it: 34′ for a seen elevation of nought, so about 29′ for a true one (Meeus, chapter 16).
    [Theory]
    [InlineData(0, 0.48)]
    [InlineData(-0.5667, 0.5667)]
    [InlineData(10, 0.0886)]
    [InlineData(45, 0.0165)]
    public void Refraction_has_its_usual_size(double elevation, double refraction)
        => Assert.Equal(refraction, Refraction(elevation), 0.02 * Math.Max(1, refraction));

    // Kasten and Young 1989: 37.92 on the horizon; from 30° up nearly 1/sin.
    [Theory]
    [InlineData(0, 37.92, 0.01)]
    [InlineData(30, 2, 0.01)]
    [InlineData(60, 1.1547, 0.002)]
    [InlineData(90, 1, 0.001)]
    public void Air_mass(double elevation, double mass, double tolerance) => Assert.Equal(mass, AirMass.At(Angle.FromDegrees(elevation)), tolerance);

    [Fact]
    public void Noon_is_south_in_the_north_and_north_in_the_south()
    {
        var noon = new DateTimeOffset(2024, 6, 20, 12, 2, 0, TimeSpan.Zero);
        Assert.Equal(180, Sun.At(noon, GeographicPosition.FromDegrees(52, 0)).Azimuth.Degrees, 0.5);
        Assert.Equal(0, Math.IEEERemainder(Sun.At(noon, GeographicPosition.FromDegrees(-35, 0)).Azimuth.Degrees, 360), 0.5);
    }

    [Fact]
    public void Years_that_are_not_computed_are_refused()
    {
        Assert.Contains("1950 to 2050", Assert.Throws<RefusalException>(() => Sun.At(new(2051, 1, 1, 0, 0, 0, TimeSpan.Zero), Basin)).Message, StringComparison.Ordinal);
        Assert.Throws<RefusalException>(() => Moon.At(new(1949, 12, 31, 0, 0, 0, TimeSpan.Zero), Basin));
        Assert.Throws<RefusalException>(() => Sun.At(default, Basin));
    }

    [Fact]
    public void A_track_is_not_read_outside_its_span()
    {
        var from = new DateTimeOffset(2024, 6, 20, 0, 0, 0, TimeSpan.Zero);
        var track = SunTrack.Over(from, from.AddDays(1));
        Assert.Throws<RefusalException>(() => track.At(from.AddDays(5), Basin));
        Assert.Throws<RefusalException>(() => track.At(from.AddDays(-3), Basin));
        Assert.Throws<RefusalException>(() => track.Fill(from, TimeSpan.FromDays(1), Basin, new SkyPosition[9]));
        Assert.Throws<RefusalException>(() => SunTrack.Over(from, from.AddDays(-1)));
    }

    [Fact]
    public void A_track_is_read_to_its_ends()
    {
        var from = new DateTimeOffset(2024, 6, 20, 5, 0, 0, TimeSpan.Zero);
        var track = SunTrack.Over(from, from.AddDays(1));
        foreach (var instant in new[] { from, from.AddDays(0.5), from.AddDays(1) })
        {
            Assert.Equal(Sun.At(instant, Basin).TrueElevation.Degrees, track.At(instant, Basin).TrueElevation.Degrees, 0.00002);
        }

        var positions = new SkyPosition[25];
        track.Fill(from, TimeSpan.FromHours(1), Basin, positions);
        Assert.Equal(track.At(from.AddDays(1), Basin).Azimuth.Degrees, positions[24].Azimuth.Degrees, 1e-6);
        Assert.Throws<RefusalException>(() => track.Fill(from.AddDays(-3), TimeSpan.FromHours(1), Basin, positions));
        Assert.Equal(Sun.At(from, Basin).Elevation.Degrees, SunTrack.Over(from, from).At(from, Basin).Elevation.Degrees, 0.00002);
    }

    // Its places are computed at noons; it is read from the noon before its span to the noon after, and no further.
    [Fact]
    public void A_track_is_read_from_noon_to_noon()
    {
        var midnight = new DateTimeOffset(2024, 6, 20, 0, 0, 0, TimeSpan.Zero);
        var track = SunTrack.Over(midnight, midnight.AddDays(1));
        var (first, last) = (midnight.AddHours(-12), midnight.AddHours(36));
        foreach (var instant in new[] { first, last })
        {
            Assert.Equal(Sun.At(instant, Basin).TrueElevation.Degrees, track.At(instant, Basin).TrueElevation.Degrees, 0.00002);
        }

        Assert.Throws<RefusalException>(() => track.At(first.AddMinutes(-1), Basin));
        Assert.Throws<RefusalException>(() => track.At(last.AddMinutes(1), Basin));
        track.Fill(first, TimeSpan.FromHours(48), Basin, new SkyPosition[2]);
        track.Fill(last, TimeSpan.FromHours(-48), Basin, new SkyPosition[2]);
        track.Fill(first, TimeSpan.FromHours(48), Basin, []);
        Assert.Throws<RefusalException>(() => track.Fill(first.AddMinutes(-1), TimeSpan.FromHours(1), Basin, new SkyPosition[2]));
        Assert.Throws<RefusalException>(() => track.Fill(last.AddMinutes(1), TimeSpan.FromHours(-1), Basin, new SkyPosition[2]));
        Assert.Throws<RefusalException>(() => track.Fill(first, TimeSpan.FromHours(48.1), Basin, new SkyPosition[2]));
        Assert.Throws<RefusalException>(() => track.Fill(last, TimeSpan.FromHours(-48.1), Basin, new SkyPosition[2]));
    }

    // Over weeks, the middle of it too.
    [Fact]
    public void A_long_track_says_what_the_whole_reckoning_says()
    {
        var from = new DateTimeOffset(1999, 12, 1, 3, 0, 0, TimeSpan.Zero);
        var track = SunTrack.Over(from, from.AddDays(60));
        for (var day = 0.0; day < 60; day += 1.7)
        {
            Assert.Equal(Sun.At(from.AddDays(day), Basin).TrueElevation.Degrees, track.At(from.AddDays(day), Basin).TrueElevation.Degrees, 0.00002);
        }
    }

    [Fact]
    public void A_track_sees_through_the_air_it_is_given()
    {
        var from = new DateTimeOffset(2024, 6, 20, 4, 0, 0, TimeSpan.Zero);
        var track = SunTrack.Over(from, from.AddDays(1));
        var thin = new Atmosphere { PressureHectopascals = 300 };
        var positions = new SkyPosition[1];
        track.Fill(from, TimeSpan.FromHours(1), Basin, positions, thin);
        Assert.Equal(Sun.At(from, Basin, thin).Elevation.Degrees, positions[0].Elevation.Degrees, 0.00002);
        Assert.Equal(Sun.At(from, Basin, thin).Elevation.Degrees, track.At(from, Basin, thin).Elevation.Degrees, 0.00002);
        Assert.True(Sun.At(from, Basin).Elevation > Sun.At(from, Basin, thin).Elevation);
    }

    [Theory]
    [InlineData(1950, 1, 1, 0)]
    [InlineData(2050, 12, 31, 23)]
    public void The_first_and_the_last_year_are_computed(int year, int month, int day, int hour)
        => Assert.InRange(Sun.DistanceAstronomicalUnits(new(year, month, day, hour, 0, 0, TimeSpan.Zero)), 0.983, 0.984);

    [Theory]
    [InlineData(-0.1)]
    [InlineData(90.1)]
    public void Air_mass_is_of_what_is_over_the_horizon(double elevation) => Assert.Throws<RefusalException>(() => AirMass.At(Angle.FromDegrees(elevation)));

    [Theory]
    [InlineData(91, 0, "between")]
    [InlineData(105, 39, "swapped")]
    [InlineData(double.NaN, 0, "between")]
    [InlineData(0, 181, "between")]
    [InlineData(0, double.PositiveInfinity, "between")]
    public void Places_off_the_globe_are_refused(double latitude, double longitude, string reason)
        => Assert.Contains(reason, Assert.Throws<RefusalException>(() => GeographicPosition.FromDegrees(latitude, longitude)).Message, StringComparison.Ordinal);

    private static double Refraction(double trueElevation) => new Atmosphere().RefractionDegrees(trueElevation);
}
