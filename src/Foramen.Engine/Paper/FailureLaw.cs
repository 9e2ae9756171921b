using Foramen.Engine.Quantities;

namespace Foramen.Engine.Paper;

/// <summary>
/// Low-intensity reciprocity failure as a law T(I): the full time needed at constant light, given the time that would do without failure
/// (the metered time, H/I). Every law is strictly rising and its inverse exists, so that varying light is the integral of dt/T(I) and every
/// tone's effective exposure after a time t is I·<see cref="MeteredSecondsFor"/>(t). Valid for a latent image that one number describes: the order of bright and dim
/// light does not matter in it, which in fact costs up to a few tenths of a stop (Webb, JOSA 40, 3, 1950). Immutable.
/// </summary>
public abstract record FailureLaw
{
    /// <summary>A sentence for the user: what the law is and how far it can be trusted.</summary>
    public abstract string Describe();

    /// <summary>Light lost to failure over a real time: lg2(t/t_m), zero or more.</summary>
    public Stops Loss(Duration actual)
        => actual.Seconds <= 0 ? Stops.Zero : Stops.FromRatio(actual.Seconds / MeteredSecondsFor(actual.Seconds));

    /// <summary>
    /// The exponent q of the power T ∝ t_m^q that the law is like near a metered time: d ln T/d ln t_m, the 1/p of Schwarzschild's law. Lights that take turns for long
    /// are worth the mean (Σ wᵢ·Iᵢ^q)^(1/q), which is ∫ dt/T(I) of a power law.
    /// </summary>
    /// <param name="meteredSeconds">More than nothing.</param>
    /// <returns>1 where there is no failure; 0.5 to 3.</returns>
    public double ExponentNear(double meteredSeconds)
    {
        const double Step = 1.05;
        var here = Math.Clamp(meteredSeconds, 1e-3, 1e6);
        return Math.Clamp(Math.Log(SecondsNeeded(here * Step) / SecondsNeeded(here / Step)) / (2 * Math.Log(Step)), 0.5, 3);
    }

    /// <summary>Time needed in seconds for a metered time in seconds; bare numbers for inner loops.</summary>
    /// <param name="meteredSeconds">Seconds, zero or more.</param>
    public abstract double SecondsNeeded(double meteredSeconds);

    /// <summary>Metered seconds that real seconds are worth; bare numbers for inner loops.</summary>
    /// <param name="actualSeconds">Seconds, zero or more.</param>
    public abstract double MeteredSecondsFor(double actualSeconds);
}
