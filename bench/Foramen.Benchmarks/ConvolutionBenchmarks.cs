using BenchmarkDotNet.Attributes;
using Foramen.Engine.Camera;
using Foramen.Engine.Print;
using Foramen.Engine.Quantities;
using OpenCvSharp;

namespace Foramen.Benchmarks;

/// <summary>The hole's spot over a print-sized plane of floats, against a general image library's filter with the same kernel.</summary>
public class ConvolutionBenchmarks
{
    private const int Width = 1600;
    private const int Height = 1270;

    private readonly float[] source = new float[Width * Height];
    private readonly float[] destination = new float[Width * Height];
    private HoleImageKernel? kernel;
    private Mat? sourceMat;
    private Mat? destinationMat;
    private Mat? kernelMat;

    /// <summary>Pixels from the kernel's middle to its edge.</summary>
    [Params(4, 5, 7, 10)]
    public int HalfWidth { get; set; }

    [GlobalSetup]
    public void Prepare()
    {
        var noise = 1u;
        for (var i = 0; i < source.Length; i++)
        {
            noise = unchecked((noise * 1664525) + 1013904223);
            source[i] = noise >> 16;
        }

        var spread = PointSpread.Of(Length.FromMillimetres(0.35), Length.FromMillimetres(63), PaperLight.Monochromatic(450));
        kernel = HoleImageKernel.WithHalfWidth(spread, 0.08, HalfWidth);
        sourceMat = Mat.FromPixelData(Height, Width, MatType.CV_32FC1, source).Clone();
        destinationMat = new Mat(Height, Width, MatType.CV_32FC1);
        kernelMat = Mat.FromPixelData(kernel.Size, kernel.Size, MatType.CV_32FC1, kernel.Weights.ToArray()).Clone();
        Check();
    }

    [GlobalCleanup]
    public void CleanUp()
    {
        sourceMat?.Dispose();
        destinationMat?.Dispose();
        kernelMat?.Dispose();
    }

    [Benchmark(Baseline = true)]
    public void Filter2D() => Cv2.Filter2D(sourceMat!, destinationMat!, MatType.CV_32FC1, kernelMat!, borderType: BorderTypes.Reflect101);

    [Benchmark]
    public void KernelConvolved() => KernelConvolution.Apply(source, Width, Height, kernel!, destination);

    // A race between two that do different things would mean nothing: away from the edges both must agree.
    private void Check()
    {
        Filter2D();
        KernelConvolved();
        for (var y = 20; y < Height - 20; y += 101)
        {
            for (var x = 20; x < Width - 20; x += 103)
            {
                var (ours, theirs) = (destination[(y * Width) + x], destinationMat!.At<float>(y, x));
                if (Math.Abs(ours - theirs) > 1e-4 * Math.Abs(theirs))
                {
                    throw new InvalidOperationException($"At {x}, {y} the two differ: {ours} and {theirs}.");
                }
            }
        }
    }
}
