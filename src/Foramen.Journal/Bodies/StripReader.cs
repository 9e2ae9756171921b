using System.Text.Json.Serialization;

namespace Foramen.Journal.Bodies;

/// <summary>How the densities of a strip were read.</summary>
[JsonConverter(typeof(CamelCaseWord<StripReader>))]
public enum StripReader
{
    /// <summary>By eye, against a printed grey scale.</summary>
    Eye,

    /// <summary>By a densitometer.</summary>
    Densitometer,

    /// <summary>From a scan.</summary>
    Scan,
}
