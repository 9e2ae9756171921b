using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;

namespace Foramen.Engine.Print;

/// <summary>What is there for part of the light and gone for the rest, with a guess at what is behind it.</summary>
internal sealed class PreparedAbsence : PreparedRegion
{
    private readonly RegionPixels pixels;
    private readonly float[] behind;
    private readonly float[] sampled;
    private readonly float[] sampledBehind;

    /// <exception cref="RefusalException">Nothing around it is in the frame.</exception>
    public PreparedAbsence(RegionOnSheet region, string name)
        : base(region)
    {
        var fill = EdgeFill.Around(region) ?? throw new RefusalException(
            $"Nothing around the moving region \"{name}\" is in the frame, so what is behind it cannot be guessed; mark a smaller one.");
        pixels = region.Pixels(SoftEdge.Part);
        behind = new float[pixels.Count];
        for (var i = 0; i < behind.Length; i++)
        {
            behind[i] = fill.At(pixels.U[i], pixels.V[i]) * pixels.Falloff[i];
        }

        sampled = SoftEdge.Samples(region.At);
        sampledBehind = SoftEdge.Samples(fill.At);
    }

    /// <inheritdoc/>
    public override bool CarriesLight => false;

    /// <inheritdoc/>
    public override void Apply(float[] lux, MotionCourse course, double exponent)
    {
        var gone = course.MovingShare;
        var (index, part) = (pixels.Index, pixels.Part);
        for (var i = 0; i < index.Length; i++)
        {
            var there = lux[index[i]];
            var mean = gone >= 1 ? behind[i] : (float)LightPower.Mean(there, behind[i], gone, exponent);
            lux[index[i]] = there + (part[i] * (mean - there));
        }
    }

    /// <inheritdoc/>
    public override RegionTrace Trace(MotionCourse course, double exponent, Func<double, double> density)
    {
        var trace = new DifferenceTrace(density);
        for (var i = 0; i < sampled.Length; i++)
        {
            trace.Add(sampledBehind[i], sampled[i], LightPower.Mean(sampled[i], sampledBehind[i], course.MovingShare, exponent));
        }

        return trace.Result();
    }
}
