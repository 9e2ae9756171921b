using Foramen.Engine.Light;
using Foramen.Engine.Quantities;
using MathNet.Numerics.Distributions;

namespace Foramen.Engine.Paper;

/// <summary>
/// A paper's characteristic curve out of its strips, with the doubt: the most likely curve of the family of <see cref="LogisticCurve"/> under stated priors and
/// robust weights, and intervals by Laplace's approximation with Student's t. A function of the set of readings; their order does not matter. Immutable.
/// </summary>
/// <remarks>
/// Limits: one emulsion (a two-emulsion paper may show a bump that the family cannot follow); intervals are linear in the parameters; a 90 %
/// interval is as good as the stated spreads of densities and light. Patches exposed in several openings are taken for one opening of the same time.
/// </remarks>
public sealed class StripFit
{
    private readonly StripPosterior posterior;
    private readonly double quantile;

    private StripFit(StripPosterior posterior, IReadOnlyList<Strip> strips, PaperSensitivity sensitivity)
    {
        this.posterior = posterior;
        Strips = strips;
        Sensitivity = sensitivity;
        quantile = StudentT.InvCDF(0, 1, posterior.Freedom, 0.95);
        Curve = posterior.Shape.ToCurve();
        Failure = StripFailure.Of(posterior, strips, sensitivity);
        Index = StripIndex.Of(posterior, strips[0], sensitivity, quantile);
        SteepestSlope = Logarithmic(free => Math.Log10(posterior.ShapeAt(free).SteepestSlope));
        Range = ReachesBothEnds
            ? Logarithmic(free => Math.Log10(100 * LgRange(posterior.ShapeAt(free))))
            : null;
        Speed = Kind == PaperKind.NegativeWorking ? SpeedOf() : null;
    }

    /// <summary>Negative-working or direct-positive.</summary>
    public PaperKind Kind => posterior.Kind;

    /// <summary>The strips.</summary>
    public IReadOnlyList<Strip> Strips { get; }

    /// <summary>The colour sensitivity that was assumed of the paper.</summary>
    public PaperSensitivity Sensitivity { get; }

    /// <summary>The most likely curve, in effective exposure.</summary>
    public LogisticCurve Curve { get; }

    /// <summary>ISO 6846 speed P in 3000 K light at a second, brought there by the failure and the colours of light, whose doubt is in the interval; null for direct-positive paper.</summary>
    public Estimate? Speed { get; }

    /// <summary>ISO 6846 range R or its mirror; null where the strip does not reach the points it is defined by.</summary>
    public Estimate? Range { get; }

    /// <summary>The camera's exposure index at the strip's own time and light.</summary>
    public IndexEstimate Index { get; }

    /// <summary>Contrast: the steepest slope, density for a factor of ten in exposure.</summary>
    public Estimate SteepestSlope { get; }

    /// <summary>What they say of failure.</summary>
    public FailureEstimate Failure { get; }

    /// <summary>How many times as much the patches scatter as was stated of their densities.</summary>
    public double Scatter => posterior.Scale;

    /// <summary>Each density beside the curve, in the order of strips and patches.</summary>
    public IReadOnlyList<FittedPatch> FittedPatches => StripPatches.Of(posterior, Strips);

    /// <summary>Standard deviation of the failure exponent before the strips.</summary>
    public double PriorFailureSpread => posterior.Prior.FailureSpread;

    /// <summary>Whether the patches reach points T and S of ISO 6846 (0.15 in lg exposure beyond the last patch is allowed).</summary>
    public bool ReachesBothEnds => Reaches(posterior.Shape.LgExposureAt(FirstToneShare(posterior.Shape)))
        && Reaches(posterior.Shape.LgExposureAt(IsoPaperMeasures.DarkestShareOfNetDensity));

    internal StripPosterior Posterior => posterior;

