using System.Collections.Immutable;
using Foramen.Journal.Entries;

namespace Foramen.Journal.Fold;

/// <summary>A camera or a box of paper in all its versions, oldest first; there is always one.</summary>
public sealed record KitItem<T>(Ulid Id, ImmutableList<Stamped<T>> Versions)
{
    /// <summary>The newest version.</summary>
    public Stamped<T> Current => Versions[^1];

    /// <summary>The version that held at a point of the journal; the first one for what happened before it was described.</summary>
    public Stamped<T> At(EntryOrder order) => Versions.FindLast(version => version.Order <= order) ?? Versions[0];
}
