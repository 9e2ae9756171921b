using System.Collections.Immutable;
using Foramen.Journal.Bodies;
using Foramen.Journal.Entries;
using Foramen.Journal.Kit;

namespace Foramen.Journal.Fold;

/// <summary>
/// All that the journal says, folded from its entries in their one order: kit, places, outings, sheets. A function of the set of entries alone, however
/// they arrived. Immutable.
/// </summary>
public sealed class Ledger
{
    private const int AnewFrom = 100;

    private ILookup<Ulid, Sheet>? byOuting;
    private Dictionary<Ulid, int>? numbers;

    internal Ledger(EntrySet entries) => Entries = entries;

    /// <summary>A ledger of no entries.</summary>
    public static Ledger Empty { get; } = new(EntrySet.Empty);

    /// <summary>The entries it was folded from.</summary>
    public EntrySet Entries { get; }

    /// <summary>Cameras.</summary>
    public Shelf<KitItem<CameraDefinition>> Cameras { get; internal init; } = Shelf<KitItem<CameraDefinition>>.Empty;

    /// <summary>Boxes of paper.</summary>
    public Shelf<KitItem<PaperDefinition>> Papers { get; internal init; } = Shelf<KitItem<PaperDefinition>>.Empty;

    /// <summary>Places, each as last described.</summary>
    public Shelf<Stamped<PlaceDefined>> Places { get; internal init; } = Shelf<Stamped<PlaceDefined>>.Empty;

    /// <summary>Outings, also withdrawn ones.</summary>
    public Shelf<Outing> Outings { get; internal init; } = Shelf<Outing>.Empty;

    /// <summary>Sheets, also withdrawn ones.</summary>
    public Shelf<Sheet> Sheets { get; internal init; } = Shelf<Sheet>.Empty;

    /// <summary>Bottles of developer and fixer, also those given up and those of which the mixing is not known.</summary>
    public Shelf<Bottle> Bottles { get; internal init; } = Shelf<Bottle>.Empty;

    /// <summary>Packing lists.</summary>
    public Shelf<PackedKit> Kits { get; internal init; } = Shelf<PackedKit>.Empty;

    /// <summary>Masks, each as last described.</summary>
    public Shelf<Stamped<MaskDefined>> Masks { get; internal init; } = Shelf<Stamped<MaskDefined>>.Empty;

    /// <summary>Test strips.</summary>
    public Shelf<StripRecord> Strips { get; internal init; } = Shelf<StripRecord>.Empty;

    /// <summary>Entries that are void.</summary>
    public int VoidCount { get; internal init; }

    /// <summary>How many entries there are of each kind or version that this version does not know. They are kept and passed on.</summary>
    public ImmutableDictionary<KindVersion, int> NotUnderstood { get; internal init; } = ImmutableDictionary<KindVersion, int>.Empty;

    /// <summary>Entries of known kinds that have no effect because of what they say. They are kept and passed on.</summary>
    public ImmutableList<UnusedEntry> Unused { get; internal init; } = [];

    internal EntryOrder? Last { get; init; }

    /// <summary>Targets of voidings, whether they have arrived or not.</summary>
    internal ImmutableHashSet<Ulid> Voided { get; init; } = [];

    /// <summary>Amendments that are not void, by target, in order.</summary>
    internal ImmutableDictionary<Ulid, ImmutableList<Entry>> Amendments { get; init; } = ImmutableDictionary<Ulid, ImmutableList<Entry>>.Empty;

    /// <summary>The ledger of a set of entries.</summary>
    public static Ledger Of(EntrySet entries)
    {
        var builder = new LedgerBuilder(Empty);
        builder.FoldAll(entries);
        return builder.ToLedger(entries);
    }

    /// <summary>
    /// This ledger and more entries. Entries that go at the end (a device's next, not before what is here, not about an older entry) are folded in one
    /// by one; anything else folds all anew. The result is the same.
    /// </summary>
    public Ledger With(params IEnumerable<Entry> entries)
    {
        var more = entries as IReadOnlyCollection<Entry> ?? [.. entries];
        if (more.Count > AnewFrom && more.Count * 4L > Entries.Count)
        {
            // A whole file at once: one by one, its entries would each make a set of their own.
            var whole = Entries.Union(more);
            return ReferenceEquals(whole, Entries) ? this : Of(whole);
        }

        var set = Entries;
        var builder = new LedgerBuilder(this);
        var anew = false;
        foreach (var entry in more)
        {
            var order = anew ? null : set.OrderAtEnd(entry, builder.Last);
            var next = set.With(entry);
            if (ReferenceEquals(next, set))
            {
                continue;
            }

            set = next;
            anew = anew || order is null || !builder.TryAppend(new OrderedEntry(order.Value, entry), set);
        }

        return ReferenceEquals(set, Entries) ? this : anew ? Of(set) : builder.ToLedger(set);
    }

    /// <summary>The camera of a sheet in the version that held when it was started; null where none was said or it is not known here.</summary>
    public Stamped<CameraDefinition>? CameraOf(Sheet sheet)
        => sheet.Started is { Body.Camera: { } camera } started ? Cameras.Find(camera)?.At(started.Order) : null;

    /// <summary>The paper of a sheet in the version that held when it was started; null where none was said or it is not known here.</summary>
    public Stamped<PaperDefinition>? PaperOf(Sheet sheet)
        => sheet.Started is { Body.Paper: { } paper } started ? Papers.Find(paper)?.At(started.Order) : null;

    /// <summary>The sheets of an outing that were not withdrawn.</summary>
    public IEnumerable<Sheet> SheetsOf(Ulid outing)
        => (byOuting ??= Sheets.All.Where(sheet => sheet.Started?.Body.Outing is not null).ToLookup(sheet => sheet.Started!.Body.Outing!.Value))[outing];

    /// <summary>A sheet's number, from 1, among all that are not somebody else's, in the order in which the journal first speaks of them; of somebody else's sheet that of the one before it.</summary>
    public int NumberOf(Ulid sheet)
    {
        if (numbers is null)
        {
            var known = new Dictionary<Ulid, int>(Sheets.Count);
            var number = 0;
            foreach (var one in Sheets.All)
            {
                number += one.IsAnothers ? 0 : 1;
                known[one.Id] = number;
            }

            numbers = known;
        }

        return numbers.GetValueOrDefault(sheet, numbers.Count + 1);
    }
}
