using Foramen.Journal.Kit;

namespace Foramen.Journal.Bodies;

/// <summary>A mask was described. The same mask described again replaces the description.</summary>
public sealed record MaskDefined() : EntryBody(EntryKind.MaskDefined)
{
    /// <summary>The mask.</summary>
    public required Ulid Mask { get; init; }

    /// <summary>The camera it was made for; any where missing.</summary>
    public Ulid? Camera { get; init; }

    /// <summary>The description.</summary>
    public required MaskDefinition Definition { get; init; }

    /// <inheritdoc/>
    public override void Check() => KitCheck.Mask(Definition);
}
