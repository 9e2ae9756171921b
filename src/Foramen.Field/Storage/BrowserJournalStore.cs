using System.Globalization;
using System.Runtime.InteropServices.JavaScript;
using System.Runtime.Versioning;
using System.Text.Json;

namespace Foramen.Field.Storage;

/// <summary>The journal in IndexedDB, by wwwroot/js/journal-store.js.</summary>
[SupportedOSPlatform("browser")]
internal sealed partial class BrowserJournalStore : IJournalStore
{
    private const string Module = "journal-store";

    private Task? loading;

    public event Action? AppendedElsewhere;

    public async Task<StoredJournal> OpenAsync(string newDevice)
    {
        await Load();
        return Everything(await Open(newDevice));
    }

    public async Task<StoredJournal> ReadAfterAsync(long position)
    {
        await Load();
        return Journal(StoreAnswer.Of(await ReadAfter(position)));
    }

    public async Task<long?> AppendAsync(long firstSequence, IReadOnlyList<string> lines, string origin = "")
    {
        await Load();
        var answer = StoreAnswer.Of(await Append(firstSequence, string.Join('\n', lines), origin));
        return answer.IsBehind ? null : answer.Positions![^1];
    }

    public async Task<string> ReadNoteAsync(string name)
    {
        await Load();
        return await ReadNote(name);
    }

    public async Task KeepNoteAsync(string name, string text)
    {
        await Load();
        StoreAnswer.Of(await KeepNote(name, text));
    }

    public async Task<StoreHealth> HealthAsync()
    {
        await Load();
        return Health(await ReadHealth());
    }

    public async Task<StoreHealth> PersistAsync()
    {
        await Load();
        return Health(await Persist());
    }

    private static StoredJournal Journal(StoreAnswer answer) => new(answer.Device ?? "", answer.Sequence, answer.Lines ?? []);

    private static StoredJournal Everything(string text)
    {
        var end = text.IndexOf('\n');
        var answer = StoreAnswer.Of(end < 0 ? text : text[..end]);
        var lines = new List<StoredLine>();
        while (end >= 0)
        {
            var start = end + 1;
            end = text.IndexOf('\n', start);
            var line = end < 0 ? text.AsSpan(start) : text.AsSpan(start, end - start);
            var first = line.IndexOf('\t');
            var second = first + 1 + line[(first + 1)..].IndexOf('\t');
            lines.Add(new StoredLine(
                long.Parse(line[..first], NumberStyles.None, CultureInfo.InvariantCulture), line[(second + 1)..].ToString(), line[(first + 1)..second].ToString()));
        }

        return new StoredJournal(answer.Device ?? "", answer.Sequence, lines);
    }

    private static StoreHealth Health(string json) => JsonSerializer.Deserialize(json, StoreJson.Default.StoreHealth)!;

    private Task Load() => loading ??= LoadModule();

    private async Task LoadModule()
    {
        await JSHost.ImportAsync(Module, "../js/journal-store.js");
        OnForeignAppend(() => AppendedElsewhere?.Invoke());
    }

    [JSImport("open", Module)]
    private static partial Task<string> Open(string newDevice);

    [JSImport("readAfter", Module)]
    private static partial Task<string> ReadAfter([JSMarshalAs<JSType.Number>] long position);

    [JSImport("append", Module)]
    private static partial Task<string> Append([JSMarshalAs<JSType.Number>] long firstSequence, string lines, string origin);

    [JSImport("readNote", Module)]
    private static partial Task<string> ReadNote(string name);

    [JSImport("keepNote", Module)]
    private static partial Task<string> KeepNote(string name, string text);

    [JSImport("health", Module)]
    private static partial Task<string> ReadHealth();

    [JSImport("persist", Module)]
    private static partial Task<string> Persist();

    [JSImport("onForeignAppend", Module)]
    private static partial void OnForeignAppend([JSMarshalAs<JSType.Function>] Action callback);
}
