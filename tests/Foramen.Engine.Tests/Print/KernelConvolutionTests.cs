using CsCheck;
using Foramen.Engine.Camera;
using Foramen.Engine.Print;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Print;

public class KernelConvolutionTests
{
    private static readonly PointSpread Spread = PointSpread.Of(Length.FromMillimetres(0.35), Length.FromMillimetres(63), PaperLight.Monochromatic(450));

    private static readonly Gen<(int Width, int Height, int Half, float[] Values, byte[] Known)> AnyPlane =
        from width in Gen.Int[1, 300]
        from height in Gen.Int[1, 40]
        from half in Gen.Int[0, 12]
        from values in Gen.Float[0, 1000].Array[width * height]
        from holes in Gen.Int[0, 3]
        from known in Gen.Byte[0, 20].Array[width * height]
        select (width, height, half, values, holes == 0 ? [] : Array.ConvertAll(known, k => k < holes ? (byte)0 : (byte)1));

    // The definition, term by term in double precision: sum of weight × value over known pixels, over the sum of their weights.
    private static double Reference(float[] values, byte[] known, int width, int height, HoleImageKernel kernel, int column, int row)
    {
        var (sum, weights) = (0.0, 0.0);
        for (var y = -kernel.HalfWidth; y <= kernel.HalfWidth; y++)
        {
            for (var x = -kernel.HalfWidth; x <= kernel.HalfWidth; x++)
            {
                var (c, r) = (column + x, row + y);
                if (c < 0 || r < 0 || c >= width || r >= height || (known.Length > 0 && known[(r * width) + c] == 0))
                {
                    continue;
                }

                var weight = kernel.Weights[((y + kernel.HalfWidth) * kernel.Size) + x + kernel.HalfWidth];
                sum += weight * (double)values[(r * width) + c];
                weights += weight;
            }
        }

        return sum / weights;
    }

    [Fact]
    public void It_is_the_weighted_mean_of_what_is_known() => AnyPlane.Sample(plane =>
    {
        var (width, height, half, values, known) = plane;
        for (var i = 0; i < known.Length; i++)
        {
            values[i] = known[i] == 0 ? 0 : values[i];
        }

        var kernel = HoleImageKernel.WithHalfWidth(Spread, 0.08, half);
        var result = new float[values.Length];
        KernelConvolution.Apply(values, width, height, kernel, result, known, TestContext.Current.CancellationToken);
        for (var row = 0; row < height; row++)
        {
            for (var column = 0; column < width; column++)
            {
                var i = (row * width) + column;
                var expected = known.Length > 0 && known[i] == 0 ? 0 : Reference(values, known, width, height, kernel, column, row);
                Assert.Equal(expected, result[i], 0.005); // of values up to 1000, in single precision
            }
        }
    }, iter: Samples.Of(60));

    [Fact]
    public void Even_light_stays_even_to_the_edge() => Gen.Select(Gen.Int[1, 80], Gen.Int[1, 80], Gen.Int[0, 10]).Sample((width, height, half) =>
    {
        var values = Enumerable.Repeat(7f, width * height).ToArray();
        var result = new float[values.Length];
        KernelConvolution.Apply(values, width, height, HoleImageKernel.WithHalfWidth(Spread, 0.08, half), result, cancellation: TestContext.Current.CancellationToken);
        Assert.All(result, value => Assert.Equal(7, value, 1e-4));
    }, iter: Samples.Of(50));

    [Fact]
    public void A_point_becomes_the_kernel()
    {
        var kernel = HoleImageKernel.WithHalfWidth(Spread, 0.08, 6);
        var values = new float[61 * 61];
        values[(30 * 61) + 30] = 1;
        var result = new float[values.Length];
        KernelConvolution.Apply(values, 61, 61, kernel, result, cancellation: TestContext.Current.CancellationToken);
        for (var y = -6; y <= 6; y++)
        {
            for (var x = -6; x <= 6; x++)
            {
                Assert.Equal(kernel.Weights[((y + 6) * 13) + x + 6], result[((y + 30) * 61) + x + 30], 1e-6);
            }
        }
    }

    [Fact]
    public void Planes_that_are_too_small_are_refused()
    {
        var kernel = HoleImageKernel.WithHalfWidth(Spread, 0.08, 2);
        void Apply(int values, int room, int flags) => KernelConvolution.Apply(
            new float[values], 10, 10, kernel, new float[room], new byte[flags], TestContext.Current.CancellationToken);
        Assert.Throws<RefusalException>(() => Apply(99, 100, 0));
        Assert.Throws<RefusalException>(() => Apply(100, 99, 0));
        Assert.Throws<RefusalException>(() => Apply(100, 100, 1));
    }

    [Fact]
    public void It_can_be_stopped()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(() => KernelConvolution.Apply(
            new float[10_000], 100, 100, HoleImageKernel.WithHalfWidth(Spread, 0.08, 2), new float[10_000], cancellation: stop.Token));
    }
}
