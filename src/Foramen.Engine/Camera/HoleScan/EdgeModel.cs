using Foramen.Engine.Quantities;

namespace Foramen.Engine.Camera;

/// <summary>
/// A blurred edge all around a hole: outside light with a slope, inside light, and between them the integral of a Gaussian across an outline
/// ρ(θ) = R + Σ aₖ cos kθ + bₖ sin kθ, k from 2 (k = 1 is a shift of the middle). Blurring a disc draws its half-way level inwards by σ²/2ρ (second order of the
/// convolution of a curved edge with a Gaussian), which is put back.
/// </summary>
internal sealed class EdgeModel
{
    // Places of the unknowns.
    private const int CentreX = 0, CentreY = 1, Radius = 2, Blur = 3, Outside = 4, Step = 5, SlopeX = 6, SlopeY = 7, Shape = 8;

    // A pixel is a square of 1/12 variance each way; a sharper edge cannot be seen.
    private const double LeastBlur = 0.25;

    // Beyond so many standard deviations of the blur only the two levels and the slope are seen.
    private const double FarFromEdge = 4.5;

    private readonly double[] unknowns;
    private readonly int order;


    private EdgeModel(double[] unknowns, int order)
    {
        (this.unknowns, this.order) = (unknowns, order);
        for (var i = Shape; i < unknowns.Length; i++)
        {
            Reach += Math.Abs(unknowns[i]);
        }
    }

    /// <summary>Unknowns.</summary>
    public int Count => unknowns.Length;

    /// <summary>Middle, pixels from the left.</summary>
    public double X => unknowns[CentreX];

    /// <summary>Middle, pixels from the top.</summary>
    public double Y => unknowns[CentreY];

    /// <summary>Mean radius, pixels.</summary>
    public double MeanRadius => unknowns[Radius];

    /// <summary>How far the outline can be from the mean radius, at most, pixels.</summary>
    public double Reach { get; }

    /// <summary>Standard deviation of the blur, pixels.</summary>
    public double Sigma => unknowns[Blur];

    /// <summary>Light inside less light outside.</summary>
    public double Contrast => unknowns[Step];

    /// <summary>Where the mean radius stands among the unknowns.</summary>
    public static int RadiusPlace => Radius;

    /// <summary>A first guess.</summary>
    public static EdgeModel From(HoleCandidate candidate, double outside, double inside)
    {
        var radius = candidate.Diameter / 2;
        var order = radius < 8 ? 3 : radius < 16 ? 4 : 6;
        var unknowns = new double[Shape + (2 * (order - 1))];
        (unknowns[CentreX], unknowns[CentreY], unknowns[Radius], unknowns[Blur]) = (candidate.X, candidate.Y, radius, 1);
        (unknowns[Outside], unknowns[Step]) = (outside, inside - outside);
        var ellipse = (candidate.LongAxis - candidate.ShortAxis) / 2;
        (unknowns[Shape], unknowns[Shape + 1]) = (ellipse * Math.Cos(2 * candidate.Direction), ellipse * Math.Sin(2 * candidate.Direction));
        return new EdgeModel(unknowns, order);
    }

    /// <summary>The outline's radius in a direction, pixels; radians from the right, downwards.</summary>
    public double RadiusAt(double angle)
    {
        var radius = unknowns[Radius];
        for (var k = 2; k <= order; k++)
        {
            radius += (unknowns[Shape + (2 * (k - 2))] * Math.Cos(k * angle)) + (unknowns[Shape + (2 * (k - 2)) + 1] * Math.Sin(k * angle));
        }

        return radius;
    }

    /// <summary>The light of a pixel.</summary>
    public double LightAt(double x, double y)
    {
        Span<double> unused = stackalloc double[unknowns.Length];
        LightAt(x, y, unused, out var light);
        return light;
    }

    /// <summary>The light of a pixel, and its derivatives by the unknowns.</summary>
    /// <param name="x">Pixels from the left.</param>
    /// <param name="y">Pixels from the top.</param>
    /// <param name="derivatives">Room for one an unknown; filled for the unknowns that are returned.</param>
    /// <param name="light">The light.</param>
    /// <returns>The unknowns that this pixel tells of: all near the edge, else the levels and the slope.</returns>
    public (int First, int End) LightAt(double x, double y, Span<double> derivatives, out double light)
    {
        var (dx, dy) = (x - unknowns[CentreX], y - unknowns[CentreY]);
        var r = Math.Max(1e-6, Math.Sqrt((dx * dx) + (dy * dy)));
        var (sigma, step) = (unknowns[Blur], unknowns[Step]);
        var slope = (unknowns[SlopeX] * dx) + (unknowns[SlopeY] * dy);
        derivatives[Outside] = 1;
        (derivatives[SlopeX], derivatives[SlopeY]) = (dx, dy);
        var bendMost = sigma * sigma / (2 * Math.Max(1, unknowns[Radius] - Reach));
        if (Math.Abs(r - unknowns[Radius]) > Reach + bendMost + (FarFromEdge * sigma))
        {
            derivatives[Step] = r < unknowns[Radius] ? 1 : 0;
            light = unknowns[Outside] + slope + (step * derivatives[Step]);
            return (Outside, SlopeY + 1);
        }

        var (radius, turn) = Outline(dx / r, dy / r, derivatives);
        var bend = Math.Max(1, radius);
        var t = (radius - (sigma * sigma / (2 * bend)) - r) / sigma;
        var density = Math.Exp(-t * t / 2) / Math.Sqrt(2 * Math.PI);
        var byRadius = step * density / sigma;
        derivatives[CentreX] = (byRadius * ((dx / r) + (turn * dy / (r * r)))) - unknowns[SlopeX];
        derivatives[CentreY] = (byRadius * ((dy / r) - (turn * dx / (r * r)))) - unknowns[SlopeY];
        derivatives[Radius] = byRadius;
        derivatives[Blur] = -step * density * ((t / sigma) + (1 / bend));
        derivatives[Step] = NormalTable.Below(t);
        for (var i = Shape; i < unknowns.Length; i++)
        {
            derivatives[i] *= byRadius;
        }

        light = unknowns[Outside] + slope + (step * derivatives[Step]);
        return (0, unknowns.Length);
    }

    /// <summary>The model a step further.</summary>
    public EdgeModel Moved(double[] step)
    {
        var moved = (double[])unknowns.Clone();
        for (var i = 0; i < moved.Length; i++)
        {
            moved[i] += step[i];
        }

        moved[Blur] = Math.Clamp(moved[Blur], LeastBlur, Math.Max(LeastBlur, unknowns[Radius]));
        moved[Radius] = Math.Max(2, moved[Radius]);
        return new EdgeModel(moved, order);
    }

    // Radius of the outline and its change with the angle, in a direction given by cosine and sine; the waves themselves go where the shape's derivatives stand.
    private (double Radius, double Turn) Outline(double cos, double sin, Span<double> waves)
    {
        var (radius, turn) = (unknowns[Radius], 0.0);
        var (cosK, sinK) = (cos, sin);
        for (var (k, at) = (2, Shape); k <= order; k++, at += 2)
        {
            (cosK, sinK) = ((cosK * cos) - (sinK * sin), (sinK * cos) + (cosK * sin));
            radius += (unknowns[at] * cosK) + (unknowns[at + 1] * sinK);
            turn += k * ((unknowns[at + 1] * cosK) - (unknowns[at] * sinK));
            (waves[at], waves[at + 1]) = (cosK, sinK);
        }

        return (radius, turn);
    }
}
