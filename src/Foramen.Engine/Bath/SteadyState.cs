using Foramen.Engine.Quantities;

namespace Foramen.Engine.Bath;

/// <summary>
/// Where a bottle settles when each sheet takes the part e of it and the part r is then replaced by fresh developer of strength s,
/// in closed form. Multiplicative: a* = r·s/(1 − (1 − r)(1 − e)); additive: a* = s − e(1 − r)/r; by-products: (1 − r)/r sheets' worth.
/// </summary>
public sealed record SteadyState
{
    private SteadyState(double refreshed, double exhaustion, double strength)
    {
        Refreshed = refreshed;
        Exhaustion = exhaustion;
        Strength = strength;
    }

    /// <summary>r, the part of the bottle replaced after each sheet.</summary>
    public double Refreshed { get; }

    /// <summary>e, the part of the bottle that a sheet takes.</summary>
    public double Exhaustion { get; }

    /// <summary>s, strength of what is added; 1 is working strength.</summary>
    public double Strength { get; }

    /// <summary>Activity in the end by the multiplicative model.</summary>
    public double Multiplicative => Refreshed * Strength / (1 - MultiplicativeRatio);

    /// <summary>Activity in the end by the additive model; below zero the bottle fails before it settles.</summary>
    public double Additive => Strength - (Exhaustion * ByProductSheets);

    /// <summary>By-products in the end, in those of one sheet.</summary>
    public double ByProductSheets => AdditiveRatio / Refreshed;

    private double AdditiveRatio => 1 - Refreshed;

    private double MultiplicativeRatio => (1 - Refreshed) * (1 - Exhaustion);

    /// <summary>The steady state.</summary>
    /// <param name="refreshed">r, 0.0001 to 1.</param>
    /// <param name="exhaustion">e, 0 to 1.</param>
    /// <param name="strength">s, 0 to 1.5.</param>
    /// <exception cref="RefusalException">Outside the ranges.</exception>
    public static SteadyState For(double refreshed, double exhaustion, double strength = 1) => new(
        Guard.Within(refreshed, 1e-4, 1, "the part that is replaced by fresh developer"),
        Guard.Within(exhaustion, 0, 1, "the part of the bottle that a sheet takes"),
        Guard.Within(strength, 0, 1.5, "the strength of what is added"));
}
