using System.Text.Json.Serialization;

namespace Foramen.Journal.Bodies;

/// <summary>What a luminance is worth where the photograph was burnt out or blocked.</summary>
[JsonConverter(typeof(CamelCaseWord<ReadingLimit>))]
public enum ReadingLimit
{
    /// <summary>The luminance itself.</summary>
    Exact,

    /// <summary>At least this much.</summary>
    AtLeast,

    /// <summary>At most this much.</summary>
    AtMost,
}
