using Foramen.Engine.Quantities;

namespace Foramen.Engine.Bath;

/// <summary>
/// How much of its final density a tone has after a time: 1 − exp(−(t − ta)/τ) from the time of appearance on
/// (the form of S. E. Sheppard and C. E. K. Mees 1907, from memory, with an induction time added).
/// </summary>
/// <param name="Appearance">ta: nothing is seen before it.</param>
/// <param name="TimeConstant">τ, above zero: by then 63 % is there.</param>
public sealed record DensityGrowth(Duration Appearance, Duration TimeConstant)
{
    /// <summary>The part of the final density reached, 0 to 1.</summary>
    public double Reached(Duration time)
        => time <= Appearance ? 0 : 1 - Math.Exp(-(time.Seconds - Appearance.Seconds) / Math.Max(TimeConstant.Seconds, 1e-9));
}
