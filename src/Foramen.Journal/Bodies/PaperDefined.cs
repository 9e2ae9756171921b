using Foramen.Engine.Quantities;
using Foramen.Journal.Kit;

namespace Foramen.Journal.Bodies;

/// <summary>A box of paper was described. The same box described again is its next version; earlier sheets keep the version they were made with.</summary>
public sealed record PaperDefined() : EntryBody(EntryKind.PaperDefined)
{
    /// <summary>The box, the same in all its versions.</summary>
    public required Ulid Paper { get; init; }

    /// <summary>The description.</summary>
    public required PaperDefinition Definition { get; init; }

    /// <summary>The strips that the description was fitted to; null where it comes from elsewhere.</summary>
    public IReadOnlyList<Ulid>? Strips { get; init; }

    /// <inheritdoc/>
    public override void Check()
    {
        KitCheck.Paper(Definition);
        Guard.Within(Strips?.Count ?? 0, 0, 100, "the number of strips behind a description");
    }
}
