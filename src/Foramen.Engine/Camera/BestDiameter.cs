using Foramen.Engine.Quantities;

namespace Foramen.Engine.Camera;

/// <summary>The best hole for a distance, computed by a stated criterion, and what the classical rules say.</summary>
public static class BestDiameter
{
    /// <summary>Rayleigh's factor in d = c·√(λf), from his experiments: Phil. Mag. 31, 87 (1891).</summary>
    public const double RayleighFactor = 1.9;

    /// <summary>The best diameter by a criterion.</summary>
    /// <param name="distance">From the hole to the paper.</param>
    /// <param name="light">The wavelengths that make the picture.</param>
    /// <param name="criterion">What it should be best at.</param>
    /// <param name="subjectDistance">From the hole to the subject; far away where missing.</param>
    /// <returns>Good to about 0.1 %; between 0.7 and 3 in d = c·√(λf).</returns>
    public static Length Compute(Length distance, PaperLight light, SharpnessCriterion criterion, Length? subjectDistance = null)
    {
        var unit = Classical(1, distance, light.MeanNanometres, subjectDistance);
        double Score(double factor) => criterion.Score(Times(unit, factor), distance, light, subjectDistance);

        // A coarse walk, because a criterion may have more than one summit, then golden sections about the highest.
        const double First = 0.7, Last = 3, Step = 0.1;
        var best = First;
        var bestScore = Score(First);
        for (var factor = First + Step; factor <= Last + 1e-9; factor += Step)
        {
            var score = Score(factor);
            if (score > bestScore)
            {
                (best, bestScore) = (factor, score);
            }
        }

        return Times(unit, GoldenSection.Summit(Score, Math.Max(First, best - Step), Math.Min(Last, best + Step), 5e-4));
    }

    /// <summary>d = c·√(λf), with 1/f = 1/distance + 1/subject.</summary>
    /// <param name="factor">c, such as <see cref="RayleighFactor"/>.</param>
    /// <param name="distance">From the hole to the paper.</param>
    /// <param name="nanometres">Wavelength; the eye's 550 where one thinks of what one sees, the paper's mean where one thinks of the picture.</param>
    /// <param name="subjectDistance">From the hole to the subject; far away where missing.</param>
    /// <exception cref="RefusalException">Factor outside 0.1 to 10, wavelength outside 200 to 2000 nm.</exception>
    public static Length Classical(double factor, Length distance, double nanometres, Length? subjectDistance = null)
    {
        Guard.Within(factor, 0.1, 10, "the factor in d = c·√(λf)");
        Guard.Within(nanometres, 200, 2000, "the wavelength", "nm");
        Guard.Within(distance.Millimetres, 1, 100_000, "the distance from the hole to the paper", "mm");
        var vergence = 1 / distance.Millimetres;
        if (subjectDistance is { } subject)
        {
            vergence += 1 / Guard.Within(subject.Millimetres, 1, Length.Max * 1e3, "the distance of the subject", "mm");
        }

        return Length.FromMillimetres(factor * Math.Sqrt(nanometres * 1e-6 / vergence));
    }

    private static Length Times(Length length, double factor) => Length.FromMillimetres(length.Millimetres * factor);
}
