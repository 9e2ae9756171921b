using System.Text.Json.Serialization;

namespace Foramen.Journal.Bodies;

/// <summary>What a bottle holds.</summary>
[JsonConverter(typeof(CamelCaseWord<BottleContents>))]
public enum BottleContents
{
    /// <summary>Developer.</summary>
    Developer,

    /// <summary>Fixer.</summary>
    Fixer,
}
