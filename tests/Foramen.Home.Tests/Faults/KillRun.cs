using System.Collections.Concurrent;
using Foramen.Journal.Sync;
using Foramen.Storage;

namespace Foramen.Home.Tests.Faults;

/// <summary>
/// Home is killed again and again while devices send; the ledger of what was acknowledged is kept here, outside. No kill drops the operating system's cache:
/// this shows survival of a crash of Home, not of a power cut.
/// </summary>
internal static class KillRun
{
    private const int Devices = 4;
    private const int BatchEntries = 20;

    /// <summary>Kills so many times and compares in the end.</summary>
    /// <param name="dll">The built Home.</param>
    /// <param name="arguments">How it is started.</param>
    /// <param name="settings">Its store, to be read once it is dead for good.</param>
    /// <param name="kills">How many times.</param>
    /// <param name="seed">Of the moments.</param>
    public static async Task<KillResult> RunAsync(string dll, string[] arguments, StoreSettings settings, int kills, int seed)
    {
        var random = new Random(seed);
        var acknowledged = new ConcurrentDictionary<string, bool>();
        var attempted = new ConcurrentDictionary<string, int>();
        var batches = 0;
        var next = new int[Devices];
        var done = 0;
        while (done < kills)
        {
            using var home = await HomeChild.StartAsync(dll, arguments);
            using var client = new HttpClient { BaseAddress = new Uri(home.Address) };
            var link = new HttpSyncHome(client);
            using var stop = new CancellationTokenSource();
            var writers = Enumerable.Range(0, Devices).Select(device => WriteAsync(device)).ToArray();
            // Each kill at its own moment: before the first acknowledgement of this run, or some way after a later one.
            var (until, before) = (random.Next(0, 12), acknowledged.Count);
            while (acknowledged.Count < before + (until * BatchEntries))
            {
                await Task.Delay(1);
            }

            await Task.Delay(random.Next(0, 30));
            await home.KillAsync();
            done++;
            await stop.CancelAsync();
            await Task.WhenAll(writers);

            async Task WriteAsync(int device)
            {
                while (!stop.IsCancellationRequested)
                {
                    var batch = Interlocked.Increment(ref batches);
                    var entries = Enumerable.Range(next[device] + 1, BatchEntries).Select(i => Writing.Entry($"dev{device}", i)).ToList();
                    entries.ForEach(entry => attempted[entry.Hash] = batch);
                    // Never sent twice: what was not acknowledged may be there or not, but whole.
                    next[device] += BatchEntries;
                    try
                    {
                        await link.PushAsync(SyncBatch.Write([.. entries.Select(Writing.Line)]), CancellationToken.None);
                        entries.ForEach(entry => acknowledged[entry.Hash] = true);
                    }
                    catch (HomeRefusedException)
                    {
                        return;
                    }
                }
            }
        }

        await using var store = await JournalStore.OpenAsync(settings);
        var corrupt = 0;
        try
        {
            await store.VerifyAsync();
        }
        catch (StoreException e) when (e.Trouble == StoreTrouble.Damaged)
        {
            corrupt = 1;
        }

        var present = new HashSet<string>();
        var last = 0L;
        while (await store.ReadAfterAsync(last) is { Count: > 0 } page)
        {
            present.UnionWith(page.Select(stored => Journal.Exchange.EntryLine.Read(stored.Line).Hash));
            last = page[^1].Arrival;
        }

        return new KillResult(
            done, acknowledged.Count, acknowledged.Keys.Count(hash => !present.Contains(hash)),
            attempted.GroupBy(pair => pair.Value).Count(batch => batch.Select(pair => present.Contains(pair.Key)).Distinct().Count() > 1),
            present.Count(hash => !acknowledged.ContainsKey(hash)), present.Count(hash => !attempted.ContainsKey(hash)), corrupt);
    }
}
