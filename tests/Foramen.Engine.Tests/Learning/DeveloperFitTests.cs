using CsCheck;
using Foramen.Engine.Bath;
using Foramen.Engine.Learning;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Learning;

public class DeveloperFitTests
{
    private const double Ninety = 1.645;

    private static readonly Temperature Twenty = Temperature.FromCelsius(20);
    private static readonly Volume Filled = Volume.FromMillilitres(300);

    [Fact]
    public void With_one_parameter_free_it_is_the_conjugate_normal()
    {
        // Known variance: precision is the sum of precisions, the mean weighs by them (Gelman et al., Bayesian Data Analysis, 3rd ed., eq. 2.11 and 2.12).
        // A Student's t with 4 degrees of freedom weighs (4 + 1)/4 at its centre (Lange, Little and Taylor 1989).
        var law = TemperatureCoefficient.FromQ10(2, Twenty);
        var fixedElsewhere = DeveloperProfile.Paper with { CapacitySquareMetresPerLitre = new(5, 5, 5), AgeingFactor = 1, Temperatures = new(law, law, law) };
        const double residual = 0.002;
        const int readings = 7;
        var life = new DeveloperLife("a", Filled, [.. Enumerable.Repeat(new ImageAppeared(Duration.FromSeconds(10 * Math.Exp(residual)), Twenty), readings)]);

        var factor = DeveloperFit.Of(fixedElsewhere, [life]).Parameters[(int)DeveloperParameter.AppearanceFactor];

        var prior = Math.Log(1.5) / 2 / Ninety;
        var each = 1.25 / (DeveloperFit.ReadingSpread * DeveloperFit.ReadingSpread);
        var precision = (1 / (prior * prior)) + (readings * each);
        Assert.Equal(-residual * readings * each / precision, Math.Log(factor.Value.Middle / 7.5), 6);
        Assert.Equal(Ninety / Math.Sqrt(precision), Math.Log(factor.Value.High / factor.Value.Middle), 4);
        Assert.False(factor.IsAssumed);
    }

    [Fact]
    public void Without_a_first_tone_all_is_assumed()
    {
        var learned = DeveloperFit.Of(DeveloperProfile.Paper, [new("a", Filled, [Sheet()])]);

        Assert.Same(DeveloperProfile.Paper, learned.Profile);
        Assert.All(learned.Parameters, one => Assert.True(one.IsAssumed));
        Assert.Null(learned.MovedMost);
        Assert.Equal(0, learned.FirstTones);

        // The 90 % intervals before any data are the ranges they come from.
        var capacity = learned.Parameters[(int)DeveloperParameter.Capacity].Value;
        Assert.Equal(8.0 / 4, capacity.High / capacity.Low, 3);
        Assert.Equal(0.04, learned.Parameters[(int)DeveloperParameter.OpenLoss].Value.High, 3);
    }

    [Fact]
    public void The_90_percent_interval_holds_the_hidden_value_in_85_to_95_of_a_hundred_trials()
    {
        var random = new Random(20_260_620);
        const int trials = 400;
        var held = new int[4];
        for (var trial = 0; trial < trials; trial++)
        {
            double[] hidden = [Draw(7.5, Math.Log(1.5) / 2), Draw(5.7, Math.Log(2) / 2), Draw(0.02, Math.Log(2)), Draw(2, Math.Log(2.5 / 1.9) / 2)];
            var learned = DeveloperFit.Of(DeveloperProfile.Paper, [Life("a", hidden, 14, random), Life("b", hidden, 14, random), Life("c", hidden, 14, random)]);
            for (var i = 0; i < held.Length; i++)
            {
                var value = learned.Parameters[i].Value;
                held[i] += value.Low <= hidden[i] && hidden[i] <= value.High ? 1 : 0;
            }
        }

        Assert.All(held, count => Assert.InRange(count / (double)trials, 0.85, 0.95));

        double Draw(double middle, double ninety) => middle * Math.Exp(Normal(random) * ninety / Ninety);
    }

    [Fact]
    public void Hidden_parameters_are_found_from_many_sheets()
    {
        var random = new Random(7);
        double[] hidden = [6.6, 4.4, 0.035, 2.3];

        // Every other bottle is used in one go: where all stand for hours between sheets, what sheets take cannot be told from what the air takes.
        var learned = DeveloperFit.Of(DeveloperProfile.Paper, [.. Enumerable.Range(0, 60).Select(n => Life($"{n:00}", hidden, 30, random, n % 2 == 0 ? 60 : 7200))]);

        for (var i = 0; i < hidden.Length; i++)
        {
            Assert.InRange(learned.Parameters[i].Value.Middle / hidden[i], 0.9, 1.1);
            Assert.False(learned.Parameters[i].IsAssumed);
        }

        Assert.InRange(learned.Profile.CapacitySquareMetresPerLitre.Middle, 4.4 * 0.9, 4.4 * 1.1);
        Assert.Equal(60, learned.Bottles);
    }

