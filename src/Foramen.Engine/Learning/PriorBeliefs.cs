using Foramen.Engine.Quantities;

namespace Foramen.Engine.Learning;

/// <summary>
/// What to believe before there is evidence: everything as labelled, with these standard deviations. All are assumptions (no source with standard
/// deviations for this craft is known to us).
/// </summary>
public sealed record PriorBeliefs
{
    /// <summary>The assumptions of a new user.</summary>
    public static PriorBeliefs Usual { get; } = new();

    /// <summary>Speed of a box; a box whose label says how well it is known brings its own.</summary>
    public Stops Speed { get; init; } = Stops.FromValue(0.8);

    /// <summary>Failure exponent of a box, stops for each doubling.</summary>
    public Stops Failure { get; init; } = Stops.FromValue(0.08);

    /// <summary>Each end of a box's curve.</summary>
    public Stops End { get; init; } = Stops.FromValue(0.35);

    /// <summary>The area of a hole.</summary>
    public Stops Camera { get; init; } = Stops.FromValue(0.15);

    /// <summary>The user's meter.</summary>
    public Stops Meter { get; init; } = Stops.FromValue(0.30);

    /// <summary>Each kind of sky.</summary>
    public Stops Light { get; init; } = Stops.FromValue(0.35);

    /// <summary>Ten sheets in the bottle, at the rate of each stretch of its life.</summary>
    public Stops Ageing { get; init; } = Stops.FromValue(0.4);

    /// <summary>What ten sheets in the bottle are taken to cost until the user's own say otherwise: no developer gets stronger with use.</summary>
    public Stops AgeingMean { get; init; } = Stops.FromValue(-0.3);

    /// <summary>The flash.</summary>
    public Stops Flash { get; init; } = Stops.FromValue(0.35);

    /// <summary>How many sheets the assumed scatter is worth when it is compared with the user's own.</summary>
    public double ScatterWorth { get; init; } = 8;

    /// <summary>After so many days a piece of evidence counts for half.</summary>
    public double HalfLifeDays { get; init; } = 365;

    /// <summary>The best guess of one thing before any evidence.</summary>
    public Stops MeanOf(BeliefKind kind) => kind == BeliefKind.Ageing ? AgeingMean : Stops.Zero;

    /// <summary>The standard deviation of one thing.</summary>
    public Stops Of(BeliefKind kind) => kind switch
    {
        BeliefKind.Speed => Speed,
        BeliefKind.Failure => Failure,
        BeliefKind.ShadowEnd or BeliefKind.HighlightEnd => End,
        BeliefKind.Camera => Camera,
        BeliefKind.Meter => Meter,
        BeliefKind.Light => Light,
        BeliefKind.Ageing => Ageing,
        BeliefKind.Flash => Flash,
        _ => throw new ArgumentOutOfRangeException(nameof(kind)),
    };
}
