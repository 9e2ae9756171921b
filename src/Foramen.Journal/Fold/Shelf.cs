using System.Collections.Immutable;

namespace Foramen.Journal.Fold;

/// <summary>Things by id, listed in the order in which the journal first speaks of them. Immutable.</summary>
public sealed class Shelf<T>
    where T : class
{
    private readonly ImmutableDictionary<Ulid, T> things;
    private readonly ImmutableList<Ulid> order;
    private IReadOnlyList<T>? all;

    private Shelf(ImmutableDictionary<Ulid, T> things, ImmutableList<Ulid> order)
    {
        this.things = things;
        this.order = order;
    }

    /// <summary>How many there are.</summary>
    public int Count => things.Count;

    /// <summary>All of them, in that order.</summary>
    public IEnumerable<T> All => all ??= [.. order.Select(id => things[id])];

    internal static Shelf<T> Empty { get; } = new(ImmutableDictionary<Ulid, T>.Empty, []);

    /// <summary>The thing of this id, or null.</summary>
    public T? Find(Ulid id) => things.GetValueOrDefault(id);

    internal Builder ToBuilder() => new(this);

    internal sealed class Builder(Shelf<T> from)
    {
        private readonly ImmutableDictionary<Ulid, T>.Builder things = from.things.ToBuilder();
        private readonly ImmutableList<Ulid>.Builder order = from.order.ToBuilder();
        private bool changed;

        public T? Find(Ulid id) => things.GetValueOrDefault(id);

        public void Put(Ulid id, T thing)
        {
            if (!things.ContainsKey(id))
            {
                order.Add(id);
            }

            things[id] = thing;
            changed = true;
        }

        public Shelf<T> ToShelf() => changed ? new(things.ToImmutable(), order.ToImmutable()) : from;
    }
}
