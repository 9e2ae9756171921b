using Foramen.Journal;
using Foramen.Journal.Bodies;
using Foramen.Journal.Entries;
using Foramen.Journal.Exchange;

namespace Foramen.Cli.Tests.Verbs;

public sealed class JournalVerbTests : IDisposable
{
    private readonly DirectoryInfo directory = Directory.CreateTempSubdirectory("foramen-journal-");

    public void Dispose() => directory.Delete(recursive: true);

    [Fact]
    public async Task A_journal_goes_in_is_backed_up_restored_elsewhere_and_verified_all_the_way()
    {
        var (data, restored, backup) = (At("home"), At("elsewhere"), At("backup"));
        var entries = JournalFile.Read(await File.ReadAllBytesAsync(DemoJournal, TestContext.Current.CancellationToken)).Entries.Count;
        var imported = (await PromptRun.OfAsync("journal", "import", DemoJournal, "--data", data, "--json")).Json("journal-import");
        Assert.Equal(entries, (int)imported["files"]![0]!["taken"]!);
        var saved = (await PromptRun.OfAsync("journal", "backup", backup, "--data", data, "--json")).Json("journal");
        Assert.Equal(entries, (int)saved["entries"]!);
        Assert.Equal((string)saved["sha256"]!, (string)(await PromptRun.OfAsync("journal", "verify", backup, "--json")).Json("journal")["sha256"]!);
        Assert.Equal((string)saved["sha256"]!, (string)(await PromptRun.OfAsync("journal", "restore", backup, "--data", restored, "--json")).Json("journal")["sha256"]!);
        Assert.Equal((string)saved["sha256"]!, (string)(await PromptRun.OfAsync("journal", "verify", "--data", restored, "--json")).Json("journal")["sha256"]!);
        (await PromptRun.OfAsync("journal", "restore", backup, "--data", restored)).IsRefused("holds a journal already");
        (await PromptRun.OfAsync("journal", "backup", backup, "--data", data)).IsRefused("is there already");
    }

    [Fact]
    public async Task A_damaged_file_is_said_with_its_line_and_exit_code_2()
    {
        var file = At("damaged.foramen.jsonl");
        var text = await File.ReadAllTextAsync(DemoJournal, TestContext.Current.CancellationToken);
        await File.WriteAllTextAsync(file, text.Replace("canal basin", "canal basim", StringComparison.OrdinalIgnoreCase), TestContext.Current.CancellationToken);
        var run = await PromptRun.OfAsync("journal", "verify", file);
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("does not match its hash", run.Errors, StringComparison.Ordinal);
        Assert.Contains("damaged", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_file_for_sharing_says_that_places_were_left_out()
    {
        var file = At("shared.foramen.jsonl");
        var read = JournalFile.Read(await File.ReadAllBytesAsync(DemoJournal, TestContext.Current.CancellationToken));
        await File.WriteAllBytesAsync(file, JournalFile.Write(read.Entries, withoutPlaces: true), TestContext.Current.CancellationToken);
        var run = await PromptRun.OfAsync("journal", "verify", file);
        Assert.Equal(0, run.ExitCode);
        Assert.Contains("Places were left out", run.Errors, StringComparison.Ordinal);
        Assert.DoesNotContain("Places were left out", (await PromptRun.OfAsync("journal", "verify", DemoJournal)).Errors, StringComparison.Ordinal);
    }

    // An installation that was copied goes on with the same numbers: nothing is damaged, all is kept, and it is said.
    [Fact]
    public async Task A_number_used_twice_is_said_and_is_no_damage()
    {
        var file = At("copied.foramen.jsonl");
        var phone = DeviceId.Parse("phone");
        Entry Opened(string id) => Entry.Create(
            Ulid.Parse(id), phone, 7, new DateTimeOffset(2026, 5, 9, 9, 0, 0, TimeSpan.Zero), new HoleOpened { Sheet = Ulid.Parse("01KR6150E0H3X0TXCZGHDMFG24") });
        await File.WriteAllBytesAsync(
            file, JournalFile.Write([Opened("01KR6150E0H3X0TXCZGHDMFG01"), Opened("01KR6150E0H3X0TXCZGHDMFG02")]), TestContext.Current.CancellationToken);
        var run = await PromptRun.OfAsync("journal", "verify", file);
        Assert.Equal(0, run.ExitCode);
        Assert.Contains("Device phone used its number 7 more than once", run.Errors, StringComparison.Ordinal);
        Assert.Contains("2 entries", run.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("There is no file", "journal", "verify", "/nowhere/at-all")]
    [InlineData("There is no journal at", "journal", "verify", "--data", "/tmp/foramen-nothing-here")]
    [InlineData("There is no file", "journal", "import", "/nowhere/at-all", "--data", "/tmp/foramen-nothing-here-2")]
    [InlineData("is no backup", "journal", "restore", "/tmp", "--data", "/tmp/foramen-nothing-here-3")]
    public async Task What_cannot_be_is_refused_in_a_sentence(string sentence, params string[] arguments)
        => (await PromptRun.OfAsync(arguments)).IsRefused(sentence);

    private static string DemoJournal => Path.Combine(AppContext.BaseDirectory, "demo", "canal-basin.foramen.jsonl");

    private string At(string name) => Path.Combine(directory.FullName, name);
}
