using Foramen.Journal.Kit;

namespace Foramen.Journal.Bodies;

/// <summary>A camera was described. The same camera described again is its next version; earlier sheets keep the version they were made with.</summary>
public sealed record CameraDefined() : EntryBody(EntryKind.CameraDefined)
{
    /// <summary>The camera, the same in all its versions.</summary>
    public required Ulid Camera { get; init; }

    /// <summary>The description.</summary>
    public required CameraDefinition Definition { get; init; }

    /// <inheritdoc/>
    public override void Check()
    {
        KitCheck.Camera(Definition);
    }
}
