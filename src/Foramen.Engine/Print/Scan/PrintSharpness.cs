using System.Numerics;
using MathNet.Numerics.IntegralTransforms;

namespace Foramen.Engine.Print;

/// <summary>
/// How sharp a print is against its prediction. Prediction and print are cut into squares under a window (Welch 1967) and the transfer from one to the other is estimated at each
/// fineness as Σ conj(P)·M / Σ |P|² (the H1 estimator of Bendat and Piersol, Random Data), which noise on the print does not bias. Its fall with fineness is put into one number:
/// the spread of a Gaussian that would soften the prediction as much, exp(−2π²σ²f²). Immutable.
/// </summary>
public sealed class PrintSharpness
{
    private const double LeastCoherence = 0.25;
    private const int LeastPoints = 4;
    private const int MostAcross = 128;
    private const int LeastAcross = 32;

    private PrintSharpness(double variance, double varianceSd) => (VarianceSquareMillimetres, VarianceSdSquareMillimetres) = (variance, varianceSd);

    /// <summary>σ² of the softening, mm²; negative where the print is sharper than predicted.</summary>
    public double VarianceSquareMillimetres { get; }

    /// <summary>How well it is known (1 sd), mm².</summary>
    public double VarianceSdSquareMillimetres { get; }

    /// <summary>σ of the softening, mm; null where the print is as sharp as predicted, or sharper.</summary>
    public double? ExtraSpreadMillimetres => VarianceSquareMillimetres > VarianceSdSquareMillimetres ? Math.Sqrt(VarianceSquareMillimetres) : null;

    internal static PrintSharpness? Of(PrintExposures exposures, double pitchMillimetres)
    {
        var inner = Math.Min(exposures.Width, exposures.Height) - (2 * exposures.Rim);
        var side = MostAcross;
        while (side > inner / 5 && side > LeastAcross)
        {
            side /= 2;
        }

        return inner < side ? null : Sums(exposures, side) is { } sums ? Fit(sums, side, pitchMillimetres) : null;
    }

    // Prediction and print are real, so one transform of both, as the parts of a complex number, gives the two spectra (Press et al., Numerical Recipes, two real
    // transforms at once).
    private static (double[] Power, double[] Cross, double[] Seen)? Sums(PrintExposures exposures, int side)
    {
        var rings = side / 2;
        var (power, cross, seen) = (new double[rings], new double[rings], new double[rings]);
        var (wholeRight, wholeDown) = ((int)Math.Round(exposures.Right), (int)Math.Round(exposures.Down));
        var (across, down) = (Phases(exposures.Right - wholeRight, side), Phases(exposures.Down - wholeDown, side));
        var (expected, real, square) = (exposures.Predicted(), exposures.Seen(), new Complex[side * side]);
        var (ring, window) = (Rings(side), Window(side));
        var squares = 0;
        for (var top = exposures.Rim; top + side <= exposures.Height - exposures.Rim; top += side)
        {
            for (var left = exposures.Rim; left + side <= exposures.Width - exposures.Rim; left += side)
            {
                if (!Cut(square, side, window, exposures, expected, real, (left, top), (left + wholeRight, top + wholeDown)))
                {
                    continue;
                }

                squares++;
                for (var i = 0; i < square.Length; i++)
                {
                    if (ring[i] < 1 || ring[i] >= rings)
                    {
                        continue;
                    }

                    var (row, column) = (i / side, i % side);
                    var (z, opposite) = (square[i], square[(((side - row) % side) * side) + ((side - column) % side)]);
                    var p = new Complex((z.Real + opposite.Real) / 2, (z.Imaginary - opposite.Imaginary) / 2);

                    // A shift by part of a pixel turns the phase; turned back, it does not count as softness.
                    var m = new Complex((z.Imaginary + opposite.Imaginary) / 2, (opposite.Real - z.Real) / 2) * across[column] * down[row];
                    power[ring[i]] += (p.Real * p.Real) + (p.Imaginary * p.Imaginary);
                    seen[ring[i]] += (m.Real * m.Real) + (m.Imaginary * m.Imaginary);
                    cross[ring[i]] += (p.Real * m.Real) + (p.Imaginary * m.Imaginary);
                }
            }
        }

        return squares == 0 ? null : (power, cross, seen);
    }

