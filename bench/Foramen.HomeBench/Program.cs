using System.Globalization;
using System.Runtime.InteropServices;
using System.Text;
using Foramen.Home.Tests.Faults;
using Foramen.HomeBench;
using Foramen.Storage;

// The repository's root; then, to make it shorter, how many kills and how many entries.
if (args.Length is < 1 or > 3 || !Directory.Exists(Path.Combine(args[0], "src")))
{
    await Console.Error.WriteLineAsync("Give the repository's root, and if you like the number of kills and of entries.");
    return 2;
}

var root = args[0];
var kills = args.Length > 1 ? int.Parse(args[1], CultureInfo.InvariantCulture) : 200;
var most = args.Length > 2 ? int.Parse(args[2], CultureInfo.InvariantCulture) : 1_000_000;
string Built(string project) => Path.Combine(root, project, "bin", "Release", "net10.0", Path.GetFileName(project) + ".dll");
var home = Built("src/Foramen.Home");
var homeTests = Built("tests/Foramen.Home.Tests");
var folder = Directory.CreateTempSubdirectory("foramen-bench-").FullName;
var text = new StringBuilder();
void Line(FormattableString line) => text.AppendLine(line.ToString(CultureInfo.InvariantCulture));
static string Load() => MarkRows.Load;
var loadBefore = Load();

await Console.Error.WriteLineAsync("Appends…");
var appends = new List<(int Batch, double OursPerSecond, double RawPerSecond, double Ratio)>();
foreach (var (batch, batches) in new[] { (1, 200), (20, 100), (200, 40), (1_000, 10) })
{
    appends.Add(await AppendRatio.MeasureAsync(folder, batch, batches));
}

await Console.Error.WriteLineAsync("Growth…");
var growth = await Growth.MeasureAsync(home, Path.Combine(folder, "growth"), [most / 100, most / 10, most]);
await Console.Error.WriteLineAsync("Phones…");
var onSqlite = await Phones.MeasureAsync(home, ["--data", Path.Combine(folder, "phones")], 200);
await Console.Error.WriteLineAsync("PostgreSQL…");
await using var postgres = await PostgresServer.StartAsync();
var onPostgres = await Phones.MeasureAsync(home, ["--data", Path.Combine(folder, "phones-pg"), "--postgres", await postgres.NewDatabaseAsync()], 200);
await Console.Error.WriteLineAsync("Kills…");
var killData = Path.Combine(folder, "killed");
var killed = await KillRun.RunAsync(home, ["--data", killData], StoreSettings.Sqlite(Path.Combine(killData, "journal.sqlite")), kills, seed: 1);
var killBase = await postgres.NewDatabaseAsync();
var killedPostgres = await KillRun.RunAsync(home, ["--data", killData, "--postgres", killBase], StoreSettings.Postgres(killBase), Math.Max(1, kills / 4), seed: 2);
await Console.Error.WriteLineAsync("Other faults…");
var others = new List<(string What, int Total, int Failed)>();
foreach (var (what, dll, filters) in new (string, string, string[])[]
         {
             ("connection cut at every byte of a batch, of an answer, of an acknowledgement; SQLite and PostgreSQL", homeTests, ["-class", "*CutConnectionTests"]),
             ("disk full, database locked, damaged file", homeTests, ["-class", "*SqliteStoreTests"]),
             ("PostgreSQL restarted in the middle, lock held, unsafe settings", homeTests, ["-class", "*PostgresStoreTests"]),
             ("hostile requests: other sites, forged, oversize, packed, nested, paths, guessed codes", homeTests, ["-class", "*GateTests"]),
             ("pictures: cut, damaged, scripts, wrong names", homeTests, ["-class", "*PictureTests"]),
             ("backup and restore, damaged at many bytes, stopped half-way", homeTests, ["-class", "*BackupTests"]),
             ("10,000 random schedules of five devices, clocks days apart, Home put back", Built("tests/Foramen.Journal.Tests"), ["-class", "*SyncScheduleTests"]),
             ("journal importer: every prefix, every changed byte, mutations", Built("tests/Foramen.Journal.Tests"), ["-class", "*JournalFileTests"]),
         })
{
    var (total, failed) = await TestRun.RunAsync(dll, filters);
    others.Add((what, total, failed));
}

