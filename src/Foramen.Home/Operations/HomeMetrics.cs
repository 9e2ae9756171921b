using System.Diagnostics.Metrics;
using Foramen.Storage;

namespace Foramen.Home.Operations;

/// <summary>What Home counts. Names no person, device or place.</summary>
internal sealed class HomeMetrics
{
    public const string MeterName = "Foramen.Home";

    private readonly Counter<long> taken;
    private readonly Counter<long> known;
    private readonly Counter<long> given;
    private readonly Counter<long> batches;

    public HomeMetrics(IMeterFactory meters)
    {
        var meter = meters.Create(MeterName);
        taken = meter.CreateCounter<long>("foramen.entries.taken", "{entry}", "Entries that were new and are committed.");
        known = meter.CreateCounter<long>("foramen.entries.known", "{entry}", "Entries that were sent again.");
        given = meter.CreateCounter<long>("foramen.entries.given", "{entry}", "Entries given to devices.");
        batches = meter.CreateCounter<long>("foramen.batches", "{batch}", "Batches committed.");
    }

    public void Appended(Appended appended)
    {
        taken.Add(appended.Taken);
        known.Add(appended.Known);
        batches.Add(1);
    }

    public void Given(int entries) => given.Add(entries);
}