    /// <summary>The curve of these strips.</summary>
    /// <param name="strips">One or more strips of the same box, processed alike.</param>
    /// <param name="kind">Negative-working or direct-positive.</param>
    /// <param name="sensitivity">The paper's colour sensitivity.</param>
    /// <param name="prior">What is thought of the paper before; the usual where nothing is said.</param>
    /// <exception cref="RefusalException">The strips do not tell the curve; the sentence says why and which strip would.</exception>
    public static StripFit Of(IReadOnlyList<Strip> strips, PaperKind kind, PaperSensitivity sensitivity, StripPrior? prior = null)
    {
        var assumed = prior ?? StripPrior.Usual;
        var rows = StripRows.Of(strips, kind, sensitivity, assumed.Failure);
        StripChecks.Before(rows, kind);
        var posterior = StripPosterior.Of(kind, rows, assumed);
        StripChecks.After(posterior, strips, sensitivity);
        return new StripFit(posterior, strips, sensitivity);
    }

    /// <summary>Density at an effective exposure and its standard deviation, for a band around the drawn curve.</summary>
    /// <param name="lgExposure">lg of the effective exposure in lux seconds.</param>
    public (double Density, double Sd) BandAt(double lgExposure)
        => posterior.Propagate(free => posterior.ShapeAt(free).Density(lgExposure));

    /// <summary>The box as it is known now: curve, speed with its spread at the strip's own time and light, failure.</summary>
    /// <param name="name">What its owner calls it.</param>
    public PhotographicPaper ToPaper(string name)
    {
        var index = ExposureIndex.Found(Index.Index.Value, Index.At, Index.Light, MeterConstants.Usual);
        var mid = index.MidToneDensity(Kind, Curve.MinimumDensity, Curve.MaximumDensity);
        var shift = Math.Log10(index.MidToneExposure(Sensitivity, Failure.Law).LuxSeconds) - Math.Log10(Curve.ExposureFor(mid).LuxSeconds);
        return new PhotographicPaper
        {
            Name = name,
            Curve = Curve.Faster(Stops.FromValue(-shift / Math.Log10(2))),
            Sensitivity = Sensitivity,
            Failure = Failure.Law,
            SpeedFoundIn = Index.Light,
            SpeedFoundAt = Index.At,
            SpeedSpread = Index.Spread,
            FailureSpreadPerDoubling = Failure.SpreadPerDoubling,
        };
    }

    internal static double LgRange(CurveShape shape) => Math.Abs(
        shape.LgExposureAt(IsoPaperMeasures.DarkestShareOfNetDensity) - shape.LgExposureAt(FirstToneShare(shape)));

    internal static double FirstToneShare(CurveShape shape) => IsoPaperMeasures.FirstToneNetDensity / shape.Net;

    private bool Reaches(double lgExposure)
    {
        var (least, most) = posterior.Rows.Exposures;
        return lgExposure >= least - StripChecks.Extrapolation && lgExposure <= most + StripChecks.Extrapolation;
    }

    private Estimate? SpeedOf()
    {
        var (lgHm, sd) = posterior.Propagate(free =>
        {
            var shape = posterior.ShapeAt(free);
            return shape.LgExposureAt(Math.Min(0.95, IsoPaperMeasures.SpeedPointNetDensity / shape.Net));
        });

        // Sensitivities to colour are good to about a quarter of the difference between the strip's light and the standard's lamp.
        var colour = 0.25 * Math.Abs(Math.Log10(Actinic.Factor(Strips[0].Light.ToSpectrum(), Sensitivity)));
        return AroundLg(3 - lgHm, Math.Sqrt((sd * sd) + (colour * colour)), quantile);
    }

    private Estimate Logarithmic(Func<double[], double> lgOf)
    {
        var (lg, sd) = posterior.Propagate(lgOf);
        return AroundLg(lg, sd, quantile);
    }

    internal static Estimate AroundLg(double lg, double sd, double quantile)
        => new(Math.Pow(10, lg), Math.Pow(10, lg - (quantile * sd)), Math.Pow(10, lg + (quantile * sd)));
}
