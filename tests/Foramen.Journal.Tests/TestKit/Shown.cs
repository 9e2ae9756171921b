using System.Text.Json;
using Foramen.Journal.Bodies;
using Foramen.Journal.Entries;
using Foramen.Journal.Fold;

namespace Foramen.Journal.Tests.TestKit;

/// <summary>All public state as text, so that two states can be compared and their difference read.</summary>
internal static class Shown
{
    private static readonly JsonSerializerOptions Options = new() { WriteIndented = true };

    public static string Ledger(Ledger ledger) => JsonSerializer.Serialize(
        new
        {
            ledger.Cameras,
            ledger.Papers,
            ledger.Places,
            ledger.Outings,
            ledger.Sheets,
            Bottles = ledger.Bottles.All.Select(Bottle),
            ledger.Kits,
            ledger.Masks,
            ledger.Strips,
            ledger.VoidCount,
            ledger.Unused,
            NotUnderstood = ledger.NotUnderstood.Select(pair => $"{pair.Key.Kind} {pair.Key.Version}: {pair.Value}").Order(StringComparer.Ordinal),
            Tallies = ledger.Sheets.All.Select(sheet => sheet.TallyAt(Make.Noon.AddHours(5))),
            Set = Set(ledger.Entries),
        },
        Options);

    private static object Bottle(Bottle bottle) => new
    {
        bottle.Id,
        bottle.Mixed,
        bottle.Discarded,
        Happenings = bottle.Happenings.Select(happening => $"{happening.Order.Id} {happening.At:O} {BodyJson.Write(happening.Said)}"),
    };

    public static string Set(EntrySet set) => JsonSerializer.Serialize(
        new
        {
            InOrder = set.InOrder.Select(item => (item.Order.EffectiveUnixMilliseconds, item.Entry.Hash).ToString()),
            All = set.All.Select(entry => entry.Hash).Order(StringComparer.Ordinal),
            Conflicts = set.Conflicts.Select(conflict => conflict.Sentence + string.Concat(conflict.Entries.Select(entry => entry.Hash))),
        },
        Options);
}
