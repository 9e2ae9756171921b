using CsCheck;
using Foramen.Engine.Quantities;
using Foramen.Field.Device;
using MathNet.Numerics.LinearAlgebra;

namespace Foramen.Field.Tests.Device;

/// <summary>Attitudes whose angles the W3C's DeviceOrientation Event specification describes in words and figures (section on deviceorientation).</summary>
public sealed class LevelReadingTests
{
    [Theory]
    [InlineData(90, 0, 0, 0)] // upright: beta 90, the specification's own example of a device held vertically
    [InlineData(0, 0, -90, double.NaN)] // flat on a table, screen up: the back camera looks straight down
    [InlineData(120, 0, 30, 0)] // top leant towards the holder: the back camera looks up by 30 degrees
    [InlineData(60, 0, -30, 0)] // top leant away
    public void Tilt_and_roll(double beta, double gamma, double tilt, double roll)
    {
        var reading = LevelReading.FromOrientation(beta, gamma);
        Assert.Equal(tilt, reading.TiltDegrees, 1e-9);
        if (!double.IsNaN(roll))
        {
            Assert.Equal(roll, reading.RollDegrees, 1e-9);
        }
    }

    /// <summary>In landscape (gamma −90 with beta 0 is the device's left edge down… its right edge up) the roll is a quarter turn.</summary>
    [Theory]
    [InlineData(0, 90, 90)] // rolled clockwise about y: the right edge points down
    [InlineData(0, -90, -90)]
    public void A_quarter_turn(double beta, double gamma, double roll)
        => Assert.Equal(roll, LevelReading.FromOrientation(beta, gamma).RollDegrees, 1e-9);

    /// <summary>The specification's own attitudes: upright, a user who faces north has alpha 0; turned to the west by 90 degrees, counterclockwise from above, alpha 90.</summary>
    [Theory]
    [InlineData(0, 90, 0, 0)]
    [InlineData(90, 90, 0, 270)]
    [InlineData(180, 90, 0, 180)]
    [InlineData(270, 90, 0, 90)]
    [InlineData(360, 90, 0, 0)]
    [InlineData(270, 120, 0, 90)] // leant back, its back looks up towards the east
    [InlineData(270, 60, 0, 90)]
    public void Bearing(double alpha, double beta, double gamma, double bearing)
        => Assert.Equal(0, Math.IEEERemainder(bearing - LevelReading.FromOrientation(beta, gamma, alpha).BearingDegrees!.Value, 360), 1e-9);

    /// <summary>Against rotation matrices of a general library: what the specification says, a turn about z, then about the new x, then about the new y.</summary>
    [Fact]
    public void Bearing_and_tilt_are_those_of_the_turned_device() => Gen.Select(Gen.Double[0, 360], Gen.Double[-180, 180], Gen.Double[-90, 90]).Sample(
        (alpha, beta, gamma) =>
        {
            static double[,] About(int axis, double degrees)
            {
                var (sin, cos) = Math.SinCos(degrees * Math.PI / 180);
                var turn = new double[3, 3];
                var (one, other) = ((axis + 1) % 3, (axis + 2) % 3);
                (turn[axis, axis], turn[one, one], turn[other, other], turn[one, other], turn[other, one]) = (1, cos, cos, -sin, sin);
                return turn;
            }

            var turned = Matrix<double>.Build.DenseOfArray(About(2, alpha)) * Matrix<double>.Build.DenseOfArray(About(0, beta)) * Matrix<double>.Build.DenseOfArray(About(1, gamma))
                * Vector<double>.Build.Dense([0, 0, -1]);
            var reading = LevelReading.FromOrientation(beta, gamma, alpha);
            Assert.Equal(Math.Asin(Math.Clamp(turned[2], -1, 1)) * 180 / Math.PI, reading.TiltDegrees, 1e-5);
            if (Math.Abs(reading.TiltDegrees) > 80)
            {
                Assert.Null(reading.BearingDegrees);
                return;
            }

            var bearing = Math.Atan2(turned[0], turned[1]) * 180 / Math.PI;
            Assert.Equal(0, Math.IEEERemainder(bearing - reading.BearingDegrees!.Value, 360), 1e-6);
            Assert.InRange(reading.BearingDegrees.Value, 0, 360);
        },
        iter: Samples.Of(500));

    [Fact]
    public void Where_north_is_not_known_there_is_no_bearing() => Assert.Null(LevelReading.FromOrientation(90, 0).BearingDegrees);

    [Theory]
    [InlineData(-1)]
    [InlineData(361)]
    [InlineData(double.NaN)]
    public void An_alpha_that_is_none_is_refused(double alpha) => Assert.Throws<RefusalException>(() => LevelReading.FromOrientation(90, 0, alpha));
}
