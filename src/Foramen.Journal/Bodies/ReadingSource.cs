using System.Text.Json.Serialization;

namespace Foramen.Journal.Bodies;

/// <summary>Where a luminance came from.</summary>
[JsonConverter(typeof(CamelCaseWord<ReadingSource>))]
public enum ReadingSource
{
    /// <summary>Touched on the photograph.</summary>
    Photograph,

    /// <summary>An exposure value for ISO 100 was typed.</summary>
    ExposureValue,

    /// <summary>Aperture, time and sensitivity were typed.</summary>
    CameraSettings,

    /// <summary>A reading of the light in lux was typed.</summary>
    Illuminance,

    /// <summary>A luminance was typed.</summary>
    Luminance,

    /// <summary>Nobody measured it.</summary>
    Estimate,
}
