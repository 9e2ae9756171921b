using System.Diagnostics;
using Foramen.Home.Tests.Faults;
using Foramen.Storage;

namespace Foramen.HomeBench;

/// <summary>A journal that grows to a million entries: what it costs to write it, and how long Home takes from its start to its first page.</summary>
internal static class Growth
{
    private const int Batch = 1_000;

    public static async Task<IReadOnlyList<GrowthPoint>> MeasureAsync(string homeDll, string data, IReadOnlyList<int> sizes)
    {
        var points = new List<GrowthPoint>();
        var store = await JournalStore.OpenAsync(StoreSettings.Sqlite(Path.Combine(data, "journal.sqlite")));
        var (written, took) = (0, 0.0);
        foreach (var size in sizes)
        {
            for (; written < size; written += Batch)
            {
                var work = Writing.Batch("phone", written + 1, Batch);
                var watch = Stopwatch.StartNew();
                await store.AppendAsync(work);
                took += watch.Elapsed.TotalSeconds;
            }

            // Home opens it by itself.
            await store.DisposeAsync();
            var starts = new List<double>();
            for (var i = 0; i < 3; i++)
            {
                starts.Add(await FirstPageAsync(homeDll, data));
            }

            store = await JournalStore.OpenAsync(StoreSettings.Sqlite(Path.Combine(data, "journal.sqlite")));
            var all = Stopwatch.StartNew();
            var last = 0L;
            while (await store.ReadAfterAsync(last) is { Count: > 0 } page)
            {
                last = page[^1].Arrival;
            }

            points.Add(new GrowthPoint(size, took, starts.Max(), all.Elapsed.TotalSeconds));
        }

        await store.DisposeAsync();
        return points;
    }

    private static async Task<double> FirstPageAsync(string homeDll, string data)
    {
        var watch = Stopwatch.StartNew();
        using var home = await HomeChild.StartAsync(homeDll, "--data", data);
        using var client = new HttpClient { BaseAddress = new Uri(home.Address) };
        await client.GetByteArrayAsync("/");
        await client.GetByteArrayAsync("/api/entries?epoch=&after=");
        return watch.Elapsed.TotalSeconds;
    }
}
