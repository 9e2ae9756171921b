using Foramen.Engine.Camera;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;

namespace Foramen.Engine.Print;

/// <summary>A lamp that goes along the middle of a region. Its round spot is before a place for as long as its chord there takes; its light is added to the background's.</summary>
internal sealed class PreparedStreak : PreparedRegion
{
    private const int InTrace = 64;

    private readonly PassingLamp lamp;
    private readonly Length focalDistance;
    private readonly Length spot;
    private readonly double added;
    private readonly RegionPixels pixels;
    private readonly float[] sampled;

    public PreparedStreak(RegionOnSheet region, PassingLamp lamp, PinholeCamera camera, Length spot)
        : base(region)
    {
        var wide = Math.Max(spot.Millimetres, region.PitchMillimetres) / region.PitchMillimetres / region.Size.Height;
        (this.lamp, this.spot, focalDistance) = (lamp, spot, camera.FocalDistance);
        added = lamp.InSpot(camera.Hole.Diameter, spot).Lux;
        pixels = region.Pixels((_, v) => Math.Sqrt(Math.Max(0, 1 - Math.Pow((v - 0.5) / (wide / 2), 2))));
        sampled = [.. Enumerable.Range(0, InTrace).Select(i => region.At((i + 0.5) / InTrace, 0.5))];
    }

    /// <inheritdoc/>
    public override bool CarriesLight => false;

    /// <inheritdoc/>
    public override void Apply(float[] lux, MotionCourse course, double exponent)
    {
        var (index, chord, falloff) = (pixels.Index, pixels.Part, pixels.Falloff);
        var most = Share(course);
        for (var i = 0; i < index.Length; i++)
        {
            var ground = lux[index[i]];
            lux[index[i]] = (float)LightPower.Mean(ground, ground + (added * falloff[i]), most * chord[i], exponent);
        }
    }

    /// <inheritdoc/>
    public override RegionTrace Trace(MotionCourse course, double exponent, Func<double, double> density)
    {
        var trace = new DifferenceTrace(density);
        foreach (var light in sampled)
        {
            trace.Add(light, light + added, LightPower.Mean(light, light + added, Share(course), exponent));
        }

        return trace.Result();
    }

    private double Share(MotionCourse course)
        => Math.Min(course.MovingShare, lamp.OnPoint(spot, focalDistance, course.Exposure).Seconds / course.Exposure.Seconds);
}
