using MathNet.Numerics;

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

    private readonly double[] unknowns;
    private readonly int order;

    private EdgeModel(double[] unknowns, int order) => (this.unknowns, this.order) = (unknowns, order);

    /// <summary>Unknowns.</summary>
    public int Count => unknowns.Length;

    /// <summary>Middle, pixels from the left.</summary>
    public double X => unknowns[CentreX];

    /// <summary>Middle, pixels from the top.</summary>
    public double Y => unknowns[CentreY];

    /// <summary>Mean radius, pixels.</summary>
    public double MeanRadius => unknowns[Radius];

    /// <summary>Standard deviation of the blur, pixels.</summary>
    public double Sigma => unknowns[Blur];

    /// <summary>Light inside less light outside.</summary>
    public double Contrast => unknowns[Step];

    /// <summary>Light outside, at the middle.</summary>
    public double OutsideLight => unknowns[Outside];

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

    /// <summary>The light of a pixel, and its derivatives by the unknowns if there is room for them.</summary>
    public double LightAt(double x, double y, Span<double> derivatives)
    {
        var (dx, dy) = (x - unknowns[CentreX], y - unknowns[CentreY]);
        var r = Math.Max(1e-6, double.Hypot(dx, dy));
        var (cos, sin) = (dx / r, dy / r);
        var (radius, slope) = (unknowns[Radius], 0.0);
        var (cosK, sinK) = (cos, sin);
        for (var k = 2; k <= order; k++)
        {
            (cosK, sinK) = ((cosK * cos) - (sinK * sin), (sinK * cos) + (cosK * sin));
            var (a, b) = (unknowns[Shape + (2 * (k - 2))], unknowns[Shape + (2 * (k - 2)) + 1]);
            radius += (a * cosK) + (b * sinK);
            slope += k * ((b * cosK) - (a * sinK));
            if (!derivatives.IsEmpty)
            {
                (derivatives[Shape + (2 * (k - 2))], derivatives[Shape + (2 * (k - 2)) + 1]) = (cosK, sinK);
            }
        }

        var sigma = unknowns[Blur];
        var bend = Math.Max(1, radius);
        var t = (radius - (sigma * sigma / (2 * bend)) - r) / sigma;
        var part = t < -6 ? 0 : t > 6 ? 1 : 0.5 * SpecialFunctions.Erfc(-t / Math.Sqrt(2));
        if (!derivatives.IsEmpty)
        {
            var density = Math.Abs(t) > 6 ? 0 : Math.Exp(-t * t / 2) / Math.Sqrt(2 * Math.PI);
            var byRadius = unknowns[Step] * density / sigma;
            derivatives[CentreX] = (byRadius * (cos + (slope * sin / r))) - unknowns[SlopeX];
            derivatives[CentreY] = (byRadius * (sin - (slope * cos / r))) - unknowns[SlopeY];
            derivatives[Radius] = byRadius;
            derivatives[Blur] = -unknowns[Step] * density * ((t / sigma) + (1 / bend));
            derivatives[Outside] = 1;
            derivatives[Step] = part;
            (derivatives[SlopeX], derivatives[SlopeY]) = (dx, dy);
            for (var i = Shape; i < unknowns.Length; i++)
            {
                derivatives[i] *= byRadius;
            }
        }

        return unknowns[Outside] + (unknowns[SlopeX] * dx) + (unknowns[SlopeY] * dy) + (unknowns[Step] * part);
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
}
