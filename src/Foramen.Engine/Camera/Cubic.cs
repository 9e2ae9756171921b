namespace Foramen.Engine.Camera;

/// <summary>Interpolation between even samples by the cubic through the four around a place; even in the mirror at the first sample.</summary>
internal static class Cubic
{
    /// <summary>The value at a place in steps from the first sample, up to the last.</summary>
    public static double At(double[] samples, double place)
    {
        var last = samples.Length - 1;
        var i = Math.Min((int)place, last - 1);
        var t = place - i;
        var (b, c) = (samples[i], samples[i + 1]);
        var a = samples[Math.Abs(i - 1)];
        var d = i + 2 <= last ? samples[i + 2] : c + (c - b);
        var second = (a - (2 * b) + c) / 2;
        var third = (d - (3 * c) + (3 * b) - a) / 6;

        // Newton's form with the first node at i − 1.
        return a + ((t + 1) * ((b - a) + (t * (second + ((t - 1) * third)))));
    }
}
