namespace Foramen.Rehearsal.Worlds;

/// <summary>
/// A characteristic curve that is none of the Engine's: share of the net density over stops of exposure, rising from 0 to 1, put where the label's
/// mid-tone is and stretched to a range.
/// </summary>
internal sealed class HiddenCurve
{
    private readonly Func<double, double> shape;
    private readonly double scale;
    private readonly double middle;

    private HiddenCurve(Func<double, double> shape, double scale, double middle)
    {
        this.shape = shape;
        this.scale = scale;
        this.middle = middle;
    }

    /// <summary>A curve of a family.</summary>
    /// <param name="family">Which.</param>
    /// <param name="rangeStops">Stops between a share of <paramref name="first"/> and of nine tenths.</param>
    /// <param name="first">The first share that can be seen.</param>
    /// <param name="mid">The share that lies at zero stops.</param>
    /// <param name="mirrored">Whether shares are counted from the other end: less light, more density.</param>
    public static HiddenCurve Of(CurveFamily family, double rangeStops, double first, double mid, bool mirrored)
    {
        Func<double, double> rising = family switch
        {
            CurveFamily.Gompertz => v => Math.Exp(-Math.Exp(-v)),
            CurveFamily.Weibull => v => 1 - Math.Exp(-Math.Exp(v)),
            CurveFamily.Probit => NormalIntegral.Below,
            CurveFamily.Straight => v => (SoftPlus(9 * (v + 0.5)) - SoftPlus(9 * (v - 0.5))) / 9,
            CurveFamily.TwoEmulsions => v => (0.6 * NormalIntegral.Below((v + 0.7) / 0.65)) + (0.4 * NormalIntegral.Below((v - 0.9) / 0.65)),
            _ => throw new ArgumentOutOfRangeException(nameof(family)),
        };
        Func<double, double> shape = mirrored ? v => 1 - rising(v) : rising;
        var unscaled = new HiddenCurve(shape, 1, 0);
        var width = Math.Abs(unscaled.StopsFor(0.9) - unscaled.StopsFor(first));
        var scale = rangeStops / width;
        return new HiddenCurve(shape, scale, -scale * unscaled.StopsFor(mid));
    }

    /// <summary>Share of the net density at so many stops.</summary>
    public double ShareAt(double stops) => shape((stops - middle) / scale);

    /// <summary>Stops that give a share.</summary>
    public double StopsFor(double share)
    {
        var falling = shape(-40) > 0.5;
        var (low, high) = (-40.0, 40.0);
        for (var i = 0; i < 60; i++)
        {
            var at = (low + high) / 2;
            (low, high) = shape(at) < share != falling ? (at, high) : (low, at);
        }

        return (scale * (low + high) / 2) + middle;
    }

    private static double SoftPlus(double v) => v > 30 ? v : Math.Log(1 + Math.Exp(v));
}
