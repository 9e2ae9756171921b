using System.Text.Json.Serialization;

namespace Foramen.Journal.Bodies;

/// <summary>The colour of a developer, which darkens as it ages.</summary>
[JsonConverter(typeof(CamelCaseWord<DeveloperColour>))]
public enum DeveloperColour
{
    /// <summary>Like water.</summary>
    Clear,

    /// <summary>Like straw.</summary>
    Straw,

    /// <summary>Like tea.</summary>
    Amber,

    /// <summary>Like coffee.</summary>
    Brown,
}
