using Foramen.Engine.Quantities;

namespace Foramen.Journal.Bodies;

/// <summary>What the plan expects of one tone.</summary>
public sealed record PlannedTone
{
    /// <summary>The tone.</summary>
    public required Ulid Tone { get; init; }

    /// <summary>Predicted reflection density.</summary>
    public required double Density { get; init; }

    /// <summary>Standard deviation of the density.</summary>
    public double? DensitySd { get; init; }

    /// <summary>What becomes of it.</summary>
    public ToneFate? Fate { get; init; }

    /// <summary>Total effective exposure against the one aimed at, stops.</summary>
    public double? FromAimStops { get; init; }

    /// <summary>Probability that it comes out as wanted.</summary>
    public double? ChanceAsWanted { get; init; }

    internal void Check()
    {
        Guard.Within(Density, 0, 6, "the predicted density");
        BodyCheck.Optional(DensitySd, 0, 6, "the spread of the density");
        BodyCheck.Optional(FromAimStops, -60, 60, "the distance from the aim", "stops");
        BodyCheck.Optional(ChanceAsWanted, 0, 1, "the chance of the tone");
    }
}
