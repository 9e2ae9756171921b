using Foramen.Rehearsal.Insiders;
using Foramen.Rehearsal.Lines;
using Foramen.Rehearsal.Worlds;

namespace Foramen.Rehearsal.Photographers;

/// <summary>
/// Knows how worlds are made, every distribution of it, and sees what any photographer sees; which world it is in it can only guess. Takes the exposure that most of
/// its guesses keep. About as far as advice can go that is given no more: a measure for other photographers, not one of them.
/// </summary>
internal sealed class Insider(WorldFamily family, Chance chance) : IPhotographer
{
    private const int Count = 400;
    private const int Asked = 160;
    private const int AskedFirst = 40;

    private static readonly double[] FlashFractions = [0.2, 0.4, 0.6, 0.8, 1];

    private Guesses? guesses;

    public ExposeLine Decide(SheetLine seen)
    {
        guesses ??= new Guesses(WorldLabel.Read(seen.Label), family, Count, chance);
        var truths = guesses.All.Take(Asked).Select(guess => guess.Truth).ToArray();
        var first = truths.Take(AskedFirst).ToArray();

        // Roughly over all times there are, then finely about the best.
        var best = Best(first, seen, Enumerable.Range(-4, 33).Select(step => Math.Pow(2, step * 0.5)), FlashesOf(seen, first));
        return Best(
            truths,
            seen,
            Enumerable.Range(-4, 9).Select(step => best.Seconds * Math.Pow(2, step * 0.15)),
            [.. new[] { 0.5, 0.75, 1, 1.33 }.Select(more => best.FlashSeconds * more).Distinct()]);
    }

    public void Learn(SheetLine seen, ExposeLine done, JudgedLine judged) => guesses?.Learn(new PlannedSheet(seen, done), judged);

    private static double[] FlashesOf(SheetLine seen, WorldTruth[] truths)
    {
        if (seen.CardEv is null)
        {
            return [0];
        }

        var sheet = new PlannedSheet(seen, new ExposeLine { Seconds = 1 });
        double Middle(double fraction)
        {
            var each = truths.Select(truth => truth.FlashFor(sheet.Sky, seen.SheetsInBottle, sheet.Card - truth.MeterBias, fraction)).Order().ToArray();
            return each[each.Length / 2];
        }

        return [0, .. FlashFractions.Select(Middle)];
    }

    private static ExposeLine Best(WorldTruth[] truths, SheetLine seen, IEnumerable<double> times, double[] flashes)
    {
        var best = new ExposeLine { Seconds = seen.Label.AtSeconds, Odds = -1 };
        foreach (var seconds in times)
        {
            var sheet = new PlannedSheet(seen, new ExposeLine { Seconds = seconds });
            foreach (var flash in flashes)
            {
                var tried = sheet.Flashed(flash);
                var odds = truths.Average(truth => SheetLikelihood.Kept(truth, tried));
                if (odds > best.Odds)
                {
                    best = tried.Done with { Odds = odds };
                }
            }
        }

        return best;
    }
}
