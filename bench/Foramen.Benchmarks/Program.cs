using BenchmarkDotNet.Columns;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Loggers;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;
using Foramen.Benchmarks;

if (args is ["memory", var file, var what])
{
    MemoryProbe.Measure(file, what == "print");
    return 0;
}

if (args is ["sun", var sunInto])
{
    var measured = SunYear.Measure(Directory.GetCurrentDirectory());
    Console.WriteLine(measured);
    File.WriteAllText(sunInto, measured);
    return 0;
}

if (args is ["strip", var stripInto])
{
    var fitted = StripTime.Measure();
    Console.WriteLine(fitted);
    File.WriteAllText(stripInto, fitted);
    return 0;
}

if (args is ["hole", var holeInto])
{
    var measured = HoleScans.Measure();
    Console.WriteLine(measured);
    File.WriteAllText(holeInto, measured);
    return 0;
}

if (args is ["learn", var learnInto])
{
    var learned = LearnTime.Measure();
    Console.WriteLine(learned);
    File.WriteAllText(learnInto, learned);
    return 0;
}

if (args is ["rehearsal", var rehearsalInto])
{
    var rehearsed = RehearsalTable.Measure();
    Console.WriteLine(rehearsed);
    File.WriteAllText(rehearsalInto, rehearsed);
    return 0;
}

// In this process, because rebuilding for each case takes longer than measuring it; seven rounds after three to warm up give a steady median.
var job = Job.Default.WithToolchain(InProcessEmitToolchain.Instance).WithWarmupCount(3).WithIterationCount(7);
var config = ManualConfig.CreateEmpty()
    .AddJob(job)
    .AddColumnProvider(DefaultColumnProviders.Instance)
    .AddLogger(args.Contains("--verbose") ? ConsoleLogger.Default : NullLogger.Instance)
    .WithOptions(ConfigOptions.DisableLogFile);

if (args is ["bath", var bathInto, ..])
{
    Console.Error.WriteLine("A bottle…");
    var table = BathTable.Write(BenchmarkRunner.Run<BathBenchmarks>(config));
    Console.WriteLine(table);
    File.WriteAllText(bathInto, table);
    return 0;
}

Console.Error.WriteLine("Convolution…");
var convolution = BenchmarkRunner.Run<ConvolutionBenchmarks>(config);
Console.Error.WriteLine("Photograph to print…");
var print = BenchmarkRunner.Run<PrintBenchmarks>(config);
Console.Error.WriteLine("Growth with pixels…");
var growth = BenchmarkRunner.Run<GrowthBenchmarks>(config);
Console.Error.WriteLine("Memory…");
var jpegFile = Path.GetTempFileName();
try
{
    File.WriteAllBytes(jpegFile, BenchPhotograph.Jpeg(12));
    var report = ResultTable.Write(convolution, print, growth, MemoryProbe.PeakOf(jpegFile, false), MemoryProbe.PeakOf(jpegFile, true));
    Console.WriteLine(report);
    if (args.FirstOrDefault(argument => !argument.StartsWith('-')) is { } into)
    {
        File.WriteAllText(into, report);
    }
}
finally
{
    File.Delete(jpegFile);
}

return 0;
