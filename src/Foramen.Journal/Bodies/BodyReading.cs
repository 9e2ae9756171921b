namespace Foramen.Journal.Bodies;

/// <summary>What came of reading a body.</summary>
/// <param name="Body">The body; null if it was not understood.</param>
/// <param name="Complaint">Why a body of a known kind and version could not be read, in one sentence; null otherwise.</param>
public sealed record BodyReading(EntryBody? Body, string? Complaint)
{
    /// <summary>A kind or version that this version does not know: kept, passed on, not acted upon.</summary>
    public static BodyReading Unknown { get; } = new(null, null);

    /// <summary>Whether the kind or the version is not known here.</summary>
    public bool IsUnknown => Body is null && Complaint is null;
}
