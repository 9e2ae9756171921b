using Foramen.Journal.Bodies;
using Foramen.Journal.Entries;

namespace Foramen.Journal.Fold;

/// <summary>A test strip: how it was made and what was read on it, each as last said.</summary>
public sealed record StripRecord
{
    /// <summary>The strip's id.</summary>
    public required Ulid Id { get; init; }

    /// <summary>How it was made; null if that entry has not arrived yet, or was withdrawn.</summary>
    public Stamped<StripMade>? Made { get; init; }

    /// <summary>What was read; null where nothing was yet.</summary>
    public Stamped<StripRead>? Read { get; init; }

    internal StripRecord After(EntryOrder order, DateTimeOffset at, StripBody body) => body switch
    {
        StripMade said => this with { Made = new(order, at, said) },
        StripRead said => this with { Read = new(order, at, said) },
        _ => this,
    };
}
