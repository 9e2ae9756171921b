using Foramen.Engine.Quantities;

namespace Foramen.Engine.Scene;

/// <summary>
/// What a photograph's file says of how it was taken (Exif 2.3, CIPA DC-008). A fact that is missing or absurd is null;
/// <see cref="Doubts"/> says, in sentences for the user, what was set aside and why.
/// </summary>
public sealed record PhotographFacts
{
    /// <summary>Exposure time (tag ExposureTime, else from ShutterSpeedValue by APEX).</summary>
    public Duration? ExposureTime { get; init; }

    /// <summary>f-number (tag FNumber, else from ApertureValue by APEX).</summary>
    public FNumber? FNumber { get; init; }

    /// <summary>Sensitivity the camera worked at (PhotographicSensitivity and its kin).</summary>
    public CameraSpeed? Speed { get; init; }

    /// <summary>Brightness of the scene by APEX, Bv, as the camera's own meter saw it; for comparison only.</summary>
    public double? BrightnessValue { get; init; }

    /// <summary>Focal length in terms of 36 × 24 mm (tag FocalLengthIn35mmFilm), mm.</summary>
    public Length? FocalLength35mm { get; init; }

    /// <summary>Colour space as tagged.</summary>
    public PhotographColour Colour { get; init; }

    /// <summary>The Exif orientation code, 1 to 8; 1 where missing.</summary>
    public int Orientation { get; init; } = 1;

    /// <summary>When it was taken by the camera's clock (tag DateTimeOriginal), without a zone.</summary>
    public DateTime? TakenLocal { get; init; }

    /// <summary>What was set aside, in sentences for the user. Empty when all is well.</summary>
    public IReadOnlyList<string> Doubts { get; init; } = [];

    /// <summary>Whether time, f-number and sensitivity are all known, so that codes can be turned into luminance.</summary>
    public bool HasExposure => ExposureTime is not null && FNumber is not null && Speed is not null;
}
