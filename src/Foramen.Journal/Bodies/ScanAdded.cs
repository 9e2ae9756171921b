namespace Foramen.Journal.Bodies;

/// <summary>A scan or a photograph of the print was added. The picture itself is kept beside the journal, under its hash.</summary>
public sealed record ScanAdded() : SheetBody(EntryKind.ScanAdded)
{
    /// <summary>SHA-256 of the file, 64 lower-case hexadecimal digits.</summary>
    public required string ContentHash { get; init; }

    /// <summary>Width as stored, pixels.</summary>
    public required int WidthPixels { get; init; }

    /// <summary>Height as stored, pixels.</summary>
    public required int HeightPixels { get; init; }

    /// <summary>Media type, such as <c>image/png</c>.</summary>
    public required string MediaType { get; init; }

    /// <summary>Size of the file, bytes.</summary>
    public long? ByteCount { get; init; }

    /// <summary>Resolution, dots an inch, where it is a scan.</summary>
    public double? DotsPerInch { get; init; }

    /// <inheritdoc/>
    public override void Check()
    {
        BodyCheck.Picture(ContentHash, WidthPixels, HeightPixels, MediaType, ByteCount);
        BodyCheck.Optional(DotsPerInch, 1, 100_000, "the resolution", "dots an inch");
    }
}
