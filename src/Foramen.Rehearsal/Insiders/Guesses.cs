using Foramen.Rehearsal.Lines;
using Foramen.Rehearsal.Worlds;

namespace Foramen.Rehearsal.Insiders;

/// <summary>
/// Many guesses at one world, spread as its posterior is: a sequential Monte Carlo sampler (N. Chopin, Biometrika 89, 539, 2002) that takes each sheet in by as many steps as
/// keep half of the guesses alive (Del Moral, Doucet and Jasra, J. R. Stat. Soc. B 68, 411, 2006) and moves them by the differences of others of their kind (ter Braak, Stat. Comput.
/// 16, 239, 2006) and by themselves, each move by Metropolis's rule. The references are from memory.
/// </summary>
internal sealed class Guesses
{
    private const int Sweeps = 2;
    private const int Bisections = 20;
    private const double Leap = 1.4;

    private readonly WorldLabel label;
    private readonly WorldFamily family;
    private readonly Chance chance;
    private readonly List<(PlannedSheet Sheet, JudgedLine Judged)> past = [];
    private Guess[] all;

    public Guesses(WorldLabel label, WorldFamily family, int count, Chance chance)
    {
        (this.label, this.family, this.chance) = (label, family, chance);
        all = [.. Enumerable.Range(0, count).Select(_ => Guess.Of([.. Enumerable.Range(0, GivenChance.Length).Select(_ => chance.Normal(1))], label, family, []))];
    }

    public IReadOnlyList<Guess> All => all;

    /// <summary>Takes in what became of a sheet.</summary>
    public void Learn(PlannedSheet sheet, JudgedLine judged)
    {
        past.Add((sheet, judged));
        all = [.. all.Select(guess => guess.After(sheet, judged))];
        var taken = 0.0;
        while (taken < 1)
        {
            var until = NextPart(taken);
            Resample(until - taken);
            taken = until;
            for (var sweep = 0; sweep < Sweeps; sweep++)
            {
                Move(taken);
            }
        }
    }

    // The largest part of the last sheet that leaves half of the guesses.
    private double NextPart(double taken)
    {
        if (Alive(1 - taken) >= all.Length / 2.0)
        {
            return 1;
        }

        var (low, high) = (taken, 1.0);
        for (var i = 0; i < Bisections; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = Alive(middle - taken) >= all.Length / 2.0 ? (middle, high) : (low, middle);
        }

        return Math.Min(1, Math.Max(low, taken + 1e-3));
    }

    private double[] WeightsOf(double more)
    {
        var highest = all.Max(guess => more * guess.Logs[^1]);
        return [.. all.Select(guess => Math.Exp((more * guess.Logs[^1]) - highest))];
    }

    private double Alive(double more)
    {
        var weights = WeightsOf(more);
        return weights.Sum() * weights.Sum() / weights.Sum(weight => weight * weight);
    }

    private void Resample(double more)
    {
        var weights = WeightsOf(more);
        var step = weights.Sum() / all.Length;
        var kept = new Guess[all.Length];
        var (at, upTo, target) = (0, weights[0], step * chance.Even());
        for (var i = 0; i < kept.Length; i++, target += step)
        {
            while (at < all.Length - 1 && upTo < target)
            {
                upTo += weights[++at];
            }

            kept[i] = all[at];
        }

        // Mixed, so that any part of them is a fair sample.
        for (var i = kept.Length - 1; i > 0; i--)
        {
            var other = chance.Below(i + 1);
            (kept[i], kept[other]) = (kept[other], kept[i]);
        }

        all = kept;
    }

    private void Move(double taken)
    {
        var kinds = all.GroupBy(guess => guess.Truth.Families).ToDictionary(group => group.Key, group => group.ToArray());
        for (var i = 0; i < all.Length; i++)
        {
            var now = all[i];
            var moved = Guess.Of(Proposal(now, kinds[now.Truth.Families]), label, family, past);
            if (Math.Log(chance.Even() + 1e-300) < moved.LogAt(taken) - now.LogAt(taken))
            {
                all[i] = moved;
            }
        }
    }

    // Each way of moving is as likely there as back.
    private double[] Proposal(Guess guess, Guess[] kind)
    {
        double[] to = [.. guess.Normals];
        var way = chance.Even();
        if (way < 0.55 && kind.Length >= 4)
        {
            Along(to, kind[chance.Below(kind.Length)], kind[chance.Below(kind.Length)]);
        }
        else if (way < 0.8)
        {
            for (var left = 1 + chance.Below(3); left > 0; left--)
            {
                to[chance.Below(to.Length)] += chance.Normal(chance.Happens(0.5) ? 0.3 : 0.8);
            }
        }
        else
        {
            // Another family of one part, and what belongs to it: a leap, and as likely back.
            var (start, length) = GivenChance.PlaceOf((WorldPart)chance.Below((int)WorldPart.Biases));
            to[start] += chance.Normal(Leap);
            for (var left = chance.Below(length); left > 0; left--)
            {
                to[start + 1 + chance.Below(length - 1)] += chance.Normal(Leap);
            }
        }

        return to;
    }

    private void Along(double[] to, Guess from, Guess onto)
    {
        var some = chance.Happens(0.5);
        var length = (chance.Happens(0.1) ? 1 : 0.4) * chance.Between(0.5, 1.5) * (some ? 1.6 : 1);
        for (var i = 0; i < to.Length; i++)
        {
            if (!some || chance.Happens(0.4))
            {
                to[i] += (length * (onto.Normals[i] - from.Normals[i])) + chance.Normal(0.02);
            }
        }
    }
}
