using Foramen.Engine.Scene;

namespace Foramen.Engine.Print;

/// <summary>A turning wheel: each point sees, ring by ring, what is carried past it. What the sheet does not see of a ring counts as the mean of the rest.</summary>
internal sealed class PreparedWheel : PreparedRegion
{
    private const int MostRings = 600;
    private const int MostSamples = 3000;
    private const int RingsInTrace = 24;
    private const int SamplesInTrace = 180;

    private readonly WheelTurns wheel;
    private readonly int rings;
    private readonly int samples;
    private readonly float[] still;
    private readonly RegionPixels pixels;
    private readonly float[] outwards;
    private readonly float[] around;
    private readonly float[] raised;
    private readonly float[] moved;
    private readonly float[] light;
    private double raisedBy = double.NaN;

    public PreparedWheel(RegionOnSheet region, WheelTurns wheel)
        : base(region)
    {
        this.wheel = wheel;
        var (width, height) = region.Size;
        var across = Math.Max(width, height);
        rings = (int)Math.Clamp(Math.Ceiling(across / 2), 4, MostRings);
        samples = (int)Math.Clamp(Math.Ceiling(Math.PI * across), 16, MostSamples);
        still = new float[rings * samples];
        raised = new float[still.Length];
        moved = new float[still.Length];
        var directions = Enumerable.Range(0, samples).Select(i => Math.SinCos(2 * Math.PI * i / samples)).ToArray();
        for (var ring = 0; ring < rings; ring++)
        {
            var line = still.AsSpan(ring * samples, samples);
            var radius = (ring + 0.5) / rings / 2;
            for (var i = 0; i < samples; i++)
            {
                line[i] = region.At(0.5 + (radius * directions[i].Cos), 0.5 + (radius * directions[i].Sin));
            }

            KnownMean.Fill(line);
        }

        // Half a pixel to each side of the rim is mixed with what is around.
        var edge = 2 / across;
        pixels = region.Pixels((u, v) => Math.Clamp(((1 - (2 * double.Hypot(u - 0.5, v - 0.5))) / edge) + 0.5, 0, 1));
        outwards = new float[pixels.Count];
        around = new float[pixels.Count];
        light = new float[pixels.Count];
        for (var i = 0; i < pixels.Count; i++)
        {
            var (x, y) = (2 * (pixels.U[i] - 0.5), 2 * (pixels.V[i] - 0.5));
            outwards[i] = (float)Math.Clamp((double.Hypot(x, y) * rings) - 0.5, 0, rings - 1);
            var turn = Math.Atan2(y, x) / (2 * Math.PI);
            around[i] = (float)((turn - Math.Floor(turn)) * samples);
        }
    }

    /// <inheritdoc/>
    public override bool CarriesLight => true;

    /// <inheritdoc/>
    public override void Apply(float[] lux, MotionCourse course, double exponent)
    {
        Average(course, exponent);
        for (var i = 0; i < light.Length; i++)
        {
            var ring = (int)outwards[i];
            var sample = Math.Min((int)around[i], samples - 1);
            var next = sample + 1 == samples ? 0 : sample + 1;
            var (outPart, aroundPart) = (outwards[i] - ring, around[i] - sample);
            var inner = ring * samples;
            var outer = Math.Min(ring + 1, rings - 1) * samples;
            var near = moved[inner + sample] + (aroundPart * (moved[inner + next] - moved[inner + sample]));
            var far = moved[outer + sample] + (aroundPart * (moved[outer + next] - moved[outer + sample]));
            light[i] = near + (outPart * (far - near));
        }

        LightPower.Root(light, exponent);
        pixels.Put(lux, light);
    }

    /// <inheritdoc/>
    public override RegionTrace Trace(MotionCourse course, double exponent, Func<double, double> density)
    {
        Average(course, exponent);
        var trace = new DetailTrace();
        var (ringStep, sampleStep) = (Math.Max(1, rings / RingsInTrace), Math.Max(1, samples / SamplesInTrace));
        var points = samples / sampleStep;
        var (standing, moving) = (new double[points], new double[points]);
        for (var ring = ringStep / 2; ring < rings; ring += ringStep)
        {
            for (var i = 0; i < points; i++)
            {
                var index = (ring * samples) + (i * sampleStep);
                (standing[i], moving[i]) = (density(still[index]), density(Math.Pow(moved[index], 1 / exponent)));
            }

            trace.Add(standing, moving, ring + 0.5);
        }

        return trace.Result();
    }

    private void Average(MotionCourse course, double exponent)
    {
        if (raisedBy != exponent)
        {
            LightPower.Raise(still, exponent, raised);
            raisedBy = exponent;
        }

        var shifts = Shifts(course);
        var average = new RingAverage(samples);
        for (var ring = 0; ring < rings; ring++)
        {
            average.Read(raised.AsSpan(ring * samples, samples), shifts, moved.AsSpan(ring * samples, samples));
        }
    }

    private List<RingShift> Shifts(MotionCourse course)
    {
        var shifts = new List<RingShift>(course.Spells.Count);
        var at = 0.0;
        foreach (var spell in course.Spells)
        {
            var carried = spell.Moves ? wheel.DegreesIn(spell.Time) / 360 * samples * (wheel.Clockwise ? 1 : -1) : 0;
            if (spell.Worth > 0)
            {
                shifts.Add(new RingShift(at, at + carried, spell.Worth));
            }

            at += carried;
        }

        return shifts;
    }
}
