using CsCheck;
using Foramen.Engine.Print;

namespace Foramen.Engine.Tests.Print.Motion;

public class SwayKernelTests
{
    // A sine's mean square is half the square of its reach; cells add a twelfth of their own width squared.
    [Fact]
    [Source("kinematics", "mean square of a·sin φ is a²/2", Basis.Worked)]
    public void Whole_swings_have_the_spread_of_a_sine() => Gen.Double[0.5, 200].Sample(reach =>
    {
        var kernel = SwayKernel.Of(reach, 10);
        Assert.Equal(1, kernel.Sum(), 1e-9);
        var half = kernel.Length / 2;
        var square = kernel.Select((part, i) => part * Math.Pow(i - half, 2)).Sum();
        Assert.InRange(square, ((reach * reach) / 2) - (0.6 * reach) - 0.2, ((reach * reach) / 2) + (0.6 * reach) + 0.2);
    });

    [Fact]
    public void Light_is_kept_and_evenness_stays_even() => Gen.Select(Gen.Float[0, 10].Array[3, 60], Gen.Double[0, 30], Gen.Double[0, 2]).Sample((row, reach, swings) =>
    {
        var kernel = SwayKernel.Of(reach, swings);
        Assert.Equal(1, kernel.Sum(), 1e-9);
        var (smooth, even) = (new float[row.Length], new float[row.Length]);
        SwayKernel.Smooth(row, kernel, smooth);
        Assert.Equal(row.Sum(), smooth.Sum(), 1e-3 * (1 + row.Sum()));
        SwayKernel.Smooth(Enumerable.Repeat(3f, row.Length).ToArray(), kernel, even);
        Assert.All(even, value => Assert.Equal(3, value, 1e-5));
    });

    // Half a swing goes from one end to the other: all of it is seen, as in many.
    [Fact]
    public void Half_a_swing_is_as_many() => Gen.Double[0.5, 50].Sample(reach => Assert.Equal(SwayKernel.Of(reach, 10), SwayKernel.Of(reach, 0.5)));

    // Less goes evenly sin(π·swings) of the reach to each side: each whole cell of it has the same part.
    [Fact]
    public void A_part_of_a_swing_is_spread_evenly_as_far_as_it_goes() => Gen.Select(Gen.Double[2, 50], Gen.Double[0.1, 0.49]).Sample((reach, swings) =>
    {
        var half = reach * Math.Sin(Math.PI * swings);
        var kernel = SwayKernel.Of(reach, swings);
        Assert.Equal(1, kernel.Sum(), 1e-9);
        var middle = kernel.Length / 2;
        for (var i = 0; i < kernel.Length; i++)
        {
            if (Math.Abs(i - middle) + 0.5 < half)
            {
                Assert.Equal(0.5 / half, kernel[i], 1e-9);
            }
        }
    });

    [Fact]
    public void A_reach_that_nobody_sees_is_none() => Assert.Equal([1.0], SwayKernel.Of(1e-7, 3));

    [Fact]
    public void Nothing_sways_in_no_time() => Assert.Equal([1.0], SwayKernel.Of(12, 0));
}
