using Foramen.Engine.Scene;

namespace Foramen.Engine.Print;

/// <summary>What passes, one after another: each point of the background is before something else for its share of the light.</summary>
internal sealed class PreparedPasser : PreparedRegion
{
    private readonly Passers passers;
    private readonly RegionPixels pixels;
    private readonly float[] sampled;

    public PreparedPasser(RegionOnSheet region, Passers passers)
        : base(region)
    {
        this.passers = passers;
        pixels = region.Pixels(SoftEdge.Part);
        sampled = SoftEdge.Samples(region.At);
    }

    /// <inheritdoc/>
    public override bool CarriesLight => false;

    /// <inheritdoc/>
    public override void Apply(float[] lux, MotionCourse course, double exponent)
    {
        var change = (float)LightPower.Mean(1, passers.LuminanceRatio, Share(course), exponent) - 1;
        var (index, part) = (pixels.Index, pixels.Part);
        for (var i = 0; i < index.Length; i++)
        {
            lux[index[i]] *= 1 + (part[i] * change);
        }
    }

    /// <inheritdoc/>
    public override RegionTrace Trace(MotionCourse course, double exponent, Func<double, double> density)
    {
        var factor = LightPower.Mean(1, passers.LuminanceRatio, Share(course), exponent);
        var trace = new DifferenceTrace(density);
        foreach (var light in sampled)
        {
            trace.Add(light, light * passers.LuminanceRatio, light * factor);
        }

        return trace.Result();
    }

    private double Share(MotionCourse course)
        => passers.Covered is { } time ? Math.Min(course.MovingShare, time.Seconds / course.Exposure.Seconds) : course.MovingShare;
}
