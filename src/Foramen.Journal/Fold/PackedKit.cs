using System.Collections.Immutable;
using Foramen.Journal.Bodies;
using Foramen.Journal.Entries;

namespace Foramen.Journal.Fold;

/// <summary>A packing list and what of it is packed.</summary>
public sealed record PackedKit
{
    /// <summary>The kit's id.</summary>
    public required Ulid Id { get; init; }

    /// <summary>The list; null if that entry has not arrived yet, or was withdrawn.</summary>
    public Stamped<KitPlanned>? Planned { get; init; }

    /// <summary>Lines that are packed, from 0.</summary>
    public ImmutableSortedSet<int> Packed { get; init; } = [];

    /// <summary>Lines still to pack.</summary>
    public int Left => Planned is { } planned ? planned.Body.Lines.Count - Packed.Count(line => line < planned.Body.Lines.Count) : 0;

    internal PackedKit After(EntryOrder order, DateTimeOffset at, EntryBody body) => body switch
    {
        KitPlanned said => this with { Planned = new(order, at, said), Packed = [] },
        KitPacked said => this with { Packed = said.Packed ? Packed.Add(said.Line) : Packed.Remove(said.Line) },
        _ => this,
    };
}
