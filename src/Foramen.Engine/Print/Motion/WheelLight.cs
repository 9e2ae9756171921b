using Foramen.Engine.Scene;

namespace Foramen.Engine.Print;

/// <summary>The light of a turning wheel: each point sees, ring by ring, what is carried past it. What the sheet does not see of a ring counts as the mean of the rest.</summary>
internal sealed class WheelLight : IRegionLight
{
    private const int MostRings = 600;
    private const int MostSamples = 3000;
    private const int RingsInTrace = 24;
    private const int SamplesInTrace = 180;

    private readonly int rings;
    private readonly int samples;
    private readonly float[] still;
    private readonly float[] moved;

    public WheelLight(RegionOnSheet region, WheelTurns wheel, MotionCourse course)
    {
        var (width, height) = region.Size;
        var across = Math.Max(width, height);
        rings = (int)Math.Clamp(Math.Ceiling(across / 2), 4, MostRings);
        samples = (int)Math.Clamp(Math.Ceiling(Math.PI * across), 16, MostSamples);
        still = new float[rings * samples];
        moved = new float[rings * samples];
        var shifts = Shifts(wheel, course);
        var average = new RingAverage(samples);
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
            average.Read(line, shifts, moved.AsSpan(ring * samples, samples));
        }

        Edge = 2 / across;
    }

    /// <summary>Half a pixel to each side of the rim, as a part of the radius.</summary>
    private double Edge { get; }

    /// <inheritdoc/>
    public float At(double u, double v)
    {
        var (x, y) = (2 * (u - 0.5), 2 * (v - 0.5));
        var outwards = Math.Clamp((Math.Sqrt((x * x) + (y * y)) * rings) - 0.5, 0, rings - 1);
        var around = Math.Atan2(y, x) / (2 * Math.PI) * samples;
        around += around < 0 ? samples : 0;
        var (ring, sample) = ((int)outwards, (int)around % samples);
        var (outPart, aroundPart) = ((float)(outwards - ring), (float)(around - (int)around));
        float Ring(int at)
        {
            var (a, b) = (moved[(at * samples) + sample], moved[(at * samples) + ((sample + 1) % samples)]);
            return a + (aroundPart * (b - a));
        }

        var inner = Ring(ring);
        return inner + (outPart * (Ring(Math.Min(ring + 1, rings - 1)) - inner));
    }

    /// <inheritdoc/>
    public double Part(double u, double v)
    {
        var (x, y) = (2 * (u - 0.5), 2 * (v - 0.5));
        return Math.Clamp(((1 - Math.Sqrt((x * x) + (y * y))) / Edge) + 0.5, 0, 1);
    }

    /// <inheritdoc/>
    public RegionTrace Trace(Func<float, double> density)
    {
        var trace = new DetailTrace();
        var (ringStep, sampleStep) = (Math.Max(1, rings / RingsInTrace), Math.Max(1, samples / SamplesInTrace));
        var points = samples / sampleStep;
        var (standing, moving) = (new double[points], new double[points]);
        for (var ring = ringStep / 2; ring < rings; ring += ringStep)
        {
            for (var i = 0; i < points; i++)
            {
                var index = (ring * samples) + (i * sampleStep);
                (standing[i], moving[i]) = (density(still[index]), density(moved[index]));
            }

            trace.Add(standing, moving, ring + 0.5);
        }

        return trace.Result();
    }

    private List<RingShift> Shifts(WheelTurns wheel, MotionCourse course)
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
