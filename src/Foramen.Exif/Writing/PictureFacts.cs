using Foramen.Engine.Light;
using Foramen.Engine.Quantities;

namespace Foramen.Exif;

/// <summary>What a picture of a print says of how the print was made. What is null is not written.</summary>
public sealed record PictureFacts
{
    /// <summary>What the sheet is called.</summary>
    public string? Title { get; init; }

    /// <summary>How long the hole was open.</summary>
    public Duration? ExposureTime { get; init; }

    /// <summary>f-number of the hole.</summary>
    public FNumber? FNumber { get; init; }

    /// <summary>From hole to paper.</summary>
    public Length? FocalDistance { get; init; }

    /// <summary>When the hole was opened, in local time with its offset.</summary>
    public DateTimeOffset? OpenedAt { get; init; }

    /// <summary>Where; only for those who ask for it.</summary>
    public GeographicPosition? Place { get; init; }
}
