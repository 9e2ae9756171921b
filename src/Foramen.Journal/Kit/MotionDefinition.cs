namespace Foramen.Journal.Kit;

/// <summary>
/// A moving region of a photograph as it is written down: where, how, and when it is expected to move. In a <c>motion.marked</c> entry and in a file for the prompt. The
/// Engine's rooms Scene and Print say what the values mean and check their ranges.
/// </summary>
public sealed record MotionDefinition
{
    /// <summary>What moves, in the photographer's words.</summary>
    public required string Name { get; init; }

    /// <summary>
    /// <c>turns</c> (a wheel in the region's ellipse), <c>passes</c> (things cross it that the photograph does not show), <c>goesAway</c> (what the photograph shows is
    /// gone while it moves), <c>sways</c>, <c>flows</c> or <c>lamp</c> (a lamp goes along its middle).
    /// </summary>
    public required string How { get; init; }

    /// <summary>Left edge, as a part of the photograph's width from the left, 0 to 1.</summary>
    public required double Left { get; init; }

    /// <summary>Upper edge, as a part of the photograph's height from the top, 0 to 1.</summary>
    public required double Top { get; init; }

    /// <summary>Width, as a part of the photograph's.</summary>
    public required double Width { get; init; }

    /// <summary>Height, as a part of the photograph's.</summary>
    public required double Height { get; init; }

    /// <summary>Turns: time of one turn, s.</summary>
    public double? TurnSeconds { get; init; }

    /// <summary>Turns: against the clock; with it where missing.</summary>
    public bool? Anticlockwise { get; init; }

    /// <summary>Sways: how far to each side, as a part of the region's width.</summary>
    public double? ReachOfWidth { get; init; }

    /// <summary>Sways: time of one swing to and fro, s.</summary>
    public double? SwingSeconds { get; init; }

    /// <summary>Flows: time to drift through the region, s.</summary>
    public double? CrossingSeconds { get; init; }

    /// <summary>Flows: up or down instead of across.</summary>
    public bool? Upright { get; init; }

    /// <summary>Passes: width of one along its way, m.</summary>
    public double? WidthMetres { get; init; }

    /// <summary>Passes and lamp: speed across the line of sight, m/s.</summary>
    public double? SpeedMetresPerSecond { get; init; }

    /// <summary>Passes and lamp: distance, m.</summary>
    public double? DistanceMetres { get; init; }

    /// <summary>Passes: luminance over the background's.</summary>
    public double? LuminanceRatio { get; init; }

    /// <summary>Passes and lamp: how many; one where missing.</summary>
    public int? Number { get; init; }

    /// <summary>Lamp: light towards the camera, cd.</summary>
    public double? Candelas { get; init; }

    /// <summary>Part of the exposure after which it is expected to begin, 0 to 1; from the start where missing.</summary>
    public double? MovesFrom { get; init; }

    /// <summary>Part of the exposure after which it is expected to stop, 0 to 1; never where missing.</summary>
    public double? MovesTo { get; init; }
}
