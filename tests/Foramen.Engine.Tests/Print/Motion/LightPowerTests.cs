using CsCheck;
using Foramen.Engine.Print;

namespace Foramen.Engine.Tests.Print.Motion;

public class LightPowerTests
{
    private static readonly Gen<double> Exponent = Gen.Double[0.5, 3];

    [Fact]
    public void Squares_have_their_roots_back()
    {
        var squares = new float[3];
        LightPower.Raise([3, 0, 0.5f], 2, squares);
        Assert.Equal([9, 0, 0.25f], squares);
        LightPower.Root(squares, 2);
        Assert.Equal([3, 0, 0.5f], squares);
    }

    [Fact]
    public void What_was_raised_is_taken_back_by_its_root() => Gen.Select(Gen.Float[0, 1000].Array[0, 9], Exponent).Sample((light, exponent) =>
    {
        var raised = new float[light.Length];
        LightPower.Raise(light, exponent, raised);
        LightPower.Root(raised, exponent);
        Assert.All(light.Zip(raised), pair => Assert.Equal(pair.First, pair.Second, 1e-3 * (pair.First + 1)));
    });

    // Sums of single precision may end a little below nothing.
    [Fact]
    public void Less_than_no_light_is_none()
    {
        float[] light = [-1e-6f, 4];
        LightPower.Root(light, 2);
        Assert.Equal([0, 2], light);
    }

    // Means of 2 and 8 in any handbook: arithmetic 5, quadratic √34, geometric 4 as the limit.
    [Fact]
    public void The_mean_is_the_power_mean()
    {
        Assert.Equal(5, LightPower.Mean(2, 8, 0.5, 1), 1e-12);
        Assert.Equal(Math.Sqrt(34), LightPower.Mean(2, 8, 0.5, 2), 1e-12);
        Assert.Equal(4, LightPower.Mean(2, 8, 0.5, 1e-6), 1e-4);
        Assert.Equal(6.5, LightPower.Mean(2, 8, 0.75, 1), 1e-12);
    }

    // The inequality of power means.
    [Fact]
    public void It_grows_with_the_exponent_and_lies_between() => Gen.Select(Gen.Double[0.01, 100], Gen.Double[0.01, 100], Gen.Double[0, 1], Exponent, Exponent).Sample(
        (first, second, share, one, other) =>
        {
            var (low, high) = (LightPower.Mean(first, second, share, Math.Min(one, other)), LightPower.Mean(first, second, share, Math.Max(one, other)));
            Assert.InRange(low, Math.Min(first, second) - 1e-9, high + 1e-9);
            Assert.True(high <= Math.Max(first, second) + 1e-9);
        });

    // To the last bit, or what never moves would change its pixel.
    [Fact]
    public void All_or_none_of_the_time_is_the_light_itself() => Gen.Select(Gen.Double[0.01, 100], Gen.Double[0.01, 100], Exponent).Sample((first, second, exponent) =>
    {
        Assert.Equal(first, LightPower.Mean(first, second, 0, exponent));
        Assert.Equal(second, LightPower.Mean(first, second, 1, exponent));
    });
}
