using MathNet.Numerics;

namespace Foramen.Engine.Camera;

/// <summary>
/// J0 on an even grid, between which it is interpolated with its derivative -J1; the error stays below 2e-7. Looking up is some thousand times
/// faster than the library's function, and the diffraction integral asks for ten thousands of values.
/// </summary>
internal sealed class BesselTable
{
    private const double Step = 0.1;

    /// <summary>From here on Hankel's expansion is good to 1e-9 and does not take the library's time, which grows with the argument.</summary>
    private const double FarAway = 25;

    private readonly double[] values;
    private readonly double[] slopes;

    /// <summary>A table from zero to a largest argument.</summary>
    public BesselTable(double largest)
    {
        var count = (int)Math.Ceiling(largest / Step) + 2;
        values = new double[count];
        slopes = new double[count];
        for (var i = 0; i < count; i++)
        {
            values[i] = Bessel(0, i * Step);
            slopes[i] = -Step * Bessel(1, i * Step);
        }
    }

    /// <summary>J0 at an argument from zero to the largest.</summary>
    public double At(double argument)
    {
        var place = argument / Step;
        var i = (int)place;
        var t = place - i;
        var (a, b) = (values[i], values[i + 1]);
        var (da, db) = (slopes[i], slopes[i + 1]);
        var c = (3 * (b - a)) - (2 * da) - db;
        var d = (2 * (a - b)) + da + db;
        return a + (t * (da + (t * (c + (t * d)))));
    }

    private static double Bessel(int order, double x) => x < FarAway ? SpecialFunctions.BesselJ(order, x) : Hankel(order, x);

    /// <summary>Hankel's asymptotic expansion: Abramowitz and Stegun 9.2.5, 9.2.9, 9.2.10; DLMF 10.17.3.</summary>
    private static double Hankel(int order, double x)
    {
        var mu = 4.0 * order * order;
        var (p, q, term) = (1.0, 0.0, 1.0);
        for (var k = 1; k <= 7; k++)
        {
            term *= (mu - (((2 * k) - 1) * ((2 * k) - 1))) / (k * 8 * x);
            var signed = k % 4 < 2 ? term : -term;
            (p, q) = k % 2 == 0 ? (p + signed, q) : (p, q + signed);
        }

        var (sine, cosine) = Math.SinCos(x - (((0.5 * order) + 0.25) * Math.PI));
        return Math.Sqrt(2 / (Math.PI * x)) * ((p * cosine) - (q * sine));
    }
}
