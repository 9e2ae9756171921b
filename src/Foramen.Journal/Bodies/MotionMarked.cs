using Foramen.Journal.Kit;

namespace Foramen.Journal.Bodies;

/// <summary>A region of the sheet's photograph was marked as moving. The same region marked again replaces what was said.</summary>
public sealed record MotionMarked() : SheetBody(EntryKind.MotionMarked)
{
    /// <summary>The moving region.</summary>
    public required Ulid Motion { get; init; }

    /// <summary>Where and how.</summary>
    public required MotionDefinition Definition { get; init; }

    /// <inheritdoc/>
    public override void Check() => KitCheck.Motion(Definition);
}
