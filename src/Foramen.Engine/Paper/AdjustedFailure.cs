using Foramen.Engine.Quantities;

namespace Foramen.Engine.Paper;

/// <summary>
/// Another law, corrected by so many stops for each doubling of the time beyond one second: t_m = law(t)·t^δ. For Schwarzschild's law it is that law
/// with p + δ. What a record of sheets says against a label is put on in this way, whatever the label's law.
/// </summary>
public sealed record AdjustedFailure : FailureLaw
{
    private AdjustedFailure(FailureLaw law, double stopsPerDoubling)
    {
        Law = law;
        StopsPerDoubling = stopsPerDoubling;
    }

    /// <summary>The law that is corrected.</summary>
    public FailureLaw Law { get; }

    /// <summary>δ, −0.3 to 0.3; above zero for less failure than the law says.</summary>
    public double StopsPerDoubling { get; }

    /// <summary>The law with this correction; the law itself where there is none.</summary>
    /// <param name="law">The law.</param>
    /// <param name="stopsPerDoubling">δ, −0.3 to 0.3.</param>
    /// <exception cref="RefusalException">Outside the range.</exception>
    public static FailureLaw Of(FailureLaw law, double stopsPerDoubling)
    {
        Guard.Within(stopsPerDoubling, -0.3, 0.3, "the correction of the failure", "stops a doubling");
        return stopsPerDoubling == 0 ? law : new AdjustedFailure(law, stopsPerDoubling);
    }

    /// <inheritdoc/>
    public override string Describe() => FormattableString.Invariant(
        $"{Law.Describe()} Corrected by {StopsPerDoubling:+0.00;-0.00} stops for each doubling of time, from your own sheets.");

    /// <inheritdoc/>
    public override double MeteredSecondsFor(double actualSeconds)
        => actualSeconds <= 1 ? Law.MeteredSecondsFor(actualSeconds) : Law.MeteredSecondsFor(actualSeconds) * Math.Pow(actualSeconds, StopsPerDoubling);

    /// <inheritdoc/>
    public override double SecondsNeeded(double meteredSeconds)
    {
        var atOne = Law.MeteredSecondsFor(1);
        if (meteredSeconds <= atOne)
        {
            return Law.SecondsNeeded(meteredSeconds);
        }

        // The law rises faster than t^0.3 at any time, so the product rises and halving finds its one root.
        var (low, high) = (0.0, 1.0);
        while (Math.Log(MeteredSecondsFor(Math.Exp(high))) < Math.Log(meteredSeconds) && high < 60)
        {
            (low, high) = (high, high * 2);
        }

        for (var i = 0; i < 80 && high - low > 1e-14 * high; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = MeteredSecondsFor(Math.Exp(middle)) < meteredSeconds ? (middle, high) : (low, middle);
        }

        return Math.Exp((low + high) / 2);
    }
}
