namespace Foramen.Engine.Print;

/// <summary>
/// Where something that swings to and fro is: over whole swings of x = a·sin φ the part of the time below x is 1/2 + arcsin(x/a)/π; over less than half a swing, its fastest
/// part counts, as evenly spread.
/// </summary>
internal static class SwayKernel
{
    /// <summary>Parts of the time by cell, from −n to n about the middle; they sum to 1.</summary>
    /// <param name="reach">To each side, in cells, zero or more.</param>
    /// <param name="swings">Swings to and fro in the time.</param>
    public static double[] Of(double reach, double swings)
    {
        var full = swings >= 0.5;
        var half = full ? reach : reach * Math.Sin(Math.PI * swings);
        var cells = (int)Math.Ceiling(half);
        if (half < 1e-6)
        {
            return [1];
        }

        double Below(double x) => x <= -half ? 0 : x >= half ? 1 : full ? 0.5 + (Math.Asin(x / half) / Math.PI) : 0.5 + (x / half / 2);
        var kernel = new double[(2 * cells) + 1];
        for (var i = 0; i < kernel.Length; i++)
        {
            var at = i - cells;
            kernel[i] = Below(at + 0.5) - Below(at - 0.5);
        }

        return kernel;
    }

    /// <summary>A row smoothed, mirrored at its ends.</summary>
    public static void Smooth(ReadOnlySpan<float> row, double[] kernel, Span<float> into)
    {
        var (half, turn) = (kernel.Length / 2, 2 * row.Length);
        for (var i = 0; i < row.Length; i++)
        {
            var sum = 0.0;
            for (var k = 0; k < kernel.Length; k++)
            {
                var at = (((i + k - half) % turn) + turn) % turn;
                sum += kernel[k] * row[at < row.Length ? at : turn - 1 - at];
            }

            into[i] = (float)sum;
        }
    }
}
