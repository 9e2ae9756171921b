using Foramen.Engine.Scene;

namespace Foramen.Engine.Print;

/// <summary>What sways or flows: drawn out while it moves, as it is while it stands. Towards the region's edges it passes over into what is around.</summary>
internal sealed class PreparedBlur : PreparedRegion
{
    private const int MostCells = 640;

    // More cells to the reach of a swing would cost time and show nothing: what is drawn out over them has no finer detail.
    private const double MostReach = 24;
    private const double Soft = 0.04;
    private const int LinesInTrace = 24;

    private readonly RegionMotion motion;
    private readonly RegionRaster still;
    private readonly double heightOverWidth;
    private readonly bool upright;
    private readonly RegionPixels pixels;
    private readonly float[] light;
    private (double Exponent, double Amount) drawnFor = (double.NaN, double.NaN);
    private RegionRaster? raised;
    private RegionRaster? drawn;

    public PreparedBlur(RegionOnSheet region, RegionMotion motion)
        : base(region)
    {
        this.motion = motion;
        var (width, height) = region.Size;
        heightOverWidth = height / width;
        upright = motion is FlowsThrough { Upright: true };
        var most = motion is SwaysInPlace { ReachOfWidth: > 0 and var reach } ? (int)Math.Clamp(MostReach / reach, 16, MostCells) : MostCells;
        still = RegionRaster.Of(region, most);
        pixels = region.Pixels((u, v) => Math.Clamp(Math.Min(Math.Min(u, 1 - u), Math.Min(v, 1 - v)) / Soft, 0, 1));
        light = new float[pixels.Count];
    }

    /// <inheritdoc/>
    public override bool CarriesLight => true;

    /// <inheritdoc/>
    public override void Apply(float[] lux, MotionCourse course, double exponent)
    {
        var moved = Moved(course, exponent);
        var (u, v) = (pixels.U, pixels.V);
        for (var i = 0; i < light.Length; i++)
        {
            light[i] = moved.At(u[i], v[i]);
        }

        LightPower.Root(light, exponent);
        pixels.Put(lux, light);
    }

    /// <inheritdoc/>
    public override RegionTrace Trace(MotionCourse course, double exponent, Func<double, double> density)
    {
        var moved = Moved(course, exponent);
        var trace = new DetailTrace();
        var points = Math.Min(160, upright ? still.Rows : still.Columns);
        var (standing, moving) = (new double[points], new double[points]);
        for (var line = 0; line < LinesInTrace; line++)
        {
            var across = (line + 0.5) / LinesInTrace;
            for (var i = 0; i < points; i++)
            {
                var along = (i + 0.5) / points;
                var (u, v) = upright ? (across, along) : (along, across);
                (standing[i], moving[i]) = (density(still.At(u, v)), density(Math.Pow(moved.At(u, v), 1 / exponent)));
            }

            trace.Add(standing, moving, 1);
        }

        return trace.Result();
    }

    private RegionRaster Moved(MotionCourse course, double exponent)
    {
        var amount = motion switch
        {
            SwaysInPlace sway => Math.Min(0.5, course.Moving.Seconds / sway.Period.Seconds),
            FlowsThrough flow => course.Moving.Seconds / flow.Crossing.Seconds,
            _ => 0,
        };
        if (raised is null || drawn is null || drawnFor != (exponent, amount))
        {
            raised = still.With(new float[still.Values.Length]);
            LightPower.Raise(still.Values, exponent, raised.Values);
            drawn = motion is SwaysInPlace swaying ? Swayed(raised, swaying, amount) : Flowed(raised, amount);
            drawnFor = (exponent, amount);
        }

        var moving = (float)course.MovingShare;
        var (stood, went, mixed) = (raised.Values, drawn.Values, new float[still.Values.Length]);
        for (var i = 0; i < mixed.Length; i++)
        {
            mixed[i] = stood[i] + (moving * (went[i] - stood[i]));
        }

        return still.With(mixed);
    }

    private RegionRaster Swayed(RegionRaster from, SwaysInPlace sway, double swings)
    {
        var across = SwayKernel.Of(sway.ReachOfWidth * from.Columns, swings);
        var down = SwayKernel.Of(sway.ReachOfWidth / heightOverWidth * from.Rows, swings);
        return from.EachRow((row, into) => SwayKernel.Smooth(row, across, into)).Turned().EachRow((row, into) => SwayKernel.Smooth(row, down, into)).Turned();
    }

    // More of the same kind follows, as if the region were mirrored at its ends.
    private RegionRaster Flowed(RegionRaster from, double crossings)
    {
        var lines = upright ? from.Turned() : from;
        var way = crossings * lines.Columns;
        var average = new RingAverage(2 * lines.Columns);
        var (ring, means) = (new float[2 * lines.Columns], new float[2 * lines.Columns]);
        RingShift[] shifts = [new RingShift(-way / 2, way / 2, 1)];
        var flowed = lines.EachRow((row, into) =>
        {
            row.CopyTo(ring);
            row.CopyTo(ring.AsSpan(row.Length));
            ring.AsSpan(row.Length).Reverse();
            average.Read(ring, shifts, means);
            means.AsSpan(0, row.Length).CopyTo(into);
        });
        return upright ? flowed.Turned() : flowed;
    }
}
