using System.Text.Json.Serialization;

namespace Foramen.Journal.Bodies;

/// <summary>What the light is doing, in one word.</summary>
[JsonConverter(typeof(CamelCaseWord<LightWord>))]
public enum LightWord
{
    /// <summary>As metered, or as stated in stops.</summary>
    Sun,

    /// <summary>A thin cloud.</summary>
    ThinCloud,

    /// <summary>A cloud.</summary>
    Cloud,

    /// <summary>The hole is covered: no light at all, whatever the stops say.</summary>
    Covered,

    /// <summary>A new reading.</summary>
    Reading,
}
