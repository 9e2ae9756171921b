using MathNet.Numerics;

namespace Foramen.Engine.Exposure;

/// <summary>
/// A fixed sequence of points that fill a many-dimensional normal distribution evenly: Halton's sequence (Numer. Math. 2, 84, 1960) through the
/// inverse normal integral. Repeatable, so that odds do not flicker from one call to the next.
/// </summary>
internal static class NormalSequence
{
    // Beyond so many dimensions the errors repeat the first ones, which no sheet has tones enough to notice.
    private static readonly int[] Bases = [2, 3, 5, 7, 11, 13, 17, 19, 23, 29, 31, 37];

    /// <summary>A standard normal number.</summary>
    /// <param name="point">The point, from 0.</param>
    /// <param name="dimension">Its dimension, from 0.</param>
    public static double At(int point, int dimension)
    {
        var radix = Bases[dimension % Bases.Length];
        var (fraction, value) = (1.0, 0.0);
        for (var rest = point + 1; rest > 0; rest /= radix)
        {
            fraction /= radix;
            value += fraction * (rest % radix);
        }

        return -Math.Sqrt(2) * SpecialFunctions.ErfcInv(2 * value);
    }
}
