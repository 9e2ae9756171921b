using System.Text.Json.Serialization;

namespace Foramen.Journal.Bodies;

/// <summary>What the plan expects of a tone.</summary>
[JsonConverter(typeof(CamelCaseWord<ToneFate>))]
public enum ToneFate
{
    /// <summary>Where it is wanted.</summary>
    AsWanted,

    /// <summary>Darker than wanted, with detail.</summary>
    TooDark,

    /// <summary>Lighter than wanted, with detail.</summary>
    TooLight,

    /// <summary>No detail in black.</summary>
    Blocked,

    /// <summary>No detail in white.</summary>
    Burnt,
}
