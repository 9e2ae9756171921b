namespace Foramen.Cli.Output;

/// <summary>What <c>foramen scan --json</c> says.</summary>
internal sealed record ScanReport
{
    /// <summary>Files written.</summary>
    public required IReadOnlyList<string> Files { get; init; }

    /// <summary>Corners of the sheet on the picture, x and y in pixels, clockwise from the upper left.</summary>
    public required IReadOnlyList<IReadOnlyList<double>> Corners { get; init; }

    /// <summary>Quarter turns that bring the finished picture upright.</summary>
    public required int QuarterTurns { get; init; }

    /// <summary>Whether left and right had to change places.</summary>
    public required bool Mirrored { get; init; }

    /// <summary>Correlation with the predicted print, 0 to 1.</summary>
    public required double Agreement { get; init; }

    /// <summary>How far the camera was aimed to the right of the plan, degrees.</summary>
    public required double AimedRightDegrees { get; init; }

    /// <summary>How far the camera was aimed above the plan, degrees.</summary>
    public required double AimedUpDegrees { get; init; }

    /// <summary>The middle difference from the predicted print, stops; positive is lighter.</summary>
    public double? MedianOffStops { get; init; }

    /// <summary>Part of what can be told that is within half a stop.</summary>
    public required double WithinHalfStop { get; init; }

    /// <summary>Spread of the softness beyond the predicted one, mm; null where there is none, or where it cannot be told.</summary>
    public double? ExtraSpreadMm { get; init; }

    public required IReadOnlyList<ScanToneReport> Tones { get; init; }

    public required IReadOnlyList<string> Doubts { get; init; }
}
