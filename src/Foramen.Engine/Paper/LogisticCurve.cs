using Foramen.Engine.Quantities;

namespace Foramen.Engine.Paper;

/// <summary>
/// The logistic characteristic curve in x = lg H, with a Richards exponent for an unequal toe and shoulder:
/// D = Dmin + Dn·[1 + exp(−k(x − x0))]^(−g) for negative-working paper; direct-positive paper mirrors it, exp(+k(x − x0)).
/// With g = 1 it is the Hill function in H. Valid from toe to shoulder of one emulsion; a two-emulsion paper may show a bump
/// that it cannot follow.
/// </summary>
/// <remarks>Hill (1910) for the form in H; Richards (1959) for g. Their use for paper curves is ordinary curve fitting.</remarks>
public sealed class LogisticCurve : CharacteristicCurve
{
    private readonly double sign;

    private LogisticCurve(PaperKind kind, Density min, Density max, double steepness, double midLgExposure, double asymmetry)
    {
        Kind = kind;
        MinimumDensity = min;
        MaximumDensity = max;
        Steepness = steepness;
        MidLgExposure = midLgExposure;
        Asymmetry = asymmetry;
        sign = kind == PaperKind.NegativeWorking ? 1 : -1;
    }

    /// <inheritdoc/>
    public override PaperKind Kind { get; }

    /// <inheritdoc/>
    public override Density MinimumDensity { get; }

    /// <inheritdoc/>
    public override Density MaximumDensity { get; }

    /// <summary>k, per unit of lg exposure; 2 (very soft) to 16 (very hard).</summary>
    public double Steepness { get; }

    /// <summary>x0, lg of the exposure in lux seconds at which the unshifted logistic is at its middle.</summary>
    public double MidLgExposure { get; }

    /// <summary>g; below 1 a long toe, above 1 a long shoulder.</summary>
    public double Asymmetry { get; }

    /// <summary>A curve from its parameters.</summary>
    /// <param name="kind">Negative-working or direct-positive.</param>
    /// <param name="min">Dmin, 0 to 0.5.</param>
    /// <param name="max">Dmax, at least 0.3 above Dmin.</param>
    /// <param name="steepness">k, 1 to 30 per lg unit.</param>
    /// <param name="midLgExposure">x0, lg lux seconds, −6 to 8.</param>
    /// <param name="asymmetry">g, 0.2 to 5.</param>
    /// <exception cref="RefusalException">A parameter is outside its range.</exception>
    public static LogisticCurve Create(
        PaperKind kind, Density min, Density max, double steepness, double midLgExposure, double asymmetry = 1)
    {
        Guard.Within(min.Value, 0, 0.5, "the paper's minimum density");
        Guard.Within(max.Value - min.Value, 0.3, 3.5, "the paper's net density (maximum less minimum)");
        Guard.Within(steepness, 1, 30, "the curve's steepness");
        Guard.Within(midLgExposure, -6, 8, "the curve's middle in lg lux seconds");
        Guard.Within(asymmetry, 0.2, 5, "the curve's asymmetry");
        return new LogisticCurve(kind, min, max, steepness, midLgExposure, asymmetry);
    }

    /// <summary>
    /// The curve of this ISO 6846 range, from the definitions of points T and S: k = 100·[ln(fT^(−1/g) − 1) − ln(fS^(−1/g) − 1)]/R with fT = 0.04/Dn and
    /// fS = 0.9; with g = 1 that is 100·[ln((Dn − 0.04)/0.04) + ln 9]/R.
    /// The anchor fixes where it lies: this density at this effective exposure.
    /// </summary>
    /// <param name="kind">Negative-working, or direct-positive with the range mirrored.</param>
    /// <param name="min">Dmin.</param>
    /// <param name="max">Dmax.</param>
    /// <param name="isoRange">R, 100 times the lg range; 30 to 250.</param>
    /// <param name="anchorDensity">A density strictly between the limits.</param>
    /// <param name="anchorExposure">The effective exposure that gives it.</param>
    /// <param name="asymmetry">g, 0.2 to 5; symmetric where nothing is said.</param>
    /// <exception cref="RefusalException">A parameter is outside its range.</exception>
    public static LogisticCurve FromRange(
        PaperKind kind, Density min, Density max, double isoRange, Density anchorDensity, LuminousExposure anchorExposure, double asymmetry = 1)
    {
        Guard.Within(isoRange, 30, 250, "the paper's ISO range");
        Guard.Within(anchorExposure.LuxSeconds, 1e-6, 1e8, "the exposure of the anchor", "lx s");
        var net = Guard.Within(max.Value - min.Value, 0.3, 3.5, "the paper's net density (maximum less minimum)");
        Guard.Within(asymmetry, 0.2, 5, "the curve's asymmetry");
        double LnOdds(double share) => Math.Log(Math.Pow(share, -1 / asymmetry) - 1);
        var steepness = 100 * (LnOdds(IsoPaperMeasures.FirstToneNetDensity / net) - LnOdds(IsoPaperMeasures.DarkestShareOfNetDensity)) / isoRange;
        var unshifted = Create(kind, min, max, steepness, 0, asymmetry);
        var shift = Math.Log10(anchorExposure.LuxSeconds) - Math.Log10(unshifted.ExposureFor(anchorDensity).LuxSeconds);
        return Create(kind, min, max, steepness, shift, asymmetry);
    }

    /// <inheritdoc/>
    public override double DensityAtLg(double lgExposure)
        => MinimumDensity.Value + (NetDensity * Math.Pow(1 + Math.Exp(-sign * Steepness * (lgExposure - MidLgExposure)), -Asymmetry));

    /// <inheritdoc/>
    public override double SlopeAtLg(double lgExposure)
    {
        var e = Math.Exp(-sign * Steepness * (lgExposure - MidLgExposure));
        return double.IsFinite(e)
            ? sign * NetDensity * Asymmetry * Steepness * e * Math.Pow(1 + e, -Asymmetry - 1)
            : 0;
    }

    /// <inheritdoc/>
    public override CharacteristicCurve Faster(Stops stops)
        => new LogisticCurve(Kind, MinimumDensity, MaximumDensity, Steepness, MidLgExposure - (stops.Value * Math.Log10(2)), Asymmetry);

    /// <inheritdoc/>
    protected override double LgExposureFor(double density)
    {
        var fraction = (density - MinimumDensity.Value) / NetDensity;
        return MidLgExposure - (sign * Math.Log(Math.Pow(fraction, -1 / Asymmetry) - 1) / Steepness);
    }
}
