using Foramen.Engine.Quantities;

namespace Foramen.Journal.Bodies;

/// <summary>How one tone came out.</summary>
public sealed record JudgedTone
{
    /// <summary>The tone; null for the print as a whole.</summary>
    public Ulid? Tone { get; init; }

    /// <summary>How much lighter than wanted, stops of light; negative is darker.</summary>
    public required double LighterByStops { get; init; }

    /// <summary>Burnt or blocked where its detail is gone, so that it was off by at least that much; null where it is not.</summary>
    public ToneFate? Fate { get; init; }

    /// <summary>Density measured on a scan or photograph of the print, of a paper negative its own; null where the tone was judged by eye.</summary>
    public double? MeasuredDensity { get; init; }

    /// <summary>How well <see cref="LighterByStops"/> is known (1 sd), stops; null for the eye's usual.</summary>
    public double? SdStops { get; init; }

    internal void Check()
    {
        BodyCheck.Optional(MeasuredDensity, 0, 4, "the measured density");
        BodyCheck.Optional(SdStops, 0, 10, "how well a judged tone is known", "stops");
        Guard.Within(LighterByStops, -10, 10, "how much lighter it came out", "stops");
    }
}
