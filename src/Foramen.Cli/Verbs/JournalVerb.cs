using System.CommandLine;
using System.Globalization;
using Foramen.Cli.Options;
using Foramen.Cli.Output;
using Foramen.Engine.Quantities;
using Foramen.Journal.Entries;
using Foramen.Journal.Exchange;
using Foramen.Storage;
using Foramen.Storage.Backups;
using Foramen.Storage.Pictures;

namespace Foramen.Cli.Verbs;

/// <summary><c>foramen journal</c>: back up, restore, verify and take in the journal that Home keeps.</summary>
internal static class JournalVerb
{
    private const string StoreFile = "journal.sqlite";
    private const string PostgresVariable = "FORAMEN_POSTGRES";

    public static Command Create(Page page)
    {
        var data = new Option<string?>("--data") { Description = "The folder in which Home keeps journal and pictures; its usual one where nothing is said.", HelpName = "FOLDER" };
        var postgres = new Option<string?>("--postgres") { Description = $"The PostgreSQL database that holds the journal. Better said in the environment, as {PostgresVariable}: it may hold a password.", HelpName = "CONNECTION" };
        var json = CommonOptions.Json();
        var verb = new Command(
            "journal",
            """
            Looks after the journal that Home keeps. Every command reads back what it wrote.

            Try:
              foramen journal verify demo/canal-basin.foramen.jsonl
              foramen journal backup my-backup --data artifacts/home
            """)
        {
            Backup(page, data, postgres, json), Restore(page, data, postgres, json), Verify(page, data, postgres, json), Import(page, data, postgres, json),
        };
        return verb;
    }

    private static Command Backup(Page page, Option<string?> data, Option<string?> postgres, Option<bool> json)
    {
        var folder = new Argument<string>("folder") { Description = "A new folder for the backup." };
        var verb = new Command("backup", "Writes journal and pictures into a new folder and reads them back. Home may go on meanwhile.") { folder, data, postgres, json };
        verb.SetAction(async (parsed, cancellation) =>
        {
            var place = Place.Of(parsed.GetValue(data), parsed.GetValue(postgres));
            await using var store = await OpenAsync(place, mustExist: true, cancellation);
            var list = await Understood(() => JournalBackup.WriteAsync(store, place.Pictures(), parsed.GetRequiredValue(folder), cancellation));
            return Say(page, parsed.GetValue(json), "backup", list.Entries, list.Pictures.Count, list.Sha256, $"Backed up {Count(list.Entries, list.Pictures.Count)} to {parsed.GetRequiredValue(folder)} and read back.");
        });
        return verb;
    }

    private static Command Restore(Page page, Option<string?> data, Option<string?> postgres, Option<bool> json)
    {
        var folder = new Argument<string>("folder") { Description = "The backup." };
        var verb = new Command("restore", "Puts a backup into an empty place and reads it back. If it is stopped, run it again. Home must not run.") { folder, data, postgres, json };
        verb.SetAction(async (parsed, cancellation) =>
        {
            var place = Place.Of(parsed.GetValue(data), parsed.GetValue(postgres));
            var list = await Understood(() => JournalBackup.RestoreAsync(parsed.GetRequiredValue(folder), place.Store, place.Pictures(), cancellation));
            return Say(page, parsed.GetValue(json), "restore", list.Entries, list.Pictures.Count, list.Sha256, $"Restored {Count(list.Entries, list.Pictures.Count)} and read back. Paired devices must be paired anew.");
        });
        return verb;
    }

    private static Command Verify(Page page, Option<string?> data, Option<string?> postgres, Option<bool> json)
    {
        var what = new Argument<string?>("what") { Description = "A journal file or a backup; Home's own store where nothing is said.", Arity = ArgumentArity.ZeroOrOne };
        var verb = new Command("verify", "Reads every entry, checks it against its hash, and says what is damaged.") { what, data, postgres, json };
        verb.SetAction(async (parsed, cancellation) =>
        {
            var asJson = parsed.GetValue(json);
            if (parsed.GetValue(what) is not { } path)
            {
                var place = Place.Of(parsed.GetValue(data), parsed.GetValue(postgres));
                await using var store = await OpenAsync(place, mustExist: true, cancellation);
                var digest = await Understood(() => store.VerifyAsync(cancellation));
                var pictures = place.Pictures();
                var kept = pictures?.All.ToList() ?? [];
                foreach (var hash in kept)
                {
                    if (!await pictures!.IsIntactAsync(hash, cancellation))
                    {
                        throw new RefusalException($"The picture {hash} is damaged; put it back from a backup.");
                    }
                }

                return Say(page, asJson, "verify", digest.Entries, kept.Count, digest.Sha256, $"{Count(digest.Entries, kept.Count)}, all whole.");
            }

            if (Directory.Exists(path))
            {
                var list = await Understood(() => JournalBackup.VerifyAsync(path, cancellation));
                return Say(page, asJson, "verify", list.Entries, list.Pictures.Count, list.Sha256, $"{Count(list.Entries, list.Pictures.Count)}, all whole.");
            }

            return VerifyFile(page, asJson, path);
        });
        return verb;
    }

