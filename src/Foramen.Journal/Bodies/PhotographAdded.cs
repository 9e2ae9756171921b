namespace Foramen.Journal.Bodies;

/// <summary>A photograph of the subject was added to a sheet; the last one counts. The picture itself is kept beside the journal, under its hash.</summary>
public sealed record PhotographAdded() : SheetBody(EntryKind.PhotographAdded)
{
    /// <summary>SHA-256 of the file, 64 lower-case hexadecimal digits.</summary>
    public required string ContentHash { get; init; }

    /// <summary>Width as stored, pixels.</summary>
    public required int WidthPixels { get; init; }

    /// <summary>Height as stored, pixels.</summary>
    public required int HeightPixels { get; init; }

    /// <summary>Media type, such as <c>image/jpeg</c>.</summary>
    public required string MediaType { get; init; }

    /// <summary>Size of the file, bytes.</summary>
    public long? ByteCount { get; init; }

    /// <summary>What the file says of how it was taken.</summary>
    public PhotographedHow? Facts { get; init; }

    /// <inheritdoc/>
    public override void Check()
    {
        BodyCheck.Picture(ContentHash, WidthPixels, HeightPixels, MediaType, ByteCount);
        Facts?.Check();
    }
}
