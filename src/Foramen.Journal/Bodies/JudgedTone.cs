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

    internal void Check()
    {
        Guard.Within(LighterByStops, -10, 10, "how much lighter it came out", "stops");
    }
}
