using CsCheck;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;

namespace Foramen.Engine.Tests.Scene;

public class PhotographFieldTests
{
    private static readonly Gen<PhotographField> GenField = Gen.Select(Gen.Int[100, 8000], Gen.Int[100, 8000], Gen.Double[10, 500])
        .Select((width, height, focal) => PhotographField.FromFocalLength35(width, height, Length.FromMillimetres(focal)));

    [Fact]
    public void A_longer_lens_sees_less() => Gen.Select(Gen.Double[10, 400], Gen.Double[1.001, 2]).Sample((focal, times) =>
        Field(focal * times).Horizontal < Field(focal).Horizontal && Field(focal * times).Vertical < Field(focal).Vertical);

    [Fact]
    public void Place_and_direction_are_each_others_inverse() => Gen.Select(GenField, Gen.Double[0, 1], Gen.Double[0, 1]).Sample((field, x, y) =>
    {
        var (right, up) = field.DirectionOf(PhotographPosition.FromFractions(x, y));
        var found = field.Locate(right, up);
        Assert.Equal(x, found.X, 1e-9);
        Assert.Equal(y, found.Y, 1e-9);
    });

    [Fact]
    public void The_number_of_pixels_does_not_matter() => Gen.Select(GenField, Gen.Int[2, 8]).Sample((field, times) =>
    {
        var focal = Length.FromMillimetres(field.FocalLengthPixels / double.Hypot(field.Width, field.Height) * 43.266615);
        Assert.Equal(field.Horizontal.Degrees, PhotographField.FromFocalLength35(field.Width * times, field.Height * times, focal).Horizontal.Degrees, 1e-4);
    });

    [Fact]
    public void An_angle_given_is_the_angle_got() => Gen.Double[1, 120].Sample(degrees =>
        Assert.Equal(degrees, PhotographField.FromHorizontalAngle(3000, 2000, Angle.FromDegrees(degrees)).Horizontal.Degrees, 1e-9));

    [Fact]
    public void Up_is_towards_the_first_row_and_right_towards_the_last_column()
    {
        var (x, y) = Field(26).Locate(0.1, 0.1);
        Assert.True(x > 0.5 && y < 0.5);
    }

    // Turning a photograph upright swaps its sides and keeps its diagonal, so an orientation code changes nothing else.
    [Fact]
    public void Turning_the_photograph_swaps_its_angles()
    {
        var facts = new PhotographFacts { FocalLength35mm = Length.FromMillimetres(26) };
        var level = PhotographField.Of(new ScenePhotograph(40, 30, new byte[4800], facts));
        var upright = PhotographField.Of(new ScenePhotograph(30, 40, new byte[4800], facts with { Orientation = 6 }));
        Assert.Equal((level.Horizontal, level.Vertical), (upright.Vertical, upright.Horizontal));
    }

    [Theory]
    [InlineData(3.9)]
    [InlineData(0)]
    [InlineData(3001)]
    [InlineData(5)]
    public void Absurd_focal_lengths_are_refused(double millimetres) => Assert.Throws<RefusalException>(() => Field(millimetres));

    [Fact]
    public void A_photograph_that_does_not_say_is_refused()
        => Assert.Contains("focal length", Assert.Throws<RefusalException>(() => PhotographField.Of(Photographs.Even(1, 1, 1))).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData(0)]
    [InlineData(180)]
    [InlineData(-20)]
    public void Absurd_angles_are_refused(double degrees)
        => Assert.Throws<RefusalException>(() => PhotographField.FromHorizontalAngle(3000, 2000, Angle.FromDegrees(degrees)));

    private static PhotographField Field(double millimetres) => PhotographField.FromFocalLength35(4000, 3000, Length.FromMillimetres(millimetres));
}
