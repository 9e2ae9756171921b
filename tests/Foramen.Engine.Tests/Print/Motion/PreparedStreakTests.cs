using Foramen.Engine.Exposure;
using Foramen.Engine.Print;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using Foramen.Engine.Tests.Exposure.Motion;
using static Foramen.Engine.Tests.Print.Motion.MotionScene;
using static Foramen.Engine.Tests.Print.Motion.SmallSheet;

namespace Foramen.Engine.Tests.Print.Motion;

/// <summary>A lamp whose spot, 7 mm wide, is 8 lx on a ground of 1 lx; 5.6 pixels wide, it touches six rows.</summary>
public class PreparedStreakTests
{
    private static readonly Length Spot = Length.FromMillimetres(7);

    // At half of its radius a round spot's chord is √3/2 of its width; farther from the axis the lamp's light falls off as the ground's does.
    [Theory]
    [InlineData(20, 15, 60, 45)]
    [InlineData(56, 38, 78, 58)]
    public void A_place_has_the_lamps_light_for_as_long_as_its_chord_takes(double left, double top, double right, double bottom)
    {
        // Through 0.07 m of its way the spot leaves a point: 5 of 10 s.
        var exposed = Exposed(Lamp(0.014), 1, MotionCourse.Between(S(10), 0, 1), Place(left, top, right, bottom));
        var (column, middle) = ((int)(left + right) / 2, (int)((top + bottom) / 2));
        foreach (var (row, aside) in new[] { (middle, 0.625), (middle - 1, 0.625), (middle + 1, 1.875), (middle - 3, 3.125) })
        {
            var chord = Math.Sqrt(1 - Math.Pow(aside / 3.5, 2));
            Assert.Equal(1 + (8 * 0.5 * chord), exposed.LightAt(column, row), 0.01);
        }

        Assert.Equal(1, exposed.LightAt(column, middle + 3), 1e-6);
        Assert.Equal(1, exposed.LightAt((int)left - 1, middle), 1e-6);
    }

    // No line is thinner than a pixel.
    [Fact]
    public void The_smallest_spot_draws_a_line_of_a_pixel()
    {
        var spot = Length.FromMillimetres(0.35);
        var motion = MotionOnSheet.Of(Image((_, _) => 1), [new("lamp", Place(20, 15, 60, 46), new LampPasses(Lamp(0)))], spot);
        var exposed = motion.Expose([MotionCourse.Between(S(10), 0, 1)], StraightCurve.Response(2, 1), S(10));
        Assert.True(exposed.LightAt(40, 30) > 100);
        Assert.Equal(1, exposed.LightAt(40, 29), 1e-6);
        Assert.Equal(1, exposed.LightAt(40, 31), 1e-6);
    }

    // A lamp that stands adds its light as progress, the power mean; one that passes, as light.
    [Theory]
    [InlineData(0, 1.5)]
    [InlineData(0.014, 1)]
    public void Standing_it_takes_turns_with_the_ground_slowly(double speed, double exponent)
    {
        var course = speed > 0 ? MotionCourse.Between(S(10), 0, 1) : MotionCourse.Between(S(10), 0.5, 1);
        var share = 0.5 * Math.Sqrt(1 - Math.Pow(0.625 / 3.5, 2));
        var mean = Math.Pow((1 - share) + (share * Math.Pow(9, exponent)), 1 / exponent);
        Assert.Equal(mean, Exposed(Lamp(speed), 1.5, course, Place(20, 15, 60, 45)).LightAt(40, 30), 0.01);
    }

    // The ground rises by e⁴ along the line: on a straight curve its mean density is that of its middle.
    [Fact]
    public void Its_trace_looks_at_all_of_its_line()
    {
        var image = Image((column, _) => 0.07 * Math.Exp((column - 39.5) / 10));
        var response = StraightCurve.Response(2, 1);
        var motion = MotionOnSheet.Of(image, [new("lamp", Place(20, 15, 60, 45), new LampPasses(Lamp(0.014)))], Spot);
        var trace = motion.Traces([MotionCourse.Between(S(10), 1, 1)], response, For(10), FlashSetup.None)[0];
        Assert.Equal(1.5 + (2 * Math.Log10(0.07 * 10 * response.ActinicFactor)), trace.Density.Value, 0.02);
        Assert.Equal(0, trace.Moved, 1e-6);
    }

    private static PassingLamp Lamp(double metresPerSecond) => new()
    {
        // 3200 cd from 1 m through 0.35 mm onto 7 mm: 3200·(0.35/7)² = 8 lx.
        Intensity = LuminousIntensity.FromCandelas(3200), Distance = Length.FromMetres(1), Speed = MotionSpeed.FromMetresPerSecond(metresPerSecond),
    };

    private static SheetImage Exposed(PassingLamp lamp, double exponent, MotionCourse course, RectangleInPhotograph place)
        => MotionOnSheet.Of(Image((_, _) => 1), [new("lamp", place, new LampPasses(lamp))], Spot)
            .Expose([course], StraightCurve.Response(2, 1 / exponent), course.Exposure);
}
