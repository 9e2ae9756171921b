using System.Text.Json.Serialization;

namespace Foramen.Journal.Bodies;

/// <summary>A step of processing.</summary>
[JsonConverter(typeof(CamelCaseWord<BathKind>))]
public enum BathKind
{
    /// <summary>The developer.</summary>
    Developer,

    /// <summary>A rinse in water between developer and fixer.</summary>
    Rinse,

    /// <summary>The stop bath.</summary>
    Stop,

    /// <summary>The fixer.</summary>
    Fix,

    /// <summary>The final wash.</summary>
    Wash,
}
