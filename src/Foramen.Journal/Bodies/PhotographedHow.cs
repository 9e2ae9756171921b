using System.Text.Json.Serialization;

namespace Foramen.Journal.Bodies;

/// <summary>What a photograph's file says of how it was taken (Exif). Missing facts are null.</summary>
public sealed record PhotographedHow
{
    /// <summary>Exposure time, s.</summary>
    public double? ExposureSeconds { get; init; }

    /// <summary>f-number.</summary>
    public double? FNumber { get; init; }

    /// <summary>ISO sensitivity.</summary>
    public double? IsoSpeed { get; init; }

    /// <summary>APEX brightness value, as the camera metered it.</summary>
    public double? BrightnessValue { get; init; }

    /// <summary>Focal length in terms of 36 × 24 mm, mm.</summary>
    [JsonPropertyName("focalLength35Mm")]
    public double? FocalLength35Millimetres { get; init; }

    /// <summary>Colour space as tagged.</summary>
    public string? ColourSpace { get; init; }

    /// <summary>Exif orientation code, 1 to 8.</summary>
    public int? Orientation { get; init; }

    /// <summary>When, by the camera's clock, without a zone: <c>2026-05-03T14:05:09</c>.</summary>
    public string? TakenLocal { get; init; }

    /// <summary>Latitude, degrees, north positive. Removed from exports without places.</summary>
    public double? LatitudeDegrees { get; init; }

    /// <summary>Longitude, degrees, east positive. Removed from exports without places.</summary>
    public double? LongitudeDegrees { get; init; }

    internal void Check()
    {
        BodyCheck.Optional(ExposureSeconds, 1e-6, BodyCheck.DaySeconds, "the photograph's exposure time", "s");
        BodyCheck.Optional(FNumber, 0.5, 1000, "the photograph's f-number");
        BodyCheck.Optional(IsoSpeed, 0.1, 1e7, "the photograph's sensitivity");
        BodyCheck.Optional(BrightnessValue, -30, 30, "the photograph's brightness value");
        BodyCheck.Optional(FocalLength35Millimetres, 1, 10_000, "the photograph's focal length", "mm");
        BodyCheck.Name(ColourSpace, "the colour space");
        BodyCheck.Optional(Orientation, 1, 8, "the orientation code");
        BodyCheck.Name(TakenLocal, "the time it was taken");
        BodyCheck.Optional(LatitudeDegrees, -90, 90, "the latitude", "degrees");
        BodyCheck.Optional(LongitudeDegrees, -180, 180, "the longitude", "degrees");
    }
}
