using Foramen.Engine.Quantities;

namespace Foramen.Engine.Scene;

/// <summary>A luminance found with a hand meter.</summary>
/// <param name="Luminance">What the meter says, as luminance.</param>
public sealed record HandReading(Luminance Luminance) : ToneSource
{
    /// <summary>Spread of a hand reading, aiming included, one standard deviation: a quarter stop. An assumption.</summary>
    public static Stops UsualSpread { get; } = Stops.FromValue(0.25);

    /// <summary>Actinic over photometric luminance of the surface; 1 for a neutral one. 0.01 to 100.</summary>
    public double ActinicRatio { get; init => field = Guard.Within(value, 0.01, 100, "the actinic ratio"); } = 1;

    /// <summary>One standard deviation.</summary>
    public Stops Spread { get; init; } = UsualSpread;
}
