using Foramen.Engine.Scene;

namespace Foramen.Engine.Tests.Scene.PublishedValues;

/// <summary>IEC 61966-2-1 (sRGB) and the published matrices of sRGB and Display P3.</summary>
[Source("iec-61966-2-1")]
public class Iec61966Tests
{
    // Worked from the standard's formula by hand; code 128 is the value colour texts quote as 0.2159.
    [Theory]
    [InlineData(0, 0)]
    [InlineData(10, 0.003035)]
    [InlineData(11, 0.003347)]
    [InlineData(25, 0.00972)]
    [InlineData(64, 0.05127)]
    [InlineData(118, 0.18116)]
    [InlineData(128, 0.21586)]
    [InlineData(188, 0.50289)]
    [InlineData(255, 1)]
    [Source("iec-61966-2-1", "transfer function", Basis.Worked)]
    public void Linear_light_of_codes(byte code, double linear) => Assert.Equal(linear, SrgbTransfer.LinearOfCode(code), 0.00001);

    // sRGB to XYZ as the standard prints it, four decimals.
    [Fact]
    public void Matrix_of_srgb() => Same(
        new[,] { { 0.4124, 0.3576, 0.1805 }, { 0.2126, 0.7152, 0.0722 }, { 0.0193, 0.1192, 0.9505 } },
        RgbSpace.ToXyz(PhotographColour.Srgb));

    // Display P3 to XYZ as CSS Color 4 (W3C) prints it, rounded.
    [Fact]
    [Source("css-color-4")]
    public void Matrix_of_display_p3() => Same(
        new[,] { { 0.48657, 0.26567, 0.19822 }, { 0.22897, 0.69174, 0.07929 }, { 0, 0.04511, 1.04394 } },
        RgbSpace.ToXyz(PhotographColour.DisplayP3));

    // Display P3 to linear sRGB, as quoted in colour references: 1.2249 −0.2247 0 / −0.0420 1.0419 0 / −0.0197 −0.0786 1.0979 (from memory).
    [Theory]
    [InlineData(1, 0, 0, 1.2249, -0.0420, -0.0197)]
    [InlineData(0, 1, 0, -0.2247, 1.0419, -0.0786)]
    [InlineData(0, 0, 1, 0, 0, 1.0979)]
    [InlineData(1, 1, 1, 1, 1, 1)]
    [Source("css-color-4", Basis.Memory)]
    public void Display_p3_primaries_and_white_in_srgb(double r, double g, double b, double red, double green, double blue)
    {
        var found = RgbSpace.ToLinearSrgb(PhotographColour.DisplayP3, r, g, b);
        Assert.Equal(red, found.Red, 0.0006);
        Assert.Equal(green, found.Green, 0.0006);
        Assert.Equal(blue, found.Blue, 0.0006);
    }

    private static void Same(double[,] expected, double[,] found)
    {
        for (var i = 0; i < 9; i++)
        {
            Assert.Equal(expected[i / 3, i % 3], found[i / 3, i % 3], 0.00006);
        }
    }
}
