namespace Foramen.Cli.Output;

/// <summary>What <c>foramen motion … --json</c> says.</summary>
internal sealed record MotionReport
{
    /// <summary>passing, turning, lamp or trail.</summary>
    public required string Kind { get; init; }

    /// <summary>Exposure by the clock, s.</summary>
    public required double ExposureSeconds { get; init; }

    /// <summary>Part of the exposure during which a point of the background is covered, 0 to 1.</summary>
    public required double CoveredShare { get; init; }

    /// <summary>How far its image goes during the exposure, mm; at most the whole circle for a wheel.</summary>
    public required double ImagePathMm { get; init; }

    /// <summary>Density of the background alone.</summary>
    public required double BackgroundDensity { get; init; }

    /// <summary>Density with what moves.</summary>
    public required double TracedDensity { get; init; }

    /// <summary>Least difference in density taken to be seen.</summary>
    public required double LeastSeenDensity { get; init; }

    /// <summary>vanishes, ghost or stays.</summary>
    public required string Verdict { get; init; }

    /// <summary>Degrees turned through; of the sky for a trail; null for what does not turn.</summary>
    public double? ArcDeg { get; init; }

    /// <summary>Time after which the disc is full, s; null for what does not turn.</summary>
    public double? FullDiscSeconds { get; init; }

    /// <summary>Exposure from which it is not seen, tones kept, s; null where there is none.</summary>
    public double? HiddenFromSeconds { get; init; }

    /// <summary>The hole that takes that time, mm.</summary>
    public double? HidingHoleMm { get; init; }

    /// <summary>How long to cover the hole while it passes, in all, s.</summary>
    public double? CoverHoleSeconds { get; init; }

    /// <summary>How long one must stand still to be seen, s.</summary>
    public double? StandStillSeconds { get; init; }

    /// <summary>How many must pass to be seen.</summary>
    public int? NumberToShow { get; init; }
}
