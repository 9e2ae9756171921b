using System.Collections.Immutable;
using Foramen.Journal.Bodies;
using Foramen.Journal.Entries;

namespace Foramen.Journal.Fold;

/// <summary>One bottle of developer or fixer and all that happened to it. What that made of it is worked out by <c>Foramen.Journal.Bottles</c>.</summary>
public sealed record Bottle
{
    /// <summary>Its id.</summary>
    public required Ulid Id { get; init; }

    /// <summary>How it was mixed; null if that entry has not arrived yet, or was withdrawn: then nothing can be said of it.</summary>
    public Stamped<BottleMixed>? Mixed { get; init; }

    /// <summary>What happened to it since, in the journal's order.</summary>
    public ImmutableList<BottleHappening> Happenings { get; init; } = [];

    /// <summary>How it was given up; null while it is in use.</summary>
    public Stamped<BottleDiscarded>? Discarded { get; init; }

    /// <summary>Whether it can be used: mixed and not given up.</summary>
    public bool InUse => Mixed is not null && Discarded is null;

    internal Bottle After(EntryOrder order, DateTimeOffset at, EntryBody body) => body switch
    {
        BottleMixed said => this with { Mixed = new(order, at, said) },
        BottleDiscarded said => this with { Discarded = new(order, at, said) },
        _ => this with { Happenings = Happenings.Add(new BottleHappening(order, at, body)) },
    };

    internal Bottle Without(EntryOrder order) => this with { Happenings = Happenings.RemoveAll(happening => happening.Order == order) };
}
