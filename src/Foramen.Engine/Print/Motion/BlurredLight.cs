using Foramen.Engine.Scene;

namespace Foramen.Engine.Print;

/// <summary>The light of what sways or flows: drawn out while it moves, as it is while it stands. Towards the region's edges it passes over into what is around.</summary>
internal sealed class BlurredLight : IRegionLight
{
    private const int MostCells = 640;

    // More cells to the reach of a swing would cost time and show nothing: what is drawn out over them has no finer detail.
    private const double MostReach = 24;
    private const double Soft = 0.04;
    private const int LinesInTrace = 24;

    private readonly RegionRaster still;
    private readonly RegionRaster moved;
    private readonly bool upright;

    private BlurredLight(RegionRaster still, RegionRaster drawnOut, double moving, bool upright)
    {
        this.still = still;
        this.upright = upright;
        var mixed = new float[still.Values.Length];
        for (var i = 0; i < mixed.Length; i++)
        {
            mixed[i] = (float)(((1 - moving) * still.Values[i]) + (moving * drawnOut.Values[i]));
        }

        moved = still.With(mixed);
    }

    /// <summary>What sways.</summary>
    public static BlurredLight Of(RegionOnSheet region, SwaysInPlace sway, MotionCourse course)
    {
        var (width, height) = region.Size;
        var still = RegionRaster.Of(region, sway.ReachOfWidth > 0 ? (int)Math.Clamp(MostReach / sway.ReachOfWidth, 16, MostCells) : MostCells);
        var swings = course.Moving.Seconds / sway.Period.Seconds;
        var across = SwayKernel.Of(sway.ReachOfWidth * still.Columns, swings);
        var down = SwayKernel.Of(sway.ReachOfWidth * width / height * still.Rows, swings);
        var drawn = still
            .EachRow((row, into) => SwayKernel.Smooth(row, across, into)).Turned()
            .EachRow((row, into) => SwayKernel.Smooth(row, down, into)).Turned();
        return new BlurredLight(still, drawn, course.MovingShare, false);
    }

    /// <summary>What flows: more of the same kind follows, as if the region were mirrored at its ends.</summary>
    public static BlurredLight Of(RegionOnSheet region, FlowsThrough flow, MotionCourse course)
    {
        var still = RegionRaster.Of(region, MostCells);
        var lines = flow.Upright ? still.Turned() : still;
        var way = course.Moving.Seconds / flow.Crossing.Seconds * lines.Columns;
        var average = new RingAverage(2 * lines.Columns);
        var (ring, means) = (new float[2 * lines.Columns], new float[2 * lines.Columns]);
        var drawn = lines.EachRow((row, into) =>
        {
            row.CopyTo(ring);
            row.CopyTo(ring.AsSpan(row.Length));
            ring.AsSpan(row.Length).Reverse();
            average.Read(ring, [new RingShift(-way / 2, way / 2, 1)], means);
            means.AsSpan(0, row.Length).CopyTo(into);
        });
        return new BlurredLight(still, flow.Upright ? drawn.Turned() : drawn, course.MovingShare, flow.Upright);
    }

    /// <inheritdoc/>
    public float At(double u, double v) => moved.At(u, v);

    /// <inheritdoc/>
    public double Part(double u, double v) => Math.Clamp(Math.Min(Math.Min(u, 1 - u), Math.Min(v, 1 - v)) / Soft, 0, 1);

    /// <inheritdoc/>
    public RegionTrace Trace(Func<float, double> density)
    {
        var trace = new DetailTrace();
        var (lines, points) = (upright ? still.Columns : still.Rows, upright ? still.Rows : still.Columns);
        var (standing, moving) = (new double[points], new double[points]);
        for (var line = 0; line < LinesInTrace; line++)
        {
            var across = (line + 0.5) / LinesInTrace;
            for (var i = 0; i < points; i++)
            {
                var along = (i + 0.5) / points;
                var (u, v) = upright ? (across, along) : (along, across);
                (standing[i], moving[i]) = (density(still.At(u, v)), density(moved.At(u, v)));
            }

            trace.Add(standing, moving, lines);
        }

        return trace.Result();
    }
}
