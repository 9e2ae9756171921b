using Foramen.Engine.Quantities;

namespace Foramen.Engine.Exposure;

/// <summary>What hides, or shows, something that passes. A way that is null does not exist: it would take too long, too small a hole, or cannot be had.</summary>
public sealed record MotionWays
{
    /// <summary>Exposure by the clock from which the same number passing leaves nothing to be seen, with the tones kept as they are.</summary>
    public Duration? TimeToHide { get; init; }

    /// <summary>The hole that takes that time for the same tones.</summary>
    public Length? HoleToHide { get; init; }

    /// <summary>For how long of their passing the hole must be covered, in all, so that what is left is not seen; the clock stops meanwhile.</summary>
    public Duration? CoverHoleFor { get; init; }

    /// <summary>For how long one must stand still before the camera to be seen.</summary>
    public Duration? StandStillToShow { get; init; }

    /// <summary>How many must pass within the exposure to be seen as a band.</summary>
    public int? NumberToShow { get; init; }

    /// <summary>Least flash, over the first visible tone and no less than the one planned, under which it is not seen; null where none up to 1.5 does it or none can be given.</summary>
    public double? FlashFractionToHide { get; init; }
}
