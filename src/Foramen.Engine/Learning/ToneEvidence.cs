using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;

namespace Foramen.Engine.Learning;

/// <summary>One tone of a sheet: what label and description foretold, and what was seen.</summary>
public sealed record ToneEvidence
{
    /// <summary>Standard deviation of a judgement by eye in half stops, rounding included (an assumption).</summary>
    public static Stops ByEye { get; } = Stops.FromValue(0.30);

    /// <summary>What the user calls it.</summary>
    public required string Name { get; init; }

    /// <summary>How it was wanted.</summary>
    public required Rendering Rendering { get; init; }

    /// <summary>How much lighter than wanted it should have come out with everything as labelled, for the exposure really given.</summary>
    public required Stops Foretold { get; init; }

    /// <summary>How much lighter than wanted it came out.</summary>
    public required Stops Seen { get; init; }

    /// <summary>Whether <see cref="Seen"/> is a value or a bound.</summary>
    public ObservedLimit Limit { get; init; }

    /// <summary>Standard deviation of reading this tone and judging it, together.</summary>
    public Stops Spread { get; init; } = Stops.RootSumSquare(ByEye, Stops.FromValue(0.2));

    /// <summary>The part of <see cref="Spread"/> that comes from judging.</summary>
    public Stops Judging { get; init; } = ByEye;

    /// <summary>The nearer edge of its band below the aim, by label, stops (negative); null where not known.</summary>
    public Stops? BandLow { get; init; }

    /// <summary>The edge of its band above the aim, by label, stops; null where not known.</summary>
    public Stops? BandHigh { get; init; }

    /// <summary>Part of its exposure that came from the flash, 0 to 1.</summary>
    public double FlashShare { get; init; }
}
