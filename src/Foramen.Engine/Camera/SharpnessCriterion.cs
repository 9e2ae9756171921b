using Foramen.Engine.Quantities;

namespace Foramen.Engine.Camera;

/// <summary>What a best hole is best at. Immutable.</summary>
public sealed record SharpnessCriterion
{
    private readonly Func<Length, Length, PaperLight, Length?, double> score;

    private SharpnessCriterion(string statement, Func<Length, Length, PaperLight, Length?, double> score)
    {
        Statement = statement;
        this.score = score;
    }

    /// <summary>The usual one: the finest lines that keep a tenth of their contrast, about the least that is seen.</summary>
    public static SharpnessCriterion Usual { get; } = FinestLines(0.1);

    /// <summary>The criterion in one sentence for the user.</summary>
    public string Statement { get; }

    /// <summary>The finest lines that keep a stated contrast.</summary>
    /// <param name="leastContrast">0.02 to 0.95.</param>
    /// <exception cref="RefusalException">Outside the range.</exception>
    public static SharpnessCriterion FinestLines(double leastContrast)
    {
        Guard.Within(leastContrast, 0.02, 0.95, "the least contrast");
        return new(
            FormattableString.Invariant($"the finest lines that keep {100 * leastContrast:0.#} % of their contrast"),
            (diameter, distance, light, subject) => Contrast(diameter, distance, light, subject).LinePairsPerMillimetreAt(leastContrast));
    }

    /// <summary>The most contrast in lines of a stated fineness. Where that is finer than any hole shows, no best exists and the answer is far off.</summary>
    /// <param name="linePairsPerMillimetre">On the paper, 0.01 to 100.</param>
    /// <exception cref="RefusalException">Outside the range.</exception>
    public static SharpnessCriterion MostContrast(double linePairsPerMillimetre)
    {
        Guard.Within(linePairsPerMillimetre, 0.01, 100, "the number of line pairs to the millimetre");
        return new(
            FormattableString.Invariant($"the most contrast in lines of {linePairsPerMillimetre:0.##} pairs to the millimetre"),
            (diameter, distance, light, subject) => Contrast(diameter, distance, light, subject).At(linePairsPerMillimetre));
    }

    /// <summary>The smallest spot that holds a stated part of the energy.</summary>
    /// <param name="part">0.3 to 0.95.</param>
    /// <exception cref="RefusalException">Outside the range.</exception>
    public static SharpnessCriterion SmallestSpot(double part)
    {
        Guard.Within(part, 0.3, 0.95, "the part of the energy to hold");
        return new(
            FormattableString.Invariant($"the smallest spot that holds {100 * part:0.#} % of the light"),
            (diameter, distance, light, subject) => -PointSpread.Of(diameter, distance, light, subject).DiameterHolding(part).Millimetres);
    }

    /// <summary>How well a hole does; the higher the better.</summary>
    internal double Score(Length diameter, Length distance, PaperLight light, Length? subject) => score(diameter, distance, light, subject);

    private static PointSpreadContrast Contrast(Length diameter, Length distance, PaperLight light, Length? subject)
        => new(HoleWaves.Of(diameter, distance, subject), light);
}
