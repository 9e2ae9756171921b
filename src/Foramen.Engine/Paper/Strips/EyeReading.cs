using Foramen.Engine.Quantities;

namespace Foramen.Engine.Paper;

/// <summary>
/// A judgement of a strip by eye. First and last tone bound the exposure between two patches (or on one side, at the strip's ends); a match says the density of one
/// patch, to half a step.
/// </summary>
/// <param name="Kind">What was judged.</param>
/// <param name="Step">The patch it was, counted from 1 in order of rising exposure. For <see cref="EyeReadingKind.FirstTone"/> one more than there are: none was seen.</param>
/// <param name="Grey">For <see cref="EyeReadingKind.Match"/>, the density of the grey.</param>
public readonly record struct EyeReading(EyeReadingKind Kind, int Step, Density? Grey = null)
{
    /// <summary>Smallest difference in density that an eye finds between neighbouring light patches with sharp edges (an assumption: 0.02 to 0.04).</summary>
    public const double SeenInLight = 0.03;

    /// <summary>Smallest difference that it finds between neighbouring dark patches (an assumption: the eye is several times worse in the black).</summary>
    public const double SeenInDark = 0.06;

    /// <summary>Standard deviation of the natural logarithm of these thresholds from eye to eye and light to light (an assumption).</summary>
    public const double ThresholdLnSpread = 0.4;
}
