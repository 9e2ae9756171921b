namespace Foramen.Engine.Quantities;

/// <summary>Where a function of one number is highest, if it has one summit there: golden sections (J. Kiefer, Proc. AMS 4, 502, 1953).</summary>
internal static class GoldenSection
{
    /// <summary>How much of a stretch is cut off at each end: (3 − √5)/2.</summary>
    public static readonly double Share = (3 - Math.Sqrt(5)) / 2;

    /// <summary>The middle of the last stretch, which is no longer than the tolerance; near the beginning of a flat top.</summary>
    /// <param name="height">The function.</param>
    /// <param name="from">Beginning of the stretch.</param>
    /// <param name="to">Its end.</param>
    /// <param name="tolerance">Over zero, in the same unit.</param>
    public static double Summit(Func<double, double> height, double from, double to, double tolerance)
    {
        var (a, b) = (from, to);
        var (c, d) = (a + (Share * (b - a)), b - (Share * (b - a)));
        var (atC, atD) = (height(c), height(d));
        while (b - a > tolerance)
        {
            if (atC >= atD)
            {
                (b, d, atD) = (d, c, atC);
                c = a + (Share * (b - a));
                atC = height(c);
            }
            else
            {
                (a, c, atC) = (c, d, atD);
                d = b - (Share * (b - a));
                atD = height(d);
            }
        }

        return (a + b) / 2;
    }
}
