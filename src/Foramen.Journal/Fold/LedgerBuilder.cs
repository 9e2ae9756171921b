using System.Collections.Immutable;
using Foramen.Journal.Bodies;
using Foramen.Journal.Entries;
using Foramen.Journal.Kit;

namespace Foramen.Journal.Fold;

/// <summary>The fold. One and the same step, whether from nothing or onto an existing ledger.</summary>
internal sealed class LedgerBuilder(Ledger from)
{
    private readonly Shelf<KitItem<CameraDefinition>>.Builder cameras = from.Cameras.ToBuilder();
    private readonly Shelf<KitItem<PaperDefinition>>.Builder papers = from.Papers.ToBuilder();
    private readonly Shelf<Stamped<PlaceDefined>>.Builder places = from.Places.ToBuilder();
    private readonly Shelf<Outing>.Builder outings = from.Outings.ToBuilder();
    private readonly Shelf<Sheet>.Builder sheets = from.Sheets.ToBuilder();
    private readonly Shelf<Bottle>.Builder bottles = from.Bottles.ToBuilder();
    private readonly Shelf<PackedKit>.Builder kits = from.Kits.ToBuilder();
    private readonly Shelf<Stamped<MaskDefined>>.Builder masks = from.Masks.ToBuilder();
    private readonly Shelf<StripRecord>.Builder strips = from.Strips.ToBuilder();
    private readonly ImmutableDictionary<KindVersion, int>.Builder notUnderstood = from.NotUnderstood.ToBuilder();
    private readonly ImmutableList<UnusedEntry>.Builder unused = from.Unused.ToBuilder();
    private readonly ImmutableHashSet<Ulid>.Builder voided = from.Voided.ToBuilder();
    private readonly ImmutableDictionary<Ulid, ImmutableList<Entry>>.Builder amendments = from.Amendments.ToBuilder();
    private int voidCount = from.VoidCount;

    public EntryOrder? Last { get; private set; } = from.Last;

    /// <summary>Folds a whole set into an empty builder.</summary>
    public void FoldAll(EntrySet entries)
    {
        // What voids and amends may stand before what it is about (clocks differ), so it is gathered first: voidings, then live amendments.
        foreach (var (_, entry) in entries.InOrder)
        {
            if (entry.Kind == EntryKind.EntryVoided)
            {
                Gather(entry);
            }
        }

        foreach (var (_, entry) in entries.InOrder)
        {
            if (entry.Kind == EntryKind.EntryAmended)
            {
                Gather(entry);
            }
        }

        foreach (var item in entries.InOrder)
        {
            Step(item, entries);
        }
    }

    /// <summary>Folds one more entry that stands at the end; false if that would change what earlier entries mean.</summary>
    public bool TryAppend(OrderedEntry item, EntrySet entries)
    {
        var entry = item.Entry;
        if (IsAboutEntries(entry))
        {
            var target = TargetOf(entry);
            var spokenOf = voided.Contains(entry.Id) || amendments.ContainsKey(entry.Id);
            if (spokenOf || (target is { } id && entries.Find(id) is not null))
            {
                return false;
            }

            Gather(entry);
        }

        Step(item, entries);
        return true;
    }

    public Ledger ToLedger(EntrySet entries) => new(entries)
    {
        Cameras = cameras.ToShelf(),
        Papers = papers.ToShelf(),
        Places = places.ToShelf(),
        Outings = outings.ToShelf(),
        Sheets = sheets.ToShelf(),
        Bottles = bottles.ToShelf(),
        Kits = kits.ToShelf(),
        Masks = masks.ToShelf(),
        Strips = strips.ToShelf(),
        VoidCount = voidCount,
        NotUnderstood = notUnderstood.ToImmutable(),
        Unused = unused.ToImmutable(),
        Last = Last,
        Voided = voided.ToImmutable(),
        Amendments = amendments.ToImmutable(),
    };

    private static bool IsAboutEntries(Entry entry) => entry.Kind is EntryKind.EntryVoided or EntryKind.EntryAmended;

    private static Ulid? TargetOf(Entry entry) => entry.ReadBody().Body switch
    {
        EntryVoided said => said.Entry,
        EntryAmended said => said.Entry,
        _ => null,
    };

    private bool IsVoid(Entry entry) => entry.Kind != EntryKind.EntryVoided && voided.Contains(entry.Id);

    private void Gather(Entry entry)
    {
        switch (entry.ReadBody().Body)
        {
            case EntryVoided said:
                voided.Add(said.Entry);
                break;
            case EntryAmended said when !IsVoid(entry):
                amendments[said.Entry] = (amendments.GetValueOrDefault(said.Entry) ?? []).Add(entry);
                break;
        }
    }

    private void Step(OrderedEntry item, EntrySet entries)
    {
        var (order, entry) = item;
        Last = order;
        if (IsVoid(entry))
        {
            voidCount++;
            if (Effective(entry).Body is { } withdrawn)
            {
                Withdraw(withdrawn);
            }

            return;
        }

        if (IsAboutEntries(entry) && TargetOf(entry) is { } target && entries.Find(target) is { } about)
        {
            if (about.Kind == EntryKind.EntryVoided || (about.Kind == EntryKind.EntryAmended && entry.Kind == EntryKind.EntryAmended))
            {
                unused.Add(new UnusedEntry(entry.Id, "A voiding cannot be voided or amended, nor an amendment amended; say it again instead."));
            }

            return;
        }

        var reading = Effective(entry);
        if (reading.IsUnknown)
        {
            var kind = new KindVersion(entry.Kind, entry.Version);
            notUnderstood[kind] = notUnderstood.GetValueOrDefault(kind) + 1;
        }
        else if (reading.Complaint is { } complaint)
        {
            unused.Add(new UnusedEntry(entry.Id, complaint));
        }
        else
        {
            Take(order, entry.At, reading.Body!);
        }
    }

