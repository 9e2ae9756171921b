using Foramen.Engine.Scene;

namespace Foramen.Engine.Print;

/// <summary>A moving region on a sheet, with all that does not depend on the exposure worked out.</summary>
internal abstract class PreparedRegion
{
    private protected PreparedRegion(RegionOnSheet region) => Falloff = region.FalloffInTheMiddle;

    /// <summary>Falloff in the region's middle, under which its trace is told.</summary>
    public float Falloff { get; }

    /// <summary>Whether light is carried from place to place; then it is taken from the image as it was before anything moved.</summary>
    public abstract bool CarriesLight { get; }

    /// <summary>Puts the light with the motion on the sheet.</summary>
    /// <param name="lux">The sheet's pixels.</param>
    /// <param name="course">When it moves.</param>
    /// <param name="exponent">Lights that take turns are worth the mean of this power.</param>
    public abstract void Apply(float[] lux, MotionCourse course, double exponent);

    /// <summary>What is left to be seen of it.</summary>
    /// <param name="course">When it moves.</param>
    /// <param name="exponent">As for <see cref="Apply"/>.</param>
    /// <param name="density">How dark the sheet becomes under a light.</param>
    public abstract RegionTrace Trace(MotionCourse course, double exponent, Func<double, double> density);
}