    [Fact]
    public void One_bad_reading_says_little()
    {
        var random = new Random(11);
        double[] hidden = [7.5, 5.7, 0.02, 2];
        List<DeveloperLife> good = [Life("a", hidden, 14, random), Life("b", hidden, 14, random)];
        var bad = good[1] with { Events = [new ImageAppeared(Duration.FromSeconds(60), Twenty), .. good[1].Events] };

        var without = DeveloperFit.Of(DeveloperProfile.Paper, good);
        var with = DeveloperFit.Of(DeveloperProfile.Paper, [good[0], bad]);

        // A first tone after six times as long would move an ordinary mean of 29 readings by ln 6/29 = 0.06.
        Assert.All(Enumerable.Range(0, 4), i =>
            Assert.InRange(Math.Log(with.Parameters[i].Value.Middle / without.Parameters[i].Value.Middle), -0.02, 0.02));
    }

    [Fact]
    public void A_bottle_reads_its_own_strength_by_the_factor_of_the_others()
    {
        var random = new Random(3);
        List<DeveloperLife> lives = [Life("a", [6.2, 5.7, 0.02, 2], 14, random), Life("b", [7.5, 4.5, 0.02, 2], 14, random)];

        var ofB = DeveloperFit.For(DeveloperProfile.Paper, lives, "b");

        var (all, others) = (DeveloperFit.Of(DeveloperProfile.Paper, lives), DeveloperFit.Of(DeveloperProfile.Paper, [lives[0]]));
        Assert.Equal(others.Profile.AppearanceFactor, ofB.Profile.AppearanceFactor);
        Assert.NotEqual(all.Profile.AppearanceFactor, ofB.Profile.AppearanceFactor);
        Assert.Equal(all.Profile.CapacitySquareMetresPerLitre, ofB.Profile.CapacitySquareMetresPerLitre);
        Assert.Equal(DeveloperProfile.Paper.AppearanceFactor, DeveloperFit.For(DeveloperProfile.Paper, [lives[1]], "b").Profile.AppearanceFactor);
    }

    [Fact]
    public void The_order_of_the_bottles_does_not_matter()
        => (from seed in Gen.Int[0, 10_000]
            from order in Gen.Shuffle(Enumerable.Range(0, 5).ToArray())
            select (seed, order)).Sample(
            drawn =>
            {
                var random = new Random(drawn.seed);
                List<DeveloperLife> lives = [.. Enumerable.Range(0, 5).Select(n => Life($"{n}", [7, 5, 0.03, 2.2], 5, random))];
                var one = DeveloperFit.Of(DeveloperProfile.Paper, lives);
                var other = DeveloperFit.Of(DeveloperProfile.Paper, drawn.order.Select(n => lives[n]));
                Assert.Equal(one.Parameters, other.Parameters);
            },
            iter: Samples.Of(50));

    private static SheetDeveloped Sheet() => new(Area.FromSquareCentimetres(130), Density.FromValue(0.7), Volume.FromMillilitres(1.5));

    /// <summary>A bottle as the Bath reckons it with the hidden numbers, read with normal errors.</summary>
    private static DeveloperLife Life(string id, double[] hidden, int sheets, Random random, int longestRest = 5400)
    {
        var law = TemperatureCoefficient.FromQ10(Math.Clamp(hidden[3], 1, 5), Twenty);
        var usual = DeveloperProfile.Paper;
        var truth = usual with
        {
            AppearanceFactor = hidden[0],
            CapacitySquareMetresPerLitre = new(hidden[1], hidden[1], hidden[1]),
            OpenLossPerHour = hidden[2],
            ClosedLossPerDay = usual.ClosedLossPerDay * hidden[2] / usual.OpenLossPerHour,
            Temperatures = new(law, law, law),
        };
        var bottle = DeveloperBottle.Fill(truth, Filled, Volume.FromMillilitres(100));
        var events = new List<BottleEvent>();
        for (var n = 0; n < sheets && bottle.Activity.Middle > 0.5; n++)
        {
            var warmth = Temperature.FromCelsius(15 + (random.NextDouble() * 11));
            var first = truth.Time.Seconds * law.TimeFactor(warmth) / truth.AppearanceFactor / bottle.Activity.Middle;
            events.Add(new ImageAppeared(Duration.FromSeconds(first * Math.Exp(DeveloperFit.ReadingSpread * Normal(random))), warmth));
            BottleEvent[] passed = [Sheet(), .. TopUp.Of(bottle, Volume.FromMillilitres(random.Next(0, 20))).Events, new TimePassed(Duration.FromSeconds(random.Next(60, longestRest + 1)), true, Twenty)];
            bottle = bottle.After(passed);
            events.AddRange(passed);
        }

        return new DeveloperLife(id, Filled, events);
    }

    // Box and Muller.
    private static double Normal(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
