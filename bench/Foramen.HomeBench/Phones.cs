using System.Diagnostics;
using Foramen.Home.Tests.Faults;
using Foramen.Journal.Sync;

namespace Foramen.HomeBench;

/// <summary>Many phones meet Home at once, each with entries of its own, until all hold the same.</summary>
internal static class Phones
{
    private const int EntriesEach = 20;

    public static async Task<(int Phones, int Failed, double Seconds, bool Same)> MeasureAsync(string homeDll, string[] arguments, int phones)
    {
        using var home = await HomeChild.StartAsync(homeDll, arguments);
        var devices = Enumerable.Range(0, phones).Select(i =>
        {
            var device = new MemoryDevice();
            device.Write(Enumerable.Range(1, EntriesEach).Select(number => Writing.Entry($"p{i:000}", number)));
            return (Device: device, Client: new HttpClient { BaseAddress = new Uri(home.Address), Timeout = TimeSpan.FromMinutes(5) });
        }).ToList();
        var failed = 0;
        var watch = Stopwatch.StartNew();
        for (var round = 0; round < 2; round++)
        {
            await Task.WhenAll(devices.Select(one => Task.Run(async () =>
            {
                try
                {
                    await SyncRound.RunAsync(one.Device, new HttpSyncHome(one.Client));
                }
                catch (HomeRefusedException)
                {
                    Interlocked.Increment(ref failed);
                }
            })));
        }

        var seconds = watch.Elapsed.TotalSeconds;
        devices.ForEach(one => one.Client.Dispose());
        var expected = devices[0].Device.Hashes.ToList();
        return (phones, failed, seconds, expected.Count == phones * EntriesEach && devices.TrueForAll(one => one.Device.Hashes.SequenceEqual(expected)));
    }
}
