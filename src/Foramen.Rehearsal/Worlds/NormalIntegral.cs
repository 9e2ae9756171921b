namespace Foramen.Rehearsal.Worlds;

/// <summary>The normal integral by Abramowitz and Stegun, formula 7.1.26, good to 1.5e-7; the worlds share no numerics with the Engine.</summary>
internal static class NormalIntegral
{
    public static double Below(double z)
    {
        var x = Math.Abs(z) / Math.Sqrt(2);
        var t = 1 / (1 + (0.3275911 * x));
        var tail = t * (0.254829592 + (t * (-0.284496736 + (t * (1.421413741 + (t * (-1.453152027 + (t * 1.061405429)))))))) * Math.Exp(-x * x) / 2;
        return z < 0 ? tail : 1 - tail;
    }
}
