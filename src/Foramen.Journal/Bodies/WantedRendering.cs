using System.Text.Json.Serialization;

namespace Foramen.Journal.Bodies;

/// <summary>How a tone is wanted on the print.</summary>
[JsonConverter(typeof(CamelCaseWord<WantedRendering>))]
public enum WantedRendering
{
    /// <summary>Dark, with detail.</summary>
    OpenShadow,

    /// <summary>A middle tone.</summary>
    Mid,

    /// <summary>Light, with detail.</summary>
    TexturedHighlight,

    /// <summary>May lose its detail in white.</summary>
    MayBurn,

    /// <summary>May lose its detail in black.</summary>
    MayBlock,
}