double Exponent(Func<GrowthPoint, double> of) => Math.Log(of(growth[^1]) / of(growth[0])) / Math.Log((double)growth[^1].Entries / growth[0].Entries);
Line($"# Home: measured");
Line($"");
Line($"{DateTime.UtcNow:yyyy-MM-dd}, {RuntimeInformation.OSDescription}, {Environment.ProcessorCount} threads. One run of `bench/home`; load average {loadBefore} at its start, {Load()} at its end.");
Line($"Only ratios mean anything on another machine. Kills end the process, not the machine: they say nothing of power cuts.");
Line($"");
Line($"| appends in batches of | entries a second | bare SQLite, same rows and flushes | ratio (≥ 0.7) |");
Line($"| ---: | ---: | ---: | ---: |");
foreach (var one in appends)
{
    Line($"| {one.Batch} | {one.OursPerSecond:0} | {one.RawPerSecond:0} | {one.Ratio:0.00} |");
}

Line($"");
Line($"| entries | to write all, s | start of Home to its first pages, worst of 3, s (< 3) | to read all, s |");
Line($"| ---: | ---: | ---: | ---: |");
foreach (var point in growth)
{
    Line($"| {point.Entries} | {point.WriteSeconds:0.00} | {point.FirstPageSeconds:0.00} | {point.ReadSeconds:0.00} |");
}

Line($"");
Line($"Growth exponents from {growth[0].Entries} to {growth[^1].Entries} (≤ 1.1): writing {Exponent(point => point.WriteSeconds):0.00}, reading {Exponent(point => point.ReadSeconds):0.00}.");
Line($"");
Line($"| at once | phones | failed meetings (0) | until all hold the same, s | the same everywhere |");
Line($"| --- | ---: | ---: | ---: | --- |");
Line($"| SQLite | {onSqlite.Phones} | {onSqlite.Failed} | {onSqlite.Seconds:0.0} | {(onSqlite.Same ? "yes" : "NO")} |");
Line($"| PostgreSQL | {onPostgres.Phones} | {onPostgres.Failed} | {onPostgres.Seconds:0.0} | {(onPostgres.Same ? "yes" : "NO")} |");
Line($"");
Line($"| kill -9 of Home while 4 devices send | kills | acknowledged | lost (0) | torn batches (0) | unexpected (0) | corrupt (0) | there without acknowledgement |");
Line($"| --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: |");
Line($"| SQLite | {killed.Kills} | {killed.Acknowledged} | {killed.Lost} | {killed.Torn} | {killed.Unexpected} | {killed.Corrupt} | {killed.Recovered} |");
Line($"| PostgreSQL | {killedPostgres.Kills} | {killedPostgres.Acknowledged} | {killedPostgres.Lost} | {killedPostgres.Torn} | {killedPostgres.Unexpected} | {killedPostgres.Corrupt} | {killedPostgres.Recovered} |");
Line($"");
Line($"None of {killed.Kills} says: fewer than about {300.0 / killed.Kills:0.#} % (95 %), not never.");
Line($"");
Line($"| other faults, by the tests as they are | tests | failed (0) |");
Line($"| --- | ---: | ---: |");
foreach (var (what, total, failed) in others)
{
    Line($"| {what} | {total} | {failed} |");
}

var marks = new MarkRows(MarkRows.Machine, Load());
foreach (var one in appends)
{
    marks.Add("home.append", $"batches of {one.Batch}", $"{one.OursPerSecond:0} entries/s", $"{one.RawPerSecond:0} entries/s", $"{one.Ratio:0.00}");
}

marks.Add("home.start", $"{growth[^1].Entries} entries, worst of 3", $"{growth[^1].FirstPageSeconds:0.00} s", $"", $"{growth[^1].FirstPageSeconds:0.00} s");
marks.Add("home.phones", $"{onSqlite.Phones} phones, SQLite", $"", $"", $"{onSqlite.Failed}");
marks.Add("home.phones", $"{onPostgres.Phones} phones, PostgreSQL", $"", $"", $"{onPostgres.Failed}");
marks.Add("home.growth", $"writing, {growth[0].Entries} to {growth[^1].Entries} entries", $"", $"", $"{Exponent(point => point.WriteSeconds):0.00}");
marks.Add("home.growth", $"reading, {growth[0].Entries} to {growth[^1].Entries} entries", $"", $"", $"{Exponent(point => point.ReadSeconds):0.00}");
text.Append(marks);
Directory.Delete(folder, recursive: true);
Console.Write(text);
return killed.Lost + killed.Torn + killed.Corrupt + killedPostgres.Lost + onSqlite.Failed + onPostgres.Failed + others.Sum(one => one.Failed) == 0 ? 0 : 1;