    private static Command Import(Page page, Option<string?> data, Option<string?> postgres, Option<bool> json)
    {
        var what = new Argument<string>("what") { Description = "A journal file, or a folder with some." };
        var verb = new Command("import", "Takes journal files into Home's journal: what is new of them. Home may go on meanwhile.") { what, data, postgres, json };
        verb.SetAction(async (parsed, cancellation) =>
        {
            var place = Place.Of(parsed.GetValue(data), parsed.GetValue(postgres));
            var from = parsed.GetRequiredValue(what);
            // Before a store is made for nothing.
            FolderImport.FilesOf(from);
            await using var store = await OpenAsync(place, mustExist: false, cancellation);
            var files = await Understood(() => FolderImport.RunAsync(store, from, cancellation));
            var report = new JournalImportReport([.. files.Select(one => new JournalImportedFile(one.File, one.Taken, one.Known, one.Bad, one.Complaint))]);
            page.Show(parsed.GetValue(json), report, ReportJson.Default.JournalImportReport, () => Write(page, report));
            return files.All(file => file.Complaint is null) ? 0 : Prompt.RefusedExitCode;
        });
        return verb;
    }

    private static void Write(Page page, JournalImportReport report)
    {
        foreach (var file in report.Files)
        {
            page.Line(string.Create(CultureInfo.CurrentCulture, $"{file.File}: {file.Taken} new, {file.Known} known, {file.Bad} damaged lines."));
            if (file.Complaint is { } complaint)
            {
                page.Note($"{file.File}: {complaint}");
            }
        }
    }

    private static int VerifyFile(Page page, bool json, string path)
    {
        if (!File.Exists(path))
        {
            throw new RefusalException($"There is no file or folder {path}.");
        }

        var read = JournalFile.Read(File.ReadAllBytes(path));
        var whole = read.BadLineCount == 0;
        foreach (var bad in read.BadLines)
        {
            page.Note(string.Create(CultureInfo.CurrentCulture, $"{path}, line {bad.Number}: {bad.Sentence}"));
        }

        if (read.WithoutPlaces)
        {
            page.Note("Places were left out when this file was written.");
        }

        foreach (var conflict in EntrySet.Of(read.Entries).Conflicts)
        {
            page.Note(conflict.Sentence);
        }

        Say(page, json, "verify", read.Entries.Count, 0, null, whole ? $"{Count(read.Entries.Count, 0)}, all whole." : $"{Count(read.Entries.Count, 0)} are whole; {read.BadLineCount} lines are damaged.");
        return whole ? 0 : Prompt.RefusedExitCode;
    }

    private static int Say(Page page, bool json, string command, long entries, int pictures, string? sha256, string sentence)
        => page.Show(json, new JournalReport(command, entries, pictures, sha256), ReportJson.Default.JournalReport, () => page.Line(sentence));

    private static string Count(long entries, int pictures) => string.Create(
        CultureInfo.CurrentCulture, $"{entries} {(entries == 1 ? "entry" : "entries")} and {pictures} {(pictures == 1 ? "picture" : "pictures")}");

    private static Task<JournalStore> OpenAsync(Place place, bool mustExist, CancellationToken cancellation)
        => mustExist && place.Store.SqliteFile is { } file && !File.Exists(file)
            ? throw new RefusalException($"There is no journal at {file}; name Home's folder with --data.")
            : Understood(() => JournalStore.OpenAsync(place.Store, cancellation: cancellation));

    private static async Task<T> Understood<T>(Func<Task<T>> work)
    {
        try
        {
            return await work();
        }
        catch (StoreException e)
        {
            throw new RefusalException(e.Message, e);
        }
    }

    /// <summary>Where Home keeps things.</summary>
    private sealed record Place(StoreSettings Store, string Folder)
    {
        public static Place Of(string? data, string? postgres)
        {
            var folder = data ?? Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData), "foramen");
            var connection = postgres ?? Environment.GetEnvironmentVariable(PostgresVariable);
            return new Place(connection is { Length: > 0 } ? StoreSettings.Postgres(connection) : StoreSettings.Sqlite(Path.Combine(folder, StoreFile)), folder);
        }

        public PictureStore? Pictures() => new(Path.Combine(Folder, "pictures"), DateTimeOffset.UtcNow);
    }
}
