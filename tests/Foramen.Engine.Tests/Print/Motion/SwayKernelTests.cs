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

    [Fact]
    public void Nothing_sways_in_no_time() => Assert.Equal([1.0], SwayKernel.Of(12, 0));
}
