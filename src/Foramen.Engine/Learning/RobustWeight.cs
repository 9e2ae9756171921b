using MathNet.Numerics;

namespace Foramen.Engine.Learning;

/// <summary>
/// How much a single observation is allowed to say. Values have Student's t errors with 4 degrees of freedom (Lange, Little and Taylor, J. Am. Stat.
/// Assoc. 84, 881, 1989): weight (ν + 1)/(ν + z²). Bounds have a normal integral with one chance in twenty that the verdict is plain wrong.
/// </summary>
internal static class RobustWeight
{
    private const double Freedom = 4;
    private const double Wrong = 0.05;

    /// <summary>The weight of an observation so many standard deviations off, squared.</summary>
    public static double OfSquare(double squared) => (Freedom + 1) / (Freedom + squared);

    /// <summary>
    /// A bound as an equivalent observation: log Φ(z) and its first two derivatives, scaled by how far the verdict is believed.
    /// </summary>
    /// <param name="inside">z, how far inside the bound the expectation lies, in standard deviations.</param>
    /// <returns>The Newton step in standard deviations, the information in units of one over the variance, and how far it is believed.</returns>
    public static (double Step, double Information, double Believed) OfBound(double inside)
    {
        var z = Math.Clamp(inside, -30, 8);
        var below = 0.5 * SpecialFunctions.Erfc(-z / Math.Sqrt(2));
        var density = Math.Exp(-z * z / 2) / Math.Sqrt(2 * Math.PI);

        // Mills' ratio far outside, where the integral itself vanishes.
        var hazard = z < -8 ? -z + (1 / -z) : density / below;
        var curvature = Math.Max(1e-9, hazard * (hazard + z));
        var believed = (1 - Wrong) * below / (((1 - Wrong) * below) + Wrong);
        return (hazard / curvature, believed * curvature, believed);
    }
}
