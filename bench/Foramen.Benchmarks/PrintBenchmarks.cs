using BenchmarkDotNet.Attributes;
using Foramen.Imaging;

namespace Foramen.Benchmarks;

/// <summary>A 12-megapixel JPEG to a 1600-pixel predicted print, against decoding that JPEG in full and nothing else.</summary>
[MemoryDiagnoser]
public class PrintBenchmarks
{
    private readonly PrintJob job = new();
    private byte[] jpeg = [];

    [GlobalSetup]
    public void Prepare() => jpeg = BenchPhotograph.Jpeg(12);

    [Benchmark(Baseline = true)]
    public int DecodeAlone() => PhotographReader.Read(jpeg, "bench.jpg").Width;

    [Benchmark]
    public int PhotographToPrint() => job.Run(jpeg, 4000, 3000, 1600).Length;
}
