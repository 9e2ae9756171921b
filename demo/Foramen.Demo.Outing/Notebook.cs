using System.Security.Cryptography;
using System.Text;
using Foramen.Journal;
using Foramen.Journal.Bodies;
using Foramen.Journal.Entries;
using Foramen.Journal.Fold;

namespace Foramen.Demo.Outing;

/// <summary>A device that writes entries down, with a clock that only moves when told to and ids drawn from names: the same journal every time.</summary>
internal sealed class Notebook(DeviceId device, DateTimeOffset now)
{
    private readonly List<Entry> entries = [];

    public DateTimeOffset Now { get; private set; } = now;

    public IReadOnlyList<Entry> Entries => entries;

    public Ledger Ledger => Ledger.Of(EntrySet.Of(entries));

    public void Wait(double seconds) => Now = Now.AddSeconds(seconds);

    public void WaitUntil(int hour, int minute) => Now = new DateTimeOffset(Now.Date.AddHours(hour).AddMinutes(minute), Now.Offset);

    public Ulid Name(string thing) => Ulid.From(Now, SHA256.HashData(Encoding.UTF8.GetBytes(thing)).AsSpan(0, Ulid.ChanceBytes));

    public Entry Write(EntryBody body)
    {
        var entry = Entry.Create(Name($"{device} {entries.Count}"), device, entries.Count + 1, Now, body);
        entries.Add(entry);
        return entry;
    }
}
