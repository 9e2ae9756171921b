using Foramen.Engine.Quantities;
using MathNet.Numerics.Interpolation;

namespace Foramen.Engine.Paper;

/// <summary>
/// A characteristic curve through measured patches, interpolated so that it stays monotone between them (PCHIP: Fritsch and Carlson,
/// SIAM J. Numer. Anal. 17, 238, 1980). Outside the patches it is held flat: nothing is invented beyond the data.
/// </summary>
public sealed class MeasuredCurve : CharacteristicCurve
{
    private readonly CubicSpline spline;
    private readonly double[] lgExposures;
    private readonly double[] densities;
    private readonly double shift;

    private MeasuredCurve(PaperKind kind, double[] lgExposures, double[] densities, CubicSpline spline, double shift)
    {
        Kind = kind;
        this.lgExposures = lgExposures;
        this.densities = densities;
        this.spline = spline;
        this.shift = shift;
        MinimumDensity = Density.FromValue(Math.Min(densities[0], densities[^1]));
        MaximumDensity = Density.FromValue(Math.Max(densities[0], densities[^1]));
    }

    /// <inheritdoc/>
    public override PaperKind Kind { get; }

    /// <inheritdoc/>
    public override Density MinimumDensity { get; }

    /// <inheritdoc/>
    public override Density MaximumDensity { get; }

    /// <summary>A curve through at least five patches, in order of rising exposure.</summary>
    /// <param name="patches">Effective exposure and density of each patch.</param>
    /// <exception cref="RefusalException">Too few patches, exposures not rising, or densities that turn back.</exception>
    public static MeasuredCurve Through(IReadOnlyList<(LuminousExposure Exposure, Density Density)> patches)
    {
        if (patches.Count < 5)
        {
            throw new RefusalException($"The curve has {patches.Count} patches; give at least 5.");
        }

        var x = new double[patches.Count];
        var d = new double[patches.Count];
        for (var i = 0; i < x.Length; i++)
        {
            x[i] = Math.Log10(Guard.Within(patches[i].Exposure.LuxSeconds, 1e-9, 1e9, $"the exposure of patch {i + 1}", "lx s"));
            d[i] = patches[i].Density.Value;
        }

        var falls = d[^1] < d[0];
        for (var i = 1; i < x.Length; i++)
        {
            if (x[i] <= x[i - 1])
            {
                throw new RefusalException($"Patch {i + 1} has no more exposure than patch {i}; list the patches from least to most exposure.");
            }

            if (falls ? d[i] > d[i - 1] : d[i] < d[i - 1])
            {
                throw new RefusalException(FormattableString.Invariant(
                    $"The curve turns back between patch {i} (density {d[i - 1]:0.00}) and patch {i + 1} (density {d[i]:0.00}); densities should only {(falls ? "fall" : "rise")}."));
            }
        }

        if (Math.Abs(d[^1] - d[0]) < 0.3)
        {
            throw new RefusalException("The patches span less than 0.3 in density; the curve cannot be told from them.");
        }

        var kind = falls ? PaperKind.DirectPositive : PaperKind.NegativeWorking;
        return new MeasuredCurve(kind, x, d, CubicSpline.InterpolatePchipSorted(x, d), 0);
    }

    /// <inheritdoc/>
    public override double DensityAtLg(double lgExposure)
    {
        var x = lgExposure + shift;
        return x <= lgExposures[0] ? densities[0]
            : x >= lgExposures[^1] ? densities[^1]
            : spline.Interpolate(x);
    }

    /// <inheritdoc/>
    public override double SlopeAtLg(double lgExposure)
    {
        var x = lgExposure + shift;
        return x <= lgExposures[0] || x >= lgExposures[^1] ? 0 : spline.Differentiate(x);
    }

    /// <inheritdoc/>
    public override CharacteristicCurve Faster(Stops stops)
        => new MeasuredCurve(Kind, lgExposures, densities, spline, shift + (stops.Value * Math.Log10(2)));

    /// <inheritdoc/>
    protected override double LgExposureFor(double density)
    {
        // Bisection: the spline is monotone, and 60 halvings are exact to the last digit of a lg exposure.
        var (low, high) = (lgExposures[0], lgExposures[^1]);
        var rising = Kind == PaperKind.NegativeWorking;
        for (var i = 0; i < 60; i++)
        {
            var middle = (low + high) / 2;
            if (spline.Interpolate(middle) < density == rising)
            {
                low = middle;
            }
            else
            {
                high = middle;
            }
        }

        return ((low + high) / 2) - shift;
    }
}
