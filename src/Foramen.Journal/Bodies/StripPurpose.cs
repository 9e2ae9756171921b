using System.Text.Json.Serialization;

namespace Foramen.Journal.Bodies;

/// <summary>What a strip was made for.</summary>
[JsonConverter(typeof(CamelCaseWord<StripPurpose>))]
public enum StripPurpose
{
    /// <summary>The paper's curve and speed, and with others in different light its failure.</summary>
    Curve,

    /// <summary>The flash that first shows.</summary>
    Flash,
}
