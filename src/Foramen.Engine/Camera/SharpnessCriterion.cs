using Foramen.Engine.Quantities;

namespace Foramen.Engine.Camera;

/// <summary>What a best hole is best at. Immutable.</summary>
public sealed record SharpnessCriterion
{
    private readonly Func<Length, Length, PaperLight, Length?, double> score;

    private SharpnessCriterion(Func<Length, Length, PaperLight, Length?, double> score) => this.score = score;

    /// <summary>The usual one: the finest lines that keep a tenth of their contrast, about the least that is seen.</summary>
    public static SharpnessCriterion Usual { get; } = FinestLines(0.1);

    /// <summary>The finest lines that keep a stated contrast.</summary>
    /// <param name="leastContrast">0.02 to 0.95.</param>
    /// <exception cref="RefusalException">Outside the range.</exception>
    public static SharpnessCriterion FinestLines(double leastContrast)
    {
        Guard.Within(leastContrast, 0.02, 0.95, "the least contrast");
        return new((diameter, distance, light, subject) => Contrast(diameter, distance, light, subject).LinePairsPerMillimetreAt(leastContrast));
    }

    /// <summary>The smallest spot that holds a stated part of the energy.</summary>
    /// <param name="part">0.3 to 0.95.</param>
    /// <exception cref="RefusalException">Outside the range.</exception>
    public static SharpnessCriterion SmallestSpot(double part)
    {
        Guard.Within(part, 0.3, 0.95, "the part of the energy to hold");
        return new((diameter, distance, light, subject) => -PointSpread.Of(diameter, distance, light, subject).DiameterHolding(part).Millimetres);
    }

    /// <summary>How well a hole does; the higher the better.</summary>
    internal double Score(Length diameter, Length distance, PaperLight light, Length? subject) => score(diameter, distance, light, subject);

    private static PointSpreadContrast Contrast(Length diameter, Length distance, PaperLight light, Length? subject)
        => new(HoleWaves.Of(diameter, distance, subject), light);
}
