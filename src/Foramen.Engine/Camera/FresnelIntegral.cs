using System.Numerics.Tensors;
using MathNet.Numerics.Integration;

namespace Foramen.Engine.Camera;

/// <summary>
/// Diffraction at a round opening in a thin screen, on the axis of a distant point of light, in Fresnel's approximation:
/// U(u, v) = ∫₀¹ J0(v x) exp(i u x²/2) x dx, with v = k a r/z for the distance r from the middle of the spot and u = k a² (1/z + 1/s).
/// The integral is that of Born and Wolf, Principles of Optics, section 8.8 (there for a lens out of focus; a bare hole is one with the focus at
/// infinity). Its values depend on the two numbers only, so one grid of v serves all wavelengths and diameters.
/// </summary>
internal sealed class FresnelIntegral
{
    /// <summary>Step of the grid of v. |U|² repeats no faster than 2v, so this is twenty-five samples to a fringe.</summary>
    public const double Step = 0.125;

    private readonly double[] squaredNodes;
    private readonly double[] weights;
    private readonly double[][] bessel;
    private readonly double largestU;

    /// <summary>Prepares the grid.</summary>
    /// <param name="largestU">Largest u that will be asked for.</param>
    /// <param name="largestV">End of the grid of v.</param>
    public FresnelIntegral(double largestU, double largestV)
    {
        this.largestU = largestU;
        Count = (int)Math.Ceiling(largestV / Step) + 1;

        // Gauss's rule needs half a node for each radian of the fastest phase over a half interval, and a few to converge.
        var nodes = 24 + (int)Math.Ceiling((largestV + largestU) / 4);
        var rule = new GaussLegendreRule(0, 1, nodes);
        var places = rule.Abscissas; // copied at each call
        squaredNodes = [.. places.Select(x => x * x)];
        weights = [.. places.Zip(rule.Weights, (x, w) => x * w)];
        var table = new BesselTable(largestV + Step);
        bessel = new double[Count][];
        for (var j = 0; j < Count; j++)
        {
            bessel[j] = new double[nodes];
            for (var i = 0; i < nodes; i++)
            {
                bessel[j][i] = table.At(j * Step * places[i]);
            }
        }
    }

    /// <summary>Samples of v: 0, Step, 2 Step…</summary>
    public int Count { get; }

    /// <summary>|U(u, v)|² on the grid of v; 2∫|U|² v dv over all v is 1 (Parseval).</summary>
    public double[] Intensity(double u)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThan(u, largestU);
        var cosines = new double[weights.Length];
        var sines = new double[weights.Length];
        for (var i = 0; i < weights.Length; i++)
        {
            (sines[i], cosines[i]) = Math.SinCos(u * squaredNodes[i] / 2);
            sines[i] *= weights[i];
            cosines[i] *= weights[i];
        }

        var intensity = new double[Count];
        for (var j = 0; j < Count; j++)
        {
            var real = TensorPrimitives.Dot<double>(bessel[j], cosines);
            var imaginary = TensorPrimitives.Dot<double>(bessel[j], sines);
            intensity[j] = (real * real) + (imaginary * imaginary);
        }

        return intensity;
    }

    /// <summary>2∫₀^v |U|² v dv on the same grid: the energy within v.</summary>
    public static double[] EnergyWithin(double[] intensity)
    {
        double Density(int j) => 2 * intensity[Math.Abs(j)] * j * Step;
        var energy = new double[intensity.Length];
        for (var j = 0; j + 1 < intensity.Length; j++)
        {
            // Cubic through four samples; the integrand is odd about zero, and at the far end the last is repeated.
            var beyond = j + 2 < intensity.Length ? Density(j + 2) : Density(j + 1);
            energy[j + 1] = energy[j] + (Step / 24 * ((13 * (Density(j) + Density(j + 1))) - Density(j - 1) - beyond));
        }

        return energy;
    }
}
