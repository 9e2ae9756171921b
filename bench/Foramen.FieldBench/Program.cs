using System.Globalization;
using System.Runtime.InteropServices;
using System.Text;
using Foramen.FieldBench;
using Microsoft.Playwright;

if (args is ["history", var published])
{
    var served = await ServedApp.StartAsync("Field", published);
    using var one = await Playwright.CreateAsync();
    await using var alone = await BenchBrowser.LaunchAsync(one);
    var history = await HistoryTime.MeasureAsync(alone, served.Address);
    Console.Write(history.Write(alone.Version, MarkRows.Load));
    return 0;
}

if (args is ["motion", var photograph, var app])
{
    var served = await ServedApp.StartAsync("Field", app);
    using var one = await Playwright.CreateAsync();
    await using var alone = await BenchBrowser.LaunchAsync(one);
    await using var phone = await BenchBrowser.PhoneAsync(alone);
    var sheet = await phone.NewPageAsync();
    await SheetJourney.PlanAsync(sheet, served.Address, photograph);
    var stood = await SliderRepaint.MeasureAsync(sheet);
    var moved = await MotionRepaint.MeasureAsync(sheet);
    Console.Write(MotionRepaint.Write(stood, moved, alone.Version, MarkRows.Load));
    return 0;
}

if (args is ["tally", var picture, var shown])
{
    var served = await ServedApp.StartAsync("Field", shown);
    using var one = await Playwright.CreateAsync();
    await using var alone = await BenchBrowser.LaunchAsync(one);
    await using var phone = await BenchBrowser.PhoneAsync(alone);
    var sheet = await phone.NewPageAsync();
    await Task.Delay(TimeSpan.FromSeconds(5));
    var before = await TallyCost.PartsOfACoreAsync(alone);
    await SheetJourney.PlanAsync(sheet, served.Address, picture);
    await SheetJourney.OpenHoleAsync(sheet);
    await Task.Delay(TimeSpan.FromSeconds(20));
    var watch = await phone.NewCDPSessionAsync(sheet);
    await watch.SendAsync("Performance.enable");
    var tasks = await TallyCost.TasksAsync(watch);
    foreach (var (process, part) in await TallyCost.PartsOfACoreAsync(alone))
    {
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{process}: {100 * part:0.0} %, with an empty page {100 * before.GetValueOrDefault(process):0.0} %"));
    }

    foreach (var (task, seconds) in await TallyCost.TasksAsync(watch))
    {
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{task}: {1000 * (seconds - tasks[task]):0} ms"));
    }

    return 0;
}

// A photograph, then name=directory pairs of published wwwroot folders: the yardstick first, Field last.
if (args.Length < 3 || !File.Exists(args[0]) || args[1..].Any(argument => !argument.Contains('=', StringComparison.Ordinal)))
{
    await Console.Error.WriteLineAsync("Give a photograph and published apps as name=directory, the yardstick first and Field last.");
    return 2;
}

var apps = new List<ServedApp>();
foreach (var argument in args[1..])
{
    var cut = argument.IndexOf('=', StringComparison.Ordinal);
    apps.Add(await ServedApp.StartAsync(argument[..cut], argument[(cut + 1)..]));
}

using var playwright = await Playwright.CreateAsync();
await using var browser = await BenchBrowser.LaunchAsync(playwright);
await Console.Error.WriteLineAsync("Cold starts…");
var starts = await ColdStart.MeasureAsync(browser, apps, rounds: 9);

await Console.Error.WriteLineAsync("An empty page…");
await using var context = await BenchBrowser.PhoneAsync(browser);
var page = await context.NewPageAsync();
// What the cold starts left behind settles first.
await Task.Delay(TimeSpan.FromSeconds(20));
var idle = await TallyCost.PartOfACoreAsync(browser);
await Console.Error.WriteLineAsync("Slider…");
await SheetJourney.PlanAsync(page, apps[^1].Address, args[0]);
var repaints = await SliderRepaint.MeasureAsync(page);
await Console.Error.WriteLineAsync("Tally…");
await SheetJourney.OpenHoleAsync(page);
await Task.Delay(TimeSpan.FromSeconds(20));
var tally = await TallyCost.PartOfACoreAsync(browser);
await Console.Error.WriteLineAsync("A year's windows…");
var year = await YearWindows.MedianMillisecondsAsync(page, apps[^1].Address, rounds: 7);
await Console.Error.WriteLineAsync("A strip…");
var strip = await StripFitTime.MedianMillisecondsAsync(page, apps[^1].Address, rounds: 9);

