using MathNet.Numerics;

namespace Foramen.Engine.Camera;

/// <summary>
/// Part of a normal distribution below a number of standard deviations, from a table: straight between entries 1/256 apart it is off by less than 5e-7 (h²/8 times the
/// steepest change of the density, 0.242). The function itself takes most of a fit's time in a browser.
/// </summary>
internal static class NormalTable
{
    private const int PerUnit = 256;
    private const int Reach = 8;

    private static readonly double[] Table =
        [.. Enumerable.Range(0, (2 * Reach * PerUnit) + 1).Select(i => 0.5 * SpecialFunctions.Erfc(-((i / (double)PerUnit) - Reach) / Math.Sqrt(2)))];

    /// <summary>The part below, 0 to 1.</summary>
    public static double Below(double deviations)
    {
        var place = (deviations + Reach) * PerUnit;
        if (!(place > 0))
        {
            return 0;
        }

        var whole = (int)place;
        return place >= Table.Length - 1 ? 1 : Table[whole] + ((place - whole) * (Table[whole + 1] - Table[whole]));
    }
}
