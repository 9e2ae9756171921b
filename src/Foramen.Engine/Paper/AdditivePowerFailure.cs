using Foramen.Engine.Quantities;

namespace Foramen.Engine.Paper;

/// <summary>
/// t = t_m + a·t_m^1.62 (P. A. Gainer, "LIRF is lurking at your f-stop", from H. Bond's film data): a is the extra time in seconds at
/// one metered second. The power was found for camera films; for paper it is an assumption.
/// </summary>
public sealed record AdditivePowerFailure : FailureLaw
{
    /// <summary>The power found over five camera films.</summary>
    public const double Power = 1.62;

    private AdditivePowerFailure(double extraAtOneSecond) => ExtraAtOneSecond = extraAtOneSecond;

    /// <summary>a, seconds added at a metered second; 0 to 2.</summary>
    public double ExtraAtOneSecond { get; }

    /// <summary>The law with this extra time at one second.</summary>
    /// <param name="seconds">a, 0 to 2 s.</param>
    /// <exception cref="RefusalException">Outside the range.</exception>
    public static AdditivePowerFailure FromExtraAtOneSecond(double seconds)
        => new(Guard.Within(seconds, 0, 2, "the extra time at one second", "s"));

    /// <inheritdoc/>
    public override string Describe() => FormattableString.Invariant(
        $"Additive power: {ExtraAtOneSecond:0.###} s more at one metered second, growing with the power 1.62; the power is a film's.");

    /// <inheritdoc/>
    public override double SecondsNeeded(double meteredSeconds)
        => meteredSeconds + (ExtraAtOneSecond * Math.Pow(meteredSeconds, Power));

    /// <inheritdoc/>
    public override double MeteredSecondsFor(double actualSeconds)
    {
        if (actualSeconds <= 0)
        {
            return 0;
        }

        // Newton from above on a convex rising function: converges without overshooting.
        var metered = actualSeconds;
        for (var i = 0; i < 60; i++)
        {
            var step = (SecondsNeeded(metered) - actualSeconds) / (1 + (ExtraAtOneSecond * Power * Math.Pow(metered, Power - 1)));
            metered -= step;
            if (Math.Abs(step) <= 1e-14 * metered)
            {
                break;
            }
        }

        return metered;
    }
}
