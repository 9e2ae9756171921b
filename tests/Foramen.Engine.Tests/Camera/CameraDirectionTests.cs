using CsCheck;
using Foramen.Engine.Camera;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Camera;

public sealed class CameraDirectionTests
{
    private static readonly Gen<double> Degrees = Gen.Double[-89, 89];

    // From angles to a vector by the definition of spherical coordinates, of any length, and back.
    [Fact]
    public void Angles_come_back_from_a_vector() => Gen.Select(Gen.Double[-179, 179], Degrees, Gen.Double[1e-3, 1e3]).Sample((azimuth, elevation, length) =>
    {
        var direction = From(azimuth, elevation, length);
        Assert.Equal(azimuth, direction.Azimuth.Degrees, 1e-9);
        Assert.Equal(elevation, direction.Elevation.Degrees, 1e-7);
        Assert.Equal(Math.Acos(Math.Cos(azimuth * Math.PI / 180) * Math.Cos(elevation * Math.PI / 180)) * 180 / Math.PI, direction.OffAxis.Degrees, 1e-5);
        Assert.Equal(1, Math.Sqrt((direction.X * direction.X) + (direction.Y * direction.Y) + (direction.Z * direction.Z)), 1e-12);
    });

    // The spherical law of cosines for two directions.
    [Fact]
    public void Between_two_directions_is_the_great_circle() => Gen.Select(Gen.Double[-179, 179], Degrees, Gen.Double[-179, 179], Degrees).Sample((azimuth, elevation, other, above) =>
    {
        var (a, b, difference) = (elevation * Math.PI / 180, above * Math.PI / 180, (azimuth - other) * Math.PI / 180);
        var cosine = (Math.Sin(a) * Math.Sin(b)) + (Math.Cos(a) * Math.Cos(b) * Math.Cos(difference));
        Assert.Equal(cosine, Math.Cos(From(azimuth, elevation, 1).AngleTo(From(other, above, 3)).Radians), 1e-9);
    });

    // A hundred-thousandth of a degree is not lost, nor is straight back.
    [Fact]
    public void The_smallest_and_the_largest_angle()
    {
        Assert.Equal(1e-5, From(20, 0, 1).AngleTo(From(20 + 1e-5, 0, 1)).Degrees, 1e-11);
        Assert.Equal(180, From(20, 30, 1).AngleTo(From(-160, -30, 1)).Degrees, 1e-6);
    }

    [Theory]
    [InlineData(0, 0, 0)]
    [InlineData(double.NaN, 0, 1)]
    [InlineData(0, double.PositiveInfinity, 1)]
    public void No_direction_is_refused(double x, double y, double z)
        => Assert.Contains("finite length", Assert.Throws<RefusalException>(() => CameraDirection.FromVector(x, y, z)).Message, StringComparison.Ordinal);

    private static CameraDirection From(double azimuth, double elevation, double length)
    {
        var (a, e) = (azimuth * Math.PI / 180, elevation * Math.PI / 180);
        return CameraDirection.FromVector(length * Math.Cos(e) * Math.Sin(a), length * Math.Sin(e), length * Math.Cos(e) * Math.Cos(a));
    }
}
