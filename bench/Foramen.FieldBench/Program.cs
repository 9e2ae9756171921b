using System.Globalization;
using Foramen.FieldBench;

// name=directory pairs of published wwwroot folders; the first is the yardstick.
if (args.Length == 0 || args.Any(arg => !arg.Contains('=', StringComparison.Ordinal)))
{
    await Console.Error.WriteLineAsync("Give published apps as name=directory, the yardstick first.");
    return 2;
}

var apps = new List<ServedApp>();
foreach (var arg in args)
{
    var cut = arg.IndexOf('=', StringComparison.Ordinal);
    apps.Add(await ServedApp.StartAsync(arg[..cut], arg[(cut + 1)..]));
}

var rounds = int.Parse(Environment.GetEnvironmentVariable("ROUNDS") ?? "7", CultureInfo.InvariantCulture);
var results = await ColdStart.MeasureAsync(apps, rounds);
Console.WriteLine("| app | cold start, median (range) ms | ratio | transfer, kB | ratio |");
Console.WriteLine("| --- | ---: | ---: | ---: | ---: |");
foreach (var result in results)
{
    Console.WriteLine(string.Create(
        CultureInfo.InvariantCulture,
        $"| {result.Name} | {result.MedianMilliseconds:0} ({result.Milliseconds.Min():0}–{result.Milliseconds.Max():0}) | {result.MedianMilliseconds / results[0].MedianMilliseconds:0.00} | {result.TransferBytes / 1000.0:0} | {(double)result.TransferBytes / results[0].TransferBytes:0.00} |"));
}

return 0;
