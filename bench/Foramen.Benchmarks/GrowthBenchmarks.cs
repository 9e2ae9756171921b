using BenchmarkDotNet.Attributes;

namespace Foramen.Benchmarks;

/// <summary>The same job with more and more pixels, in the photograph alone and in photograph and print together.</summary>
public class GrowthBenchmarks
{
    private readonly PrintJob job = new();
    private byte[] jpeg = [];
    private int width;
    private int height;

    /// <summary>Size of the photograph.</summary>
    [Params(1.5, 3.0, 6.0, 12.0, 24.0)]
    public double Megapixels { get; set; }

    [GlobalSetup]
    public void Prepare()
    {
        jpeg = BenchPhotograph.Jpeg(Megapixels);
        height = (int)Math.Round(Math.Sqrt(Megapixels * 1e6 * 3 / 4));
        width = (int)Math.Round(height * 4 / 3.0);
    }

    [Benchmark]
    public int PhotographGrows() => job.Run(jpeg, width, height, 1600).Length;

    // As many pixels to the print as the photograph has along its own long side.
    [Benchmark]
    public int PhotographAndPrintGrow() => job.Run(jpeg, width, height, width).Length;
}
