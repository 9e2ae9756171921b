using System.Buffers.Binary;
using System.Globalization;
using System.Text;
using Foramen.Journal;
using Foramen.Journal.Entries;
using Foramen.Journal.Exchange;
using Foramen.Storage;

namespace Foramen.Home.Tests.Faults;

/// <summary>Entries by the number, all different, of the size of a usual one.</summary>
internal static class Writing
{
    private static readonly DateTimeOffset Noon = new(2026, 5, 3, 12, 0, 0, TimeSpan.FromHours(2));

    public static Entry Entry(string device, int sequence)
    {
        var chance = new byte[Ulid.ChanceBytes];
        var name = Encoding.ASCII.GetBytes(device);
        name.AsSpan(0, Math.Min(6, name.Length)).CopyTo(chance);
        BinaryPrimitives.WriteInt32BigEndian(chance.AsSpan(6), sequence);
        var at = Noon.AddSeconds(sequence);
        return Journal.Entries.Entry.CreateRaw(
            Ulid.From(at, chance), DeviceId.Parse(device), sequence, at, "tone.read", 1,
            string.Create(CultureInfo.InvariantCulture, $$"""{"sheet":"01KQPP9PE0000000000000000R","tone":"01KQPP9PE0000000000000000S","name":"pale concrete {{sequence}}","luminanceCandelasPerSquareMetre":5200,"rendering":"texturedHighlight","sdStops":0.3,"lightKelvin":5500,"source":"photograph"}"""));
    }

    public static IReadOnlyList<ReceivedEntry> Batch(string device, int first, int count) => [.. Enumerable.Range(first, count).Select(i => ReceivedEntry.Of(Entry(device, i)))];

    public static byte[] Line(Entry entry) => Encoding.UTF8.GetBytes(EntryLine.Write(entry));
}
