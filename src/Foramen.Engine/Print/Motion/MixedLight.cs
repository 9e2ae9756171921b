namespace Foramen.Engine.Print;

/// <summary>A region in which two lights take turns at each place: the background's, and that of what stood before it or passed it.</summary>
internal sealed class MixedLight : IRegionLight
{
    private const double Soft = 0.02;
    private const int InTrace = 32;

    private readonly Func<double, double, float> background;
    private readonly Func<double, double, float> subject;
    private readonly Func<double, double, double> share;
    private readonly Func<double, double, double> part;
    private readonly double? traceRow;

    /// <summary>A mixture.</summary>
    /// <param name="background">Without it.</param>
    /// <param name="subject">With it.</param>
    /// <param name="share">Part of the light with it, by place.</param>
    /// <param name="part">How much of the region there is; soft at the edges where missing.</param>
    /// <param name="traceRow">Row that the trace is measured along; all where missing.</param>
    public MixedLight(
        Func<double, double, float> background,
        Func<double, double, float> subject,
        Func<double, double, double> share,
        Func<double, double, double>? part = null,
        double? traceRow = null)
    {
        this.background = background;
        this.subject = subject;
        this.share = share;
        this.part = part ?? ((u, v) => Math.Clamp(Math.Min(Math.Min(u, 1 - u), Math.Min(v, 1 - v)) / Soft, 0, 1));
        this.traceRow = traceRow;
    }

    /// <inheritdoc/>
    public float At(double u, double v)
    {
        var with = share(u, v);
        var (bare, there) = (background(u, v), subject(u, v));
        return with <= 0 ? bare : with >= 1 ? there : (float)(((1 - with) * bare) + (with * there));
    }

    /// <inheritdoc/>
    public double Part(double u, double v) => part(u, v);

    /// <inheritdoc/>
    public RegionTrace Trace(Func<float, double> density)
    {
        var (still, moved, mean, count) = (0.0, 0.0, 0.0, 0);
        for (var row = 0; row < (traceRow is null ? InTrace : 1); row++)
        {
            for (var column = 0; column < InTrace; column++)
            {
                var (u, v) = ((column + 0.5) / InTrace, traceRow ?? ((row + 0.5) / InTrace));
                var (bare, there, mixed) = (background(u, v), subject(u, v), At(u, v));
                if (float.IsNaN(bare + there + mixed))
                {
                    continue;
                }

                var without = density(bare);
                var with = density(mixed);
                still += Math.Abs(density(there) - without);
                moved += Math.Abs(with - without);
                mean += with;
                count++;
            }
        }

        return count == 0 ? RegionTrace.Of(0, 0, 0) : RegionTrace.Of(still / count, moved / count, mean / count);
    }
}
