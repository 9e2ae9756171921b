using Foramen.Engine.Quantities;
using MathNet.Numerics.Distributions;

namespace Foramen.Engine.Exposure;

/// <summary>
/// Should I wait? Suns and clouds are taken to follow each other with lengths that no past length foretells (exponential), each at a rate that is learned
/// from today's by a gamma prior: shape <see cref="PriorCount"/>, as if one span of <see cref="PriorMinutes"/> had been seen of each. Conjugate; any textbook of Bayesian
/// statistics. A span that still lasts counts with its length and no end.
/// </summary>
/// <remarks>
/// Real weather changes within the hour, and spans of sun under cumulus are more regular than exponential ones; the odds are a start against hope, no forecast.
/// </remarks>
public static class ShouldWait
{
    /// <summary>Spans that the prior is worth.</summary>
    public const double PriorCount = 1;

    /// <summary>Length of the prior's span, minutes (an assumption: cumulus of a fair day).</summary>
    public const double PriorMinutes = 5;

    /// <summary>Longest wait asked about, minutes.</summary>
    public const double LongestWaitMinutes = 240;

    private const int Rates = 10;

    private const int Steps = 160;

    /// <summary>The odds.</summary>
    /// <param name="soFar">What today's light has done.</param>
    /// <param name="needed">Sun that the exposure needs, 1 s to four hours.</param>
    /// <param name="wait">Longest wait, 0 to four hours.</param>
    /// <exception cref="RefusalException">Outside the ranges.</exception>
    public static WaitingOdds Odds(LightSoFar soFar, Duration needed, Duration wait)
    {
        var need = Guard.Within(needed.Seconds, 1, LongestWaitMinutes * 60, "the sun needed", "s") / 60;
        var patience = Guard.Within(wait.Seconds, 0, LongestWaitMinutes * 60, "the wait", "s") / 60;
        var sun = Posterior(soFar.Suns, soFar.SunNow ? soFar.NowFor : default);
        var cloud = Posterior(soFar.Clouds, soFar.SunNow ? default : soFar.NowFor);

        // The sun outlasts the exposure: the rate averaged out gives Lomax's distribution, in closed form.
        var now = soFar.SunNow ? Math.Pow(sun.Minutes / (sun.Minutes + need), sun.Count) : 0;
        var (unbroken, gathered) = (0.0, 0.0);
        foreach (var sunEnds in Quantiles(sun))
        {
            foreach (var cloudEnds in Quantiles(cloud))
            {
                unbroken += Unbroken(sunEnds, cloudEnds, need, patience, soFar.SunNow);
                gathered += Gathered(sunEnds, cloudEnds, need, patience + need, soFar.SunNow);
            }
        }

        const double Pairs = Rates * Rates;
        return new WaitingOdds(
            Probability.FromFraction(now),
            Probability.FromFraction(Math.Clamp(Math.Max(now, unbroken / Pairs), 0, 1)),
            Probability.FromFraction(Math.Clamp(gathered / Pairs, 0, 1)),
            Duration.FromMinutes(sun.Minutes / sun.Count),
            Duration.FromMinutes(cloud.Minutes / cloud.Count));
    }

    /// <summary>
    /// Rates known, per minute: odds that by waiting no longer than <paramref name="patience"/> a span of sun is met that lasts <paramref name="need"/>. With the
    /// sun out: p + ∫ a·exp(−a·u)·C(patience − u) du over u up to need and patience, p = exp(−a·need); under cloud: C(m) = ∫ b·exp(−b·v)·S(m − v) dv.
    /// </summary>
    internal static double Unbroken(double sunEnds, double cloudEnds, double need, double patience, bool sunNow)
    {
        var lasts = Math.Exp(-sunEnds * need);
        if (patience <= 0)
        {
            return sunNow ? lasts : 0;
        }

        // Steps of h by the trapezoid: what comes after a change is taken as the mean of the values at both ends of the step it falls in. The values
        // of the newest step depend on each other and are solved for.
        var h = patience / Steps;
        var cloudOver = -double.ExpM1(-cloudEnds * h);
        var reach = Math.Min(Steps, (int)Math.Ceiling(need / h));
        var sunOver = new double[reach + 1];
        for (var step = 1; step <= reach; step++)
        {
            sunOver[step] = Math.Exp(-sunEnds * (step - 1) * h) - Math.Exp(-sunEnds * Math.Min(need, step * h));
        }

        var (inSun, inCloud) = (new double[Steps + 1], new double[Steps + 1]);
        inSun[0] = lasts;
        for (var left = 1; left <= Steps; left++)
        {
            var known = lasts;
            for (var step = 2; step <= Math.Min(reach, left); step++)
            {
                known += sunOver[step] * (inCloud[left - step] + inCloud[left - step + 1]) / 2;
            }

            var cloudKnown = ((1 - cloudOver) * inCloud[left - 1]) + (cloudOver * inSun[left - 1] / 2);
            inSun[left] = (known + (sunOver[1] * (inCloud[left - 1] + cloudKnown) / 2)) / (1 - (sunOver[1] * cloudOver / 4));
            inCloud[left] = cloudKnown + (cloudOver * inSun[left] / 2);
        }

        return sunNow ? inSun[Steps] : inCloud[Steps];
    }

    /// <summary>Rates known, per minute: odds that the sun is out for <paramref name="need"/> altogether within <paramref name="within"/>.</summary>
    internal static double Gathered(double sunEnds, double cloudEnds, double need, double within, bool sunNow)
    {
        // The exposure is done by then if the clouds met before it is done last no longer than the slack. The number of suns that end before
        // need is up is Poisson with mean a·need; that many clouds (one more if it is cloudy now) last as long as a gamma variable says.
        var slack = within - need;
        if (slack <= 0)
        {
            return sunNow && slack >= 0 ? Math.Exp(-sunEnds * need) : 0;
        }

        var mean = sunEnds * need;
        var probability = 0.0;
        var weight = Math.Exp(-mean);

        // erlang: odds that k clouds are over within the slack, 1 − Σ exp(−bx)(bx)^i/i! for i below k.
        var x = cloudEnds * slack;
        var term = Math.Exp(-x);
        var erlang = 1.0;
        if (!sunNow)
        {
            erlang -= term;
            term *= x;
        }

        var first = sunNow ? 0 : 1;
        for (var k = 0; k < 2000; k++)
        {
            probability += weight * Math.Max(0, erlang);
            if (k > mean && weight < 1e-12)
            {
                break;
            }

            weight *= mean / (k + 1);
            erlang -= term;
            term *= x / (k + first + 1);
        }

        return probability;
    }

    private static (double Count, double Minutes) Posterior(IReadOnlyList<Duration> ended, Duration still)
        => (PriorCount + ended.Count, PriorMinutes + ended.Sum(one => one.Seconds / 60) + (still.Seconds / 60));

    // Middle quantiles of the rate's posterior, all worth the same.
    private static double[] Quantiles((double Count, double Minutes) posterior)
        => [.. Enumerable.Range(0, Rates).Select(i => Gamma.InvCDF(posterior.Count, posterior.Minutes, (i + 0.5) / Rates))];
}
