using Foramen.Engine.Quantities;

namespace Foramen.Engine.Paper;

/// <summary>
/// What is thought of a paper before its strips: normal priors, wide enough that a strip from toe to shoulder outweighs them, and stated because a poor
/// strip does not. All values are assumptions from ordinary papers (from memory: Dmin 0.04 to 0.10, Dmax 1.4 matt to 2.2 glossy).
/// </summary>
public sealed record StripPrior
{
    /// <summary>The usual assumptions.</summary>
    public static StripPrior Usual { get; } = new();

    /// <summary>ln Dmin and its standard deviation: about 0.04 to 0.12.</summary>
    public (double Mean, double Sd) LnMinimumDensity { get; init; } = (Math.Log(0.07), 0.5);

    /// <summary>ln of the net density and its standard deviation: about 1.4 to 2.3.</summary>
    public (double Mean, double Sd) LnNetDensity { get; init; } = (Math.Log(1.85), 0.22);

    /// <summary>ln k, the steepness; k 5.5 is a medium grade.</summary>
    public (double Mean, double Sd) LnSteepness { get; init; } = (Math.Log(5.5), 0.45);

    /// <summary>ln g, the asymmetry; 0 is symmetric.</summary>
    public (double Mean, double Sd) LnAsymmetry { get; init; } = (0, 0.35);

    /// <summary>x0, lg lux seconds; so wide that it only says "some printing paper".</summary>
    public (double Mean, double Sd) MidLgExposure { get; init; } = (0.7, 1.2);

    /// <summary>The failure that is assumed.</summary>
    public FailureLaw Failure { get; init; } = SchwarzschildFailure.Assumed;

    /// <summary>Standard deviation of its exponent, stops for each doubling of time.</summary>
    public double FailureSpread { get; init; } = 0.05;

    /// <summary>How many patches' worth the stated spreads of densities are believed when the patches scatter more or less.</summary>
    public double SpreadWorth { get; init; } = 8;

    /// <summary>How far a real paper departs from any curve of this family, in density (an assumption).</summary>
    public double CurveSpread { get; init; } = 0.01;

    /// <summary>The usual assumptions, with what the box is thought to be.</summary>
    /// <param name="paper">The box as labelled or described so far.</param>
    public static StripPrior For(PhotographicPaper paper)
    {
        var middle = Density.FromValue(paper.Curve.MinimumDensity.Value + (0.5 * paper.Curve.NetDensity));
        return Usual with
        {
            // A label may be off by stops, so a strip must be free to say so: never closer than three stops.
            MidLgExposure = (Math.Log10(paper.Curve.ExposureFor(middle).LuxSeconds), Math.Max(0.9, 2 * paper.SpeedSpread.Value * Math.Log10(2))),
            Failure = paper.Failure,
            FailureSpread = Math.Max(0.01, paper.FailureSpreadPerDoubling),
        };
    }
}
