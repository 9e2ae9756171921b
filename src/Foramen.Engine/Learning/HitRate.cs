using Foramen.Engine.Quantities;

namespace Foramen.Engine.Learning;

/// <summary>The user's own share of keepers over a stretch of sheets.</summary>
/// <param name="FirstSheet">Number of the first sheet, from 1.</param>
/// <param name="LastSheet">Number of the last.</param>
/// <param name="Share">Share of keepers.</param>
/// <param name="Interval">Where it may well lie.</param>
public sealed record HitRate(int FirstSheet, int LastSheet, Probability Share, ShareInterval Interval)
{
    /// <summary>The share over the sheets up to each sheet, looking back over so many.</summary>
    /// <param name="keepers">Sheet by sheet, oldest first.</param>
    /// <param name="window">How many sheets to look back over, 1 or more.</param>
    public static IReadOnlyList<HitRate> OverTime(IReadOnlyList<bool> keepers, int window = 10)
    {
        Guard.Within(window, 1, 100_000, "the number of sheets to look back over");
        var rates = new List<HitRate>(keepers.Count);
        var hits = 0;
        for (var last = 0; last < keepers.Count; last++)
        {
            hits += keepers[last] ? 1 : 0;
            hits -= last >= window && keepers[last - window] ? 1 : 0;
            var count = Math.Min(window, last + 1);
            rates.Add(new HitRate(last + 2 - count, last + 1, Probability.FromFraction(hits / (double)count), ShareInterval.Wilson(hits, count)));
        }

        return rates;
    }
}
