using Foramen.Engine.Camera;
using MathNet.Numerics;

namespace Foramen.Engine.Print;

/// <summary>
/// How unevenly a scan or a photograph is lit along one direction, out of an edge that is paper white all along: a parabola through the ln of its light, which smooth
/// falling off follows and dust does not bend. One where nothing is known.
/// </summary>
public sealed class UnevenLight
{
    private const int Pieces = 24;
    private readonly double[] coefficients;

    private UnevenLight(double[] coefficients) => this.coefficients = coefficients;

    /// <summary>Even light.</summary>
    public static UnevenLight None { get; } = new([0, 0, 0]);

    /// <summary>Light along a white edge.</summary>
    /// <param name="scan">The scan.</param>
    /// <param name="map">From places to pixels.</param>
    /// <param name="edge">The edge, white all along.</param>
    /// <exception cref="Quantities.RefusalException">It reaches beyond the scan.</exception>
    public static UnevenLight Along(ScanImage scan, Homography map, PatchArea edge)
    {
        var (at, ln) = (new double[Pieces], new double[Pieces]);
        for (var i = 0; i < Pieces; i++)
        {
            var (left, right) = (edge.Left + ((edge.Right - edge.Left) * i / Pieces), edge.Left + ((edge.Right - edge.Left) * (i + 1) / Pieces));
            at[i] = ((left + right) / 2) - 0.5;
            ln[i] = Math.Log(Math.Max(1e-4, PatchLight.Of(scan, map, edge with { Left = left, Right = right }).Mean));
        }

        var fit = Fit.Polynomial(at, ln, 2);
        return new UnevenLight([0, fit[1], fit[2]]);
    }

    /// <summary>Light at a place over the light in the middle.</summary>
    /// <param name="u">From the left, 0 to 1.</param>
    public double At(double u) => Math.Exp((coefficients[1] * (u - 0.5)) + (coefficients[2] * (u - 0.5) * (u - 0.5)));
}
