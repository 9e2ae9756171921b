using System.Text.Json.Serialization;

namespace Foramen.Journal.Kit;

/// <summary>
/// What is believed of a developer, as written down in <c>bottle.mixed</c>. What is missing is common practice: the Engine's
/// <c>DeveloperProfile</c> says what the values mean and where its own come from.
/// </summary>
public sealed record DeveloperDefinition
{
    /// <summary>Development time of a fresh bottle at 20 °C, s; 75 where missing.</summary>
    public double? TimeSeconds { get; init; }

    /// <summary>Shortest time of a fresh bottle at 20 °C that gives full black, s; 70 where missing.</summary>
    public double? MinimumSeconds { get; init; }

    /// <summary>How many times faster it works 10 °C warmer; 1.9 to 2.5, most likely 2, where missing.</summary>
    public double? Q10 { get; init; }

    /// <summary>Area of paper per litre that would bring it to nothing, m²/l; 5.7 where missing. The bounds are 0.7 and 1.4 times that.</summary>
    [JsonPropertyName("capacityM2PerLitre")]
    public double? CapacitySquareMetresPerLitre { get; init; }

    /// <summary>Activity below which no time makes up for it, 0.3 to 0.95; 0.6 where missing.</summary>
    public double? ActivityLimit { get; init; }

    /// <summary>Development time over the time of first appearance; 7.5 where missing.</summary>
    public double? AppearanceFactor { get; init; }

    /// <summary>Part of the activity lost in an hour in the open at 20 °C; 0.02 where missing.</summary>
    public double? OpenLossPerHour { get; init; }

    /// <summary>Part of the activity lost in a day in a closed bottle at 20 °C; 0.01 where missing.</summary>
    public double? ClosedLossPerDay { get; init; }

    /// <summary>Age beyond which nothing is known, days; 30 where missing.</summary>
    public double? KnownDays { get; init; }
}
