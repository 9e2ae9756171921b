using Foramen.Engine.Light;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Paper;

/// <summary>One box of paper as it is known: its curve, its colour sensitivity, its failure, and how sure one is of them.</summary>
public sealed record PhotographicPaper
{
    /// <summary>Spread of speed from box to box and with age that a new user should assume, in stops (an assumption; the ISO series itself is ± 1/6).</summary>
    public static Stops AssumedSpeedSpread { get; } = Stops.FromValue(0.35);

    /// <summary>Name of the box, as its owner calls it.</summary>
    public required string Name { get; init; }

    /// <summary>Density against effective exposure.</summary>
    public required CharacteristicCurve Curve { get; init; }

    /// <summary>Sensitivity to colour.</summary>
    public required PaperSensitivity Sensitivity { get; init; }

    /// <summary>Law of low-intensity failure.</summary>
    public required FailureLaw Failure { get; init; }

    /// <summary>The light the speed was found in; the further the light is from it, the less sure the result.</summary>
    public required LightColour SpeedFoundIn { get; init; }

    /// <summary>The time the speed was found at; the further the time is from it, the less sure the result.</summary>
    public required Duration SpeedFoundAt { get; init; }

    /// <summary>Standard deviation of the speed, stops.</summary>
    public Stops SpeedSpread { get; init; } = AssumedSpeedSpread;

    /// <summary>Standard deviation of the failure exponent (or what corresponds to it in another law): stops for each doubling of time.</summary>
    public double FailureSpreadPerDoubling { get; init; } = 0.05;

    /// <summary>Negative-working or direct-positive.</summary>
    public PaperKind Kind => Curve.Kind;

    /// <summary>A paper from its limits of density, ISO range and speed; the curve is symmetric unless said otherwise.</summary>
    /// <exception cref="RefusalException">A value outside its range, or an ISO speed for a direct-positive paper.</exception>
    public static PhotographicPaper FromSpeed(
        string name, PaperKind kind, Density min, Density max, double isoRange, PaperSpeed speed, PaperSensitivity sensitivity, FailureLaw failure,
        double asymmetry = 1)
        => new()
        {
            Name = name,
            Curve = LogisticCurve.FromRange(kind, min, max, isoRange, speed.MidToneDensity(kind, min, max), speed.MidToneExposure(sensitivity, failure), asymmetry),
            Sensitivity = sensitivity,
            Failure = failure,
            SpeedFoundIn = speed.FoundIn,
            SpeedFoundAt = speed.FoundAt,
        };

    /// <summary>
    /// Uncertainty from failure at this time: the spread of the exponent times the doublings between it and the time the speed was found at.
    /// A paper calibrated at two minutes owes nothing to failure at two minutes.
    /// </summary>
    public Stops FailureSpread(Duration time)
        => Stops.FromValue(FailureSpreadPerDoubling * Math.Abs(DoublingsTo(time)));

    /// <summary>Doublings from the time that the speed was found at to another; negative for a shorter one. Below a second nothing fails, so a second is the least that counts.</summary>
    public double DoublingsTo(Duration time) => Math.Log2(Math.Max(1, time.Seconds) / Math.Max(1, SpeedFoundAt.Seconds));

    /// <summary>
    /// Uncertainty from the colour of the light: a quarter of the stops between this light and the light of the speed (box sensitivities are good
    /// to about ± 25 %), and never under a tenth of a stop.
    /// </summary>
    public Stops ColourSpread(LightColour light)
    {
        var stops = Math.Log2(Actinic.Factor(light.ToSpectrum(), Sensitivity) / Actinic.Factor(SpeedFoundIn.ToSpectrum(), Sensitivity));
        return Stops.FromValue(Math.Max(0.1, 0.25 * Math.Abs(stops)));
    }
}
