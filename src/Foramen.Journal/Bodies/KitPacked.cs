using Foramen.Engine.Quantities;

namespace Foramen.Journal.Bodies;

/// <summary>A line of a packing list was checked off, or taken out again.</summary>
public sealed record KitPacked() : EntryBody(EntryKind.KitPacked)
{
    /// <summary>The kit.</summary>
    public required Ulid Kit { get; init; }

    /// <summary>Which line, from 0.</summary>
    public required int Line { get; init; }

    /// <summary>Whether it is packed.</summary>
    public required bool Packed { get; init; }

    /// <inheritdoc/>
    public override void Check()
    {
        Guard.Within(Line, 0, 199, "the line");
    }
}
