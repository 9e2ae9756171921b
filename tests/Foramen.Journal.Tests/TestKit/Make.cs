using System.Buffers.Binary;
using Foramen.Journal.Bodies;
using Foramen.Journal.Entries;

namespace Foramen.Journal.Tests.TestKit;

/// <summary>Short ways to ids, devices, instants and entries.</summary>
internal static class Make
{
    public static readonly DateTimeOffset Noon = new(2026, 5, 3, 12, 0, 0, TimeSpan.FromHours(2));
    public static readonly DeviceId Phone = DeviceId.Parse("phone");
    public static readonly DeviceId Desk = DeviceId.Parse("desk");

    public static Ulid Id(int number)
    {
        var chance = new byte[Ulid.ChanceBytes];
        BinaryPrimitives.WriteInt32BigEndian(chance.AsSpan(6), number);
        return Ulid.From(Noon, chance);
    }

    public static Entry By(DeviceId device, int sequence, double secondsAfterNoon, EntryBody body, int? id = null)
        => Entry.Create(Id(id ?? ((device == Phone ? 0 : 100_000) + sequence)), device, sequence, Noon.AddSeconds(secondsAfterNoon), body);

    /// <summary>Entries of one phone, each at so many seconds after noon.</summary>
    public static Entry[] Phoned(params (double Seconds, EntryBody Body)[] said)
        => [.. said.Select((one, i) => By(Phone, i + 1, one.Seconds, one.Body))];
}
