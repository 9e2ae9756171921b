using Foramen.Engine.Exposure;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Learning;

/// <summary>Odds of a keeper, tones and everything else together, and what they are lost to.</summary>
public sealed record SheetOdds
{
    private SheetOdds(Probability total, Probability tones, MishapRates mishaps, IReadOnlyList<OddsShare> shares)
    {
        Total = total;
        Tones = tones;
        Mishaps = mishaps;
        Shares = shares;
    }

    /// <summary>Odds of a keeper.</summary>
    public Probability Total { get; }

    /// <summary>Odds that every tone that matters comes out as wanted.</summary>
    public Probability Tones { get; }

    /// <summary>How often anything else spoils a sheet.</summary>
    public MishapRates Mishaps { get; }

    /// <summary>What the odds are lost to, largest first.</summary>
    public IReadOnlyList<OddsShare> Shares { get; }

    /// <summary>The odds of a forecast.</summary>
    /// <param name="forecast">The tones' forecast, with its limits.</param>
    /// <param name="mishaps">What else may happen.</param>
    public static SheetOdds Of(ExposureForecast forecast, MishapRates mishaps)
    {
        var tones = forecast.Odds.Fraction;
        var none = mishaps.NoMishap.Fraction;
        var total = tones * none;
        var without = new Dictionary<OddsPart, double>();
        foreach (var limit in forecast.Limits)
        {
            // Sources of one part are removed one at a time; their gains add up to first order.
            var part = PartOf(limit.Source);
            var gain = limit.Source == ErrorSource.SceneRange ? 1 - tones : Math.Max(0, limit.OddsWithout.Fraction - tones);
            without[part] = Math.Min(1, without.GetValueOrDefault(part, tones) + gain);
        }

        var parts = without.ToDictionary(pair => pair.Key, pair => pair.Value * none);
        Add(OddsPart.Frame, mishaps.Frame);
        Add(OddsPart.Motion, mishaps.Motion);
        Add(OddsPart.Process, mishaps.Process);
        var lost = parts.Values.Sum(value => value - total);
        return new SheetOdds(
            Probability.FromFraction(total),
            forecast.Odds,
            mishaps,
            [.. parts
                .Select(pair => new OddsShare(pair.Key, Probability.FromFraction(Math.Clamp(pair.Value, 0, 1)), lost > 0 ? (pair.Value - total) / lost : 0))
                .OrderByDescending(share => share.Share)
                .ThenBy(share => share.Part)]);

        void Add(OddsPart part, Probability mishap)
            => parts[part] = Math.Min(1, parts.GetValueOrDefault(part, total) + (total / (1 - mishap.Fraction)) - total);
    }

    private static OddsPart PartOf(ErrorSource source) => source switch
    {
        ErrorSource.Paper or ErrorSource.Failure or ErrorSource.Flash => OddsPart.Paper,
        ErrorSource.Meter or ErrorSource.ToneReadings or ErrorSource.Hole => OddsPart.Meter,
        ErrorSource.Light or ErrorSource.Colour => OddsPart.Light,
        ErrorSource.Development or ErrorSource.Timing => OddsPart.Process,
        ErrorSource.SceneRange => OddsPart.Scene,
        _ => throw new ArgumentOutOfRangeException(nameof(source)),
    };
}
