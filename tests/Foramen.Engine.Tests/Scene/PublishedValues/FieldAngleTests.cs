using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;

namespace Foramen.Engine.Tests.Scene.PublishedValues;

/// <summary>Angles of view that lens tables print for 36 × 24 mm, horizontal, vertical and diagonal, to half the last digit (from memory).</summary>
[Source("lens-tables", Basis.Memory)]
public class FieldAngleTests
{
    [Theory]
    [InlineData(24, 73.7, 53.1)]
    [InlineData(28, 65.5, 46.4)]
    [InlineData(35, 54.4, 37.8)]
    [InlineData(50, 39.6, 27.0)]
    [InlineData(85, 23.9, 16.1)]
    [InlineData(200, 10.3, 6.9)]
    public void Angles_of_a_three_to_two_picture(double focalLength, double horizontal, double vertical)
    {
        var level = PhotographField.FromFocalLength35(6000, 4000, Length.FromMillimetres(focalLength));
        Assert.Equal(horizontal, level.Horizontal.Degrees, 0.06);
        Assert.Equal(vertical, level.Vertical.Degrees, 0.06);

        var upright = PhotographField.FromFocalLength35(4000, 6000, Length.FromMillimetres(focalLength));
        Assert.Equal(vertical, upright.Horizontal.Degrees, 0.06);
        Assert.Equal(horizontal, upright.Vertical.Degrees, 0.06);
    }

    // A 4:3 picture at "26 mm" by the diagonal, worked by hand: 43.267 mm shared 4:3:5 is 34.61 × 25.96 mm, 67.3° × 53.1°.
    [Fact]
    [Source("euclid", "I.47", Basis.Worked)]
    public void Angles_of_a_four_to_three_picture()
    {
        var field = PhotographField.FromFocalLength35(4032, 3024, Length.FromMillimetres(26));
        Assert.Equal(67.3, field.Horizontal.Degrees, 0.06);
        Assert.Equal(53.1, field.Vertical.Degrees, 0.06);
    }
}
