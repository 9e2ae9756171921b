namespace Foramen.Journal.Kit;

/// <summary>Moving regions in a file for the prompt.</summary>
public sealed record MotionFile
{
    /// <summary>The regions; the next lies over the one before.</summary>
    public required IReadOnlyList<MotionDefinition> Moving { get; init; }
}