var text = new StringBuilder();
void Line(FormattableString line) => text.AppendLine(line.ToString(CultureInfo.InvariantCulture));
double At(double part) => repaints.Times.Order().ElementAt((int)(part * (repaints.Times.Length - 1)));
var load = MarkRows.Load;
Line($"# Field: measured");
Line($"");
Line($"{DateTime.UtcNow:yyyy-MM-dd}, {RuntimeInformation.OSDescription}, {Environment.ProcessorCount} threads, headless Chromium {browser.Version}.");
Line($"One run of `bench/field`, load average at its end {load}; only ratios mean anything on another machine. Each cold start in a fresh context, apps taking turns.");
Line($"");
Line($"| app | cold start, median (range), ms | ratio (Field ≤ 1.3) | transfer, kB | ratio (Field ≤ 2) |");
Line($"| --- | ---: | ---: | ---: | ---: |");
foreach (var start in starts)
{
    Line($"| {start.Name} | {start.MedianMilliseconds:0} ({start.Milliseconds.Min():0}–{start.Milliseconds.Max():0}) | {start.MedianMilliseconds / starts[0].MedianMilliseconds:0.00} | {start.TransferBytes / 1000.0:0} | {(double)start.TransferBytes / starts[0].TransferBytes:0.00} |");
}

Line($"");
Line($"| what | measured | should be |");
Line($"| --- | ---: | ---: |");
Line($"| a move of the time slider to the {repaints.Width}×{repaints.Height} print on its canvas, median | {At(0.5):0.0} ms | ≤ 50 ms |");
Line($"| the same, nine in ten within | {At(0.9):0.0} ms | |");
Line($"| a place's windows through a year, from the touch to the chart, median | {year:0} ms | ≤ 300 ms |");
Line($"| a strip of twelve patches fitted with covariance, from the touch to the curve and its band drawn, median | {strip:0} ms | ≤ 150 ms |");
Line($"| all of Chromium while the tally runs, part of one core | {100 * tally:0.0} % | |");
Line($"| all of Chromium with an empty page | {100 * idle:0.0} % | |");
Line($"| the tally's own cost | {100 * (tally - idle):0.0} % | < 2 % |");
var marks = new MarkRows($"{Environment.ProcessorCount} threads, headless Chromium {browser.Version}", load);
var (field, empty) = (starts[^1], starts[0]);
marks.Add("field.start", $"median of {field.Milliseconds.Count} in turns", $"{field.MedianMilliseconds:0} ms", $"{empty.MedianMilliseconds:0} ms", $"{field.MedianMilliseconds / empty.MedianMilliseconds:0.00}");
marks.Add("field.transfer", $"bytes over the wire for one cold start", $"{field.TransferBytes / 1000.0:0} kB", $"{empty.TransferBytes / 1000.0:0} kB", $"{(double)field.TransferBytes / empty.TransferBytes:0.00}");
marks.Add("field.slider", $"{repaints.Width}×{repaints.Height} print, median", $"{At(0.5):0.0} ms", $"", $"{At(0.5):0.0} ms");
marks.Add("field.year", $"from the touch to the chart, median", $"{year:0} ms", $"", $"{year:0} ms");
marks.Add("field.tally", $"all of Chromium less the same with an empty page", $"{100 * tally:0.0} %", $"{100 * idle:0.0} %", $"{100 * (tally - idle):0.0} %");
marks.Add("field.strip", $"twelve patches, from the touch to curve and band drawn, median", $"{strip:0} ms", $"", $"{strip:0} ms");
Console.Write(text.Append(marks));
return 0;
