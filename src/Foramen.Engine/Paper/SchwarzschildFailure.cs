using Foramen.Engine.Quantities;

namespace Foramen.Engine.Paper;

/// <summary>
/// Equal effect for equal I·t^p (K. Schwarzschild, Astrophysical Journal 11, 89, 1900), reference time one second: t = t_m^(1/p) for
/// t_m ≥ 1 s, no failure below. No published exponent for printing papers at minutes is known to us; p = 0.90 ± 0.05 is an assumption
/// until the user's own strips say otherwise.
/// </summary>
public sealed record SchwarzschildFailure : FailureLaw
{
    private SchwarzschildFailure(double exponent) => Exponent = exponent;

    /// <summary>The stated assumption for a paper that nobody has measured.</summary>
    public static SchwarzschildFailure Assumed { get; } = new(0.90);

    /// <summary>p, 0.5 to 1; 1 means no failure.</summary>
    public double Exponent { get; }

    /// <summary>The law with this exponent.</summary>
    /// <param name="exponent">p, 0.5 to 1.</param>
    /// <exception cref="RefusalException">Outside the range.</exception>
    public static SchwarzschildFailure FromExponent(double exponent)
        => new(Guard.Within(exponent, 0.5, 1, "the failure exponent p"));

    /// <inheritdoc/>
    public override string Describe() => FormattableString.Invariant(
        $"Schwarzschild's law with p = {Exponent:0.00}, counted from one second; good near the times it was found at, not over several decades.");

    /// <inheritdoc/>
    public override double SecondsNeeded(double meteredSeconds)
        => meteredSeconds <= 1 ? meteredSeconds : Math.Pow(meteredSeconds, 1 / Exponent);

    /// <inheritdoc/>
    public override double MeteredSecondsFor(double actualSeconds)
        => actualSeconds <= 1 ? actualSeconds : Math.Pow(actualSeconds, Exponent);
}
