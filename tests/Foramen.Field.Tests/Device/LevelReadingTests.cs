using Foramen.Field.Device;

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
}
