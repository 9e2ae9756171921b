using Foramen.Engine.Camera;
using Foramen.Engine.Quantities;
using static Foramen.Engine.Tests.Camera.CameraExamples;

namespace Foramen.Engine.Tests.Camera.PublishedValues;

/// <summary>
/// Radiometry that any textbook has: E = πL/(4N²) on the axis of a small opening, cos⁴ θ on a flat image; the inside of a sphere is lit evenly by
/// any part of itself (the integrating sphere of R. Ulbricht, 1900); the angle at the rim of a circle is half that at its middle (Euclid III.20).
/// </summary>
public class FalloffTests
{
    private static readonly Luminance Sunny = Luminance.FromCandelasPerSquareMetre(3200);

    // N 200 in full sun of 3200 cd/m²: π·3200/(4·200²) = 0.0628 lx.
    [Fact]
    [Source("lighting-textbook", "E = πL/(4N²)", Basis.Worked)]
    public void Light_on_the_axis()
    {
        var camera = Flat(0.3, 60, 100, 80);
        Assert.Equal(200, camera.FNumber.Value, 1e-9);
        Assert.Equal(0.06283, camera.ImageIlluminance(Sunny, SheetPoint.Middle).Lux, 0.000005);
        Assert.Equal(Math.PI * 3200 / (4 * 200.0 * 200), camera.ImageIlluminance(Sunny, SheetPoint.Middle).Lux, 1e-12);
    }

    // cos⁴: 0.5625 at 30°, 0.25 at 45°, 0.0625 at 60°.
    [Theory]
    [InlineData(30, 0.5625)]
    [InlineData(45, 0.25)]
    [InlineData(60, 0.0625)]
    [Source("lighting-textbook", "cos⁴", Basis.Worked)]
    public void Flat_paper(double degrees, double part)
    {
        var x = 60 * Math.Tan(degrees * Math.PI / 180);
        Assert.Equal(part, Flat(0.3, 60, 300, 80).FalloffStops(At(x, 0)).Ratio, 1e-9);
        Assert.Equal(part, Flat(0.3, 60, 300, 80).FalloffStops(At(-x * 0.6, x * 0.8)).Ratio, 1e-9);
    }

    // Stops lost in the corner of the old plate sizes (3¼ × 4¼ and 4¾ × 6½ inches): 8·lg2 of the cosine, worked with a calculator.
    [Theory]
    [InlineData(50, 82.55, 107.95, -3.02)]
    [InlineData(60, 82.55, 107.95, -2.38)]
    [InlineData(75, 120.65, 165.1, -3.03)]
    [InlineData(100, 120.65, 165.1, -2.06)]
    [Source("lighting-textbook", "cos⁴", Basis.Worked)]
    public void Corners_of_plates(double focal, double width, double height, double stops)
        => Assert.Equal(stops, Flat(0.3, focal, width, height).FalloffStops(At(width / 2, height / 2)).Value, 0.011);

    // Median over the area of the same sheets, by brute force elsewhere; the tolerance is that of its grid.
    [Theory]
    [InlineData(50, 82.55, 107.95, -1.30)]
    [InlineData(60, 82.55, 107.95, -0.96)]
    [InlineData(75, 120.65, 165.1, -1.29)]
    [InlineData(100, 120.65, 165.1, -0.79)]
    [Source("lighting-textbook", "cos⁴", Basis.Worked)]
    public void Median_over_plates(double focal, double width, double height, double stops)
    {
        var camera = Flat(0.3, focal, width, height);
        var values = new List<double>();
        for (var i = 0; i < 101; i++)
        {
            for (var j = 0; j < 101; j++)
            {
                values.Add(camera.FalloffStops(At(((i / 100.0) - 0.5) * width, ((j / 100.0) - 0.5) * height)).Value);
            }
        }

        values.Sort();
        Assert.Equal(stops, values[values.Count / 2], 0.021);
    }

    // Paper about the hole: the paper is always square to the light in the plane of the hole, and only the hole's cosine is left.
    [Theory]
    [InlineData(30, 0.8660)]
    [InlineData(60, 0.5)]
    [Source("lighting-textbook", "cosine of a small opening", Basis.Worked)]
    public void Paper_around_the_hole(double degrees, double part)
        => Assert.Equal(part, Curved(0.3, 50, 50, 150, 60).FalloffStops(At(50 * degrees * Math.PI / 180, 0)).Ratio, 0.00005);

    // Hole in the wall opposite: as inside an integrating sphere, every point of that plane gets the same.
    [Theory]
    [InlineData(10)]
    [InlineData(50)]
    [InlineData(100)]
    [Source("ulbricht-1900", Basis.Worked)]
    public void Paper_along_the_wall_of_a_tin(double x)
        => Assert.Equal(1, Curved(0.3, 90, 45, 220, 60).FalloffStops(At(x, 0)).Ratio, 1e-9);

    // Two circles of diameter 1 shifted by q overlap in (2/π)(acos q − q√(1 − q²)): 0.6850 at 0.25, 0.3910 at 0.5, 0.1443 at 0.75. The same figures
    // are the diffraction-limited transfer function of a round pupil, tabulated in optics handbooks.
    [Theory]
    [InlineData(0.25, 0.6850)]
    [InlineData(0.5, 0.3910)]
    [InlineData(0.75, 0.1443)]
    [InlineData(0, 1)]
    [InlineData(1.01, 0)]
    [Source("goodman", "6.3")]
    public void Overlap_of_the_rims(double q, double part)
        => Assert.Equal(part, Hole.FromDiameter(Mm(0.3), edgeThickness: Mm(0.1)).OpenPart(q * 3), 0.00005);

    [Theory]
    [InlineData(100, 90)] // 2 atan(50/50)
    [InlineData(57.735, 60)]
    [Source("euclid", "tangent of half the field", Basis.Worked)]
    public void Field_of_flat_paper(double width, double degrees)
        => Assert.Equal(degrees, Flat(0.3, 50, width, 40).Field().Horizontal.Degrees, 0.001);

    [Theory]
    [InlineData(50, 57.296)] // a radian about the hole
    [InlineData(100, 28.648)] // half a radian from the rim
    [Source("euclid", "III.20", Basis.Worked)]
    public void Field_of_curved_paper(double focal, double degrees)
        => Assert.Equal(degrees, Curved(0.3, focal, 50, 50, 40).Field().Horizontal.Degrees, 0.001);

    // 3-4-5: half a diagonal of 50 at a distance of 50.
    [Fact]
    [Source("euclid", "I.47", Basis.Worked)]
    public void Field_along_the_diagonal()
    {
        var field = Flat(0.3, 50, 80, 60).Field();
        Assert.Equal(90, field.Diagonal.Degrees, 0.001);
        Assert.Equal(61.93, field.Vertical.Degrees, 0.005); // 2 atan(0.6)
    }
}
