using Foramen.Engine.Camera;

namespace Foramen.Cli.Output;

/// <summary>A rear mark.</summary>
internal sealed record MarkReport
{
    public required MarkFace Face { get; init; }

    /// <summary>What the line over the front mark points at.</summary>
    public required string Shows { get; init; }

    /// <summary>Where it points from the hole's axis, to the right or upwards, degrees.</summary>
    public required double DirectionDeg { get; init; }

    /// <summary>Where the rear mark goes from straight behind the front mark, to the right or upwards, mm.</summary>
    public required double RearMm { get; init; }
}