    /// <summary>What an entry says, the last readable amendment included.</summary>
    private BodyReading Effective(Entry entry)
    {
        var reading = entry.ReadBody();
        if (IsAboutEntries(entry) || !amendments.TryGetValue(entry.Id, out var amending))
        {
            return reading;
        }

        foreach (var amendment in amending)
        {
            var body = ((EntryAmended)amendment.ReadBody().Body!).Body.GetRawText();
            var amended = BodyJson.Read(entry.Kind, entry.Version, body);
            if (amended.Complaint is { } complaint)
            {
                unused.Add(new UnusedEntry(amendment.Id, complaint));
            }
            else if (amended.Body is not null)
            {
                reading = amended;
            }
        }

        return reading;
    }

    private void Withdraw(EntryBody body)
    {
        switch (body)
        {
            case SheetStarted said:
                sheets.Put(said.Sheet, SheetOf(said.Sheet) with { StartVoided = true });
                break;
            case OutingStarted said when outings.Find(said.Outing) is null:
                outings.Put(said.Outing, new Outing { Id = said.Outing });
                break;
        }
    }

    private void Take(EntryOrder order, DateTimeOffset at, EntryBody body)
    {
        switch (body)
        {
            case CameraDefined said:
                cameras.Put(said.Camera, Version(cameras.Find(said.Camera), said.Camera, new(order, at, said.Definition)));
                break;
            case HoleMeasured said:
                Measure(order, at, said.Camera, camera => camera.WithHole(said.DiameterMillimetres, said.DiameterSdMillimetres));
                break;
            case ChamberMeasured said:
                Measure(order, at, said.Camera, camera => camera.WithChamber(said.FocalDistanceMillimetres, said.FocalDistanceSdMillimetres));
                break;
            case MaskDefined said:
                masks.Put(said.Mask, new(order, at, said));
                break;
            case PaperDefined said:
                papers.Put(said.Paper, Version(papers.Find(said.Paper), said.Paper, new(order, at, said.Definition)));
                break;
            case PlaceDefined said:
                places.Put(said.Place, new(order, at, said));
                break;
            case OutingStarted said:
                outings.Put(said.Outing, new Outing { Id = said.Outing, Started = new(order, at, said) });
                break;
            case BottleBody said:
                bottles.Put(said.Bottle, BottleOf(said.Bottle).After(order, at, said));
                break;
            case KitPlanned said:
                kits.Put(said.Kit, KitOf(said.Kit).After(order, at, said));
                break;
            case KitPacked said:
                kits.Put(said.Kit, KitOf(said.Kit).After(order, at, said));
                break;
            case StripBody said:
                strips.Put(said.Strip, StripOf(said.Strip).After(order, at, said));
                break;
            case DevelopedIn said:
                MoveTo(said.Bottle, SheetOf(said.Sheet).Developed is { } earlier ? (earlier.Body.Bottle, earlier.Order) : null);
                break;
            case FixedIn said:
                MoveTo(said.Bottle, SheetOf(said.Sheet).Fixed is { } before ? (before.Body.Bottle, before.Order) : null);
                break;
        }

        if (body is SheetBody ofSheet)
        {
            sheets.Put(ofSheet.Sheet, SheetOf(ofSheet.Sheet).After(order, at, ofSheet));
        }

        // A sheet goes through one bottle of a kind: what is said last counts.
        void MoveTo(Ulid bottle, (Ulid Bottle, EntryOrder Order)? from)
        {
            if (from is { } earlier)
            {
                bottles.Put(earlier.Bottle, BottleOf(earlier.Bottle).Without(earlier.Order));
            }

            bottles.Put(bottle, BottleOf(bottle).After(order, at, body));
        }
    }

    // What is measured makes the next version of a camera that is known by then.
    private void Measure(EntryOrder order, DateTimeOffset at, Ulid id, Func<CameraDefinition, CameraDefinition> measured)
    {
        if (cameras.Find(id) is { } known)
        {
            cameras.Put(id, Version(known, id, new(order, at, measured(known.Current.Body))));
        }
        else
        {
            unused.Add(new UnusedEntry(order.Id, "Something was measured of a camera that is not described before; describe it first."));
        }
    }

    private Bottle BottleOf(Ulid id) => bottles.Find(id) ?? new Bottle { Id = id };

    private PackedKit KitOf(Ulid id) => kits.Find(id) ?? new PackedKit { Id = id };

    private StripRecord StripOf(Ulid id) => strips.Find(id) ?? new StripRecord { Id = id };

    private Sheet SheetOf(Ulid id) => sheets.Find(id) ?? new Sheet { Id = id };

    private static KitItem<T> Version<T>(KitItem<T>? known, Ulid id, Stamped<T> version)
        => known is null ? new KitItem<T>(id, [version]) : known with { Versions = known.Versions.Add(version) };
}
