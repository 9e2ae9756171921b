using Foramen.Engine.Learning;
using Foramen.Engine.Quantities;

namespace Foramen.Rehearsal.Runs;

/// <summary>What a policy achieved.</summary>
/// <param name="Policy">Who decided.</param>
/// <param name="Early">Share of keepers on sheets 1 to 5.</param>
/// <param name="Keepers">Share of keepers from sheet 6 on; null with fewer sheets.</param>
/// <param name="Interval">Where that share may well lie, sheets counted as independent.</param>
/// <param name="Scores">How good the stated odds were from sheet 6 on; null where none were stated.</param>
public sealed record RehearsalScore(string Policy, Probability Early, Probability? Keepers, ShareInterval? Interval, ForecastScores? Scores)
{
    /// <summary>The first sheet that counts: until then anyone is still learning.</summary>
    public const int FirstCounted = 6;

    /// <summary>The score of these sheets.</summary>
    public static RehearsalScore Of(string policy, IReadOnlyCollection<RehearsedSheet> sheets)
    {
        var early = sheets.Where(sheet => sheet.Number < FirstCounted).ToList();
        var late = sheets.Where(sheet => sheet.Number >= FirstCounted).ToList();
        var hits = late.Count(sheet => sheet.Keeper);
        return new RehearsalScore(
            policy,
            Probability.FromFraction(early.Count(sheet => sheet.Keeper) / (double)early.Count),
            late.Count > 0 ? Probability.FromFraction(hits / (double)late.Count) : null,
            late.Count > 0 ? ShareInterval.Wilson(hits, late.Count) : null,
            ForecastScores.Of([.. late.Where(sheet => sheet.Odds is not null).Select(sheet => new ForecastOutcome(Probability.FromFraction(sheet.Odds!.Value), sheet.Keeper))]));
    }

    /// <summary>The part of the way from one share of keepers to another that a third has come; null where there is no way to go.</summary>
    public static double? GapClosed(Probability from, Probability to, Probability reached)
        => to.Fraction - from.Fraction is > 1e-9 and var gap ? (reached.Fraction - from.Fraction) / gap : null;
}