    // ln of the ratio against −2π²f²: the slope is σ², the offset takes up a print that is lighter or darker throughout.
    private static PrintSharpness? Fit((double[] Power, double[] Cross, double[] Seen) sums, int side, double pitch)
    {
        var kept = new List<(double X, double Y, double Weight)>();
        for (var ring = 1; ring < sums.Power.Length; ring++)
        {
            var coherence = sums.Cross[ring] <= 0 ? 0 : sums.Cross[ring] * sums.Cross[ring] / (sums.Power[ring] * sums.Seen[ring]);
            if (!(coherence >= LeastCoherence))
            {
                break;
            }

            // The variance of a ratio's ln is (1 − γ²)/(2 n γ²) with n squares and frequencies averaged, which grow with the ring.
            var f = ring / (side * pitch);
            var weight = ring * coherence / Math.Max(0.01, 1 - coherence);
            kept.Add((-2 * Math.PI * Math.PI * f * f, Math.Log(sums.Cross[ring] / sums.Power[ring]), weight));
        }

        if (kept.Count < LeastPoints)
        {
            return null;
        }

        var all = kept.Sum(one => one.Weight);
        var (x, y) = (kept.Sum(one => one.Weight * one.X) / all, kept.Sum(one => one.Weight * one.Y) / all);
        var spread = kept.Sum(one => one.Weight * (one.X - x) * (one.X - x));
        var variance = kept.Sum(one => one.Weight * (one.X - x) * (one.Y - y)) / spread;
        var offset = y - (variance * x);
        var rest = kept.Sum(one => one.Weight * Math.Pow(one.Y - offset - (variance * one.X), 2)) / (kept.Count - 2);
        return new PrintSharpness(variance, Math.Sqrt(rest / spread));
    }

    // Less their means, under Hann's window, transformed by rows and then by columns; false where something in it is unknown.
    private static bool Cut(
        Complex[] square, int side, double[] window, PrintExposures exposures, float[] expected, float[] real, (int Left, int Top) at, (int Left, int Top) seenAt)
    {
        if (seenAt.Left < 0 || seenAt.Top < 0 || seenAt.Left + side > exposures.Width || seenAt.Top + side > exposures.Height)
        {
            return false;
        }

        var (sumOfExpected, sumOfReal) = (0.0, 0.0);
        for (var row = 0; row < side; row++)
        {
            var (from, seenFrom) = (((at.Top + row) * exposures.Width) + at.Left, ((seenAt.Top + row) * exposures.Width) + seenAt.Left);
            for (var column = 0; column < side; column++)
            {
                var (p, m) = (expected[from + column], real[seenFrom + column]);
                square[(row * side) + column] = new Complex(p, m);
                sumOfExpected += p;
                sumOfReal += m;
            }
        }

        if (double.IsNaN(sumOfExpected) || double.IsNaN(sumOfReal))
        {
            return false;
        }

        var (meanOfExpected, meanOfReal) = (sumOfExpected / square.Length, sumOfReal / square.Length);
        for (var i = 0; i < square.Length; i++)
        {
            square[i] = new Complex((square[i].Real - meanOfExpected) * window[i], (square[i].Imaginary - meanOfReal) * window[i]);
        }

        var line = new Complex[side];
        for (var row = 0; row < side; row++)
        {
            Array.Copy(square, row * side, line, 0, side);
            Fourier.Forward(line, FourierOptions.Matlab);
            Array.Copy(line, 0, square, row * side, side);
        }

        for (var column = 0; column < side; column++)
        {
            for (var row = 0; row < side; row++)
            {
                line[row] = square[(row * side) + column];
            }

            Fourier.Forward(line, FourierOptions.Matlab);
            for (var row = 0; row < side; row++)
            {
                square[(row * side) + column] = line[row];
            }
        }

        return true;
    }

    private static double[] Window(int side) => [.. Enumerable.Range(0, side * side).Select(i => Hann(i % side, side) * Hann(i / side, side))];

    private static int[] Rings(int side) => [.. Enumerable.Range(0, side * side).Select(i => (int)Math.Round(double.Hypot(Signed(i % side, side), Signed(i / side, side))))];

    private static Complex[] Phases(double shift, int side) => [.. Enumerable.Range(0, side).Select(i => Complex.FromPolarCoordinates(1, 2 * Math.PI * Signed(i, side) * shift / side))];

    private static double Hann(int i, int side) => 0.5 - (0.5 * Math.Cos(2 * Math.PI * (i + 0.5) / side));

    private static int Signed(int index, int side) => index <= side / 2 ? index : index - side;
}
