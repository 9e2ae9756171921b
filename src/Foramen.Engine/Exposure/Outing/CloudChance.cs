using Foramen.Engine.Quantities;

namespace Foramen.Engine.Exposure;

/// <summary>The chance of cloud before the sun, one for the whole day or one for each span of a forecast. Immutable.</summary>
public sealed record CloudChance
{
    private readonly (DateTimeOffset From, Probability Chance)[] spans;

    private CloudChance(Probability usual, (DateTimeOffset, Probability)[] spans)
    {
        Usual = usual;
        this.spans = spans;
    }

    /// <summary>The chance where no forecast says another.</summary>
    public Probability Usual { get; }

    /// <summary>The same all day.</summary>
    public static CloudChance Of(Probability chance) => new(chance, []);

    /// <summary>A forecast: each chance holds from its instant to the next one's; before the first, the first holds.</summary>
    /// <param name="spans">At least one, at most 10 000, each later than the one before.</param>
    /// <exception cref="RefusalException">None, too many, or out of order.</exception>
    public static CloudChance Forecast(IReadOnlyList<(DateTimeOffset From, Probability Chance)> spans)
    {
        Guard.Within(spans.Count, 1, 10_000, "the number of lines in the forecast");
        for (var i = 1; i < spans.Count; i++)
        {
            if (spans[i].From <= spans[i - 1].From)
            {
                throw new RefusalException(FormattableString.Invariant(
                    $"The forecast says {spans[i].From:yyyy-MM-dd HH:mm} after {spans[i - 1].From:yyyy-MM-dd HH:mm}; put its lines in order of time."));
            }
        }

        return new CloudChance(spans[0].Chance, [.. spans]);
    }

    /// <summary>The chance at an instant.</summary>
    public Probability At(DateTimeOffset instant)
    {
        var chance = Usual;
        foreach (var (from, one) in spans)
        {
            if (from > instant)
            {
                break;
            }

            chance = one;
        }

        return chance;
    }
}
