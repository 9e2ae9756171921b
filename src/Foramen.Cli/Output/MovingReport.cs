using Foramen.Engine.Print;

namespace Foramen.Cli.Output;

/// <summary>What is left of one moving region on the sheet.</summary>
internal sealed record MovingReport
{
    public required string Name { get; init; }

    /// <summary>What there would be to see if it stood, as a difference in density on the sheet.</summary>
    public required double StillDifference { get; init; }

    /// <summary>The same with the motion.</summary>
    public required double MovedDifference { get; init; }

    /// <summary>Mean density of the region with the motion, as the sheet is processed.</summary>
    public required double Density { get; init; }

    /// <summary>vanishes, ghost or stays.</summary>
    public required string Verdict { get; init; }

    public static MovingReport Of(string name, RegionTrace trace) => new()
    {
        Name = name,
        StillDifference = trace.Still,
        MovedDifference = trace.Moved,
        Density = trace.Density.Value,
        Verdict = trace.Verdict.ToString().ToLowerInvariant(),
    };
}
