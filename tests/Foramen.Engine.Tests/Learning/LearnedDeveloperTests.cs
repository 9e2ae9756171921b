using Foramen.Engine.Bath;
using Foramen.Engine.Learning;
using Foramen.Engine.Quantities;
using MathNet.Numerics.Distributions;

namespace Foramen.Engine.Tests.Learning;

public class LearnedDeveloperTests
{
    private const double Ninety = 1.645;

    private static readonly Temperature Twenty = Temperature.FromCelsius(20);
    private static readonly Volume Filled = Volume.FromMillilitres(300);

    [Theory]
    [InlineData(1, 1, "1 first tone in 1 bottle says too little yet, so all is still assumed from handbooks and common practice.")]
    [InlineData(2, 1, "2 first tones in 1 bottle say too little yet, so all is still assumed from handbooks and common practice.")]
    [InlineData(5, 3, "5 first tones in 3 bottles say too little yet, so all is still assumed from handbooks and common practice.")]
    [InlineData(0, 0, "No first tone has been seen in this developer yet, so all is assumed from handbooks and common practice.")]
    public void Where_all_is_assumed_it_says_so(int tones, int bottles, string sentence)
        => Assert.Equal(sentence, new LearnedDeveloper(DeveloperProfile.Paper, [Of(DeveloperParameter.Q10, 3, true)], tones, bottles).Sentence);

    [Theory]
    [InlineData(DeveloperParameter.AppearanceFactor, "its factor from first tone to full time")]
    [InlineData(DeveloperParameter.Capacity, "the m² that a litre lasts for")]
    [InlineData(DeveloperParameter.OpenLoss, "the part lost per hour in the open")]
    [InlineData(DeveloperParameter.Q10, "how many times faster it is 10 °C warmer")]
    public void Where_something_moved_it_says_what_and_how_far(DeveloperParameter parameter, string name)
        => Assert.Equal(
            $"4 first tones in 1 bottle say most of {name}: 2.25 (1.5 to 3.0) instead of 2.0.",
            new LearnedDeveloper(DeveloperProfile.Paper, [Of(parameter, -0.5, false)], 4, 1).Sentence);

    // Furthest either way counts; what is only assumed does not.
    [Fact]
    public void What_moved_furthest_is_named()
    {
        var learned = new LearnedDeveloper(
            DeveloperProfile.Paper,
            [Of(DeveloperParameter.AppearanceFactor, 0.7, false), Of(DeveloperParameter.Capacity, -1.2, false), Of(DeveloperParameter.Q10, 3, true)], 4, 1);
        Assert.Equal(DeveloperParameter.Capacity, learned.MovedMost?.Parameter);
    }

    // The mode by what the posterior is: log t errors about the Bath's own bottles and normal priors. There no slope is left, and every step away is downhill.
    [Fact]
    public void The_learned_values_are_the_mode_of_the_posterior()
    {
        DeveloperLife[] lives = [Life("a", 0.04, 9, 1.08), Life("b", 0.03, 6, 0.9)];
        var learned = DeveloperFit.Of(DeveloperProfile.Paper, lives);
        double[] prior = [Math.Log(9.0 / 6) / 2 / Ninety, Math.Log(8.0 / 4) / 2 / Ninety, Math.Log(2) / Ninety, Math.Log(2.5 / 1.9) / 2 / Ninety];
        double[] mode = [.. learned.Parameters.Select(one => Math.Log(one.Value.Middle / one.Before))];
        Assert.All(mode.Zip(prior, learned.Parameters), one => Assert.Equal(one.First / one.Second, one.Third.Moved, 1e-9));
        var best = LogPosterior(lives, mode, prior);
        for (var i = 0; i < 4; i++)
        {
            double At(double by) => LogPosterior(lives, [.. mode.Select((value, j) => j == i ? value + (by * prior[i]) : value)], prior);
            Assert.InRange((At(1e-4) - At(-1e-4)) / 2e-4, -1e-5, 1e-5);
            Assert.True(At(0.3) < best && At(-0.3) < best);
        }
    }

    [Fact]
    public void A_learned_loss_goes_into_the_profile_with_that_of_the_closed_bottle()
    {
        var learned = DeveloperFit.Of(DeveloperProfile.Paper, [Life("a", 0.04, 25, 1)]);
        var loss = learned.Parameters[(int)DeveloperParameter.OpenLoss];
        Assert.False(loss.IsAssumed);
        Assert.InRange(loss.Value.Middle, 0.03, 0.04);
        Assert.Equal(loss.Value.Middle, learned.Profile.OpenLossPerHour, 1e-12);
        Assert.Equal(0.01 / 0.02, learned.Profile.ClosedLossPerDay / learned.Profile.OpenLossPerHour, 1e-9);
        Assert.Equal(loss.Value.High / loss.Value.Middle, learned.Profile.AgeingFactor, 1e-12);
    }

    [Fact]
    public void No_loss_is_more_than_all()
    {
        var fast = DeveloperProfile.Paper with { OpenLossPerHour = 0.8, ClosedLossPerDay = 0.9 };
        var learned = DeveloperFit.Of(fast, [Life("a", 1.6, 25, 1, 400)]);
        Assert.True(learned.Parameters[(int)DeveloperParameter.OpenLoss].Value.Middle > 1);
        Assert.Equal(1, learned.Profile.OpenLossPerHour);
        Assert.Equal(1, learned.Profile.ClosedLossPerDay);
    }

    // By a profile that loses nothing in the open there is nothing to multiply: the closed bottle's loss goes on being used as given.
    [Fact]
    public void A_loss_of_nothing_stays_assumed()
    {
        var closed = DeveloperProfile.Paper with { OpenLossPerHour = 0, ClosedLossPerDay = 0.05 };
        BottleEvent[] events = [.. Enumerable.Range(0, 20).SelectMany(n => new BottleEvent[]
        {
            new ImageAppeared(Duration.FromSeconds(10 * Math.Exp(0.08 * n)), Twenty),
            new TimePassed(Duration.FromSeconds(86_400), false, Twenty),
        })];
        var learned = DeveloperFit.Of(closed, [new("a", Filled, events)]);
        Assert.True(learned.Parameters[(int)DeveloperParameter.OpenLoss].IsAssumed);
        Assert.Equal(0.05, learned.Profile.ClosedLossPerDay);
        Assert.Equal(0, learned.Profile.OpenLossPerHour);
    }

    [Fact]
    public void A_bottle_that_is_not_among_them_is_told_by_all_of_them()
    {
        DeveloperLife[] lives = [Life("a", 0.04, 9, 1.1), Life("b", 0.03, 6, 0.9)];
        var (all, other) = (DeveloperFit.Of(DeveloperProfile.Paper, lives), DeveloperFit.For(DeveloperProfile.Paper, lives, "c"));
        Assert.Equal(all.Parameters, other.Parameters);
        Assert.Equal(all.Profile, other.Profile);

        // Of one that is, only the factor is that of the others.
        var own = DeveloperFit.For(DeveloperProfile.Paper, lives, "a");
        Assert.Equal(DeveloperFit.Of(DeveloperProfile.Paper, [lives[1]]).Parameters[0], own.Parameters[0]);
        Assert.Equal(all.Parameters.Skip(1), own.Parameters.Skip(1));
        Assert.NotEqual(all.Parameters[0], own.Parameters[0]);
    }

    private static LearnedParameter Of(DeveloperParameter parameter, double moved, bool assumed) => new(parameter, 2, new(1.5, 2.25, 3), assumed, moved);

    // A bottle in the open that loses so much an hour, read without error but for a factor, some of it cool.
    private static DeveloperLife Life(string id, double lossPerHour, int tones, double factor, double rest = 3600) => new(
        id,
        Filled,
        [.. Enumerable.Range(0, tones).SelectMany(n => new BottleEvent[]
        {
            new ImageAppeared(
                Duration.FromSeconds(10 * factor * Math.Exp(lossPerHour * n * rest / 3600) * (n % 2 == 0 ? 1 : Math.Sqrt(2))),
                n % 2 == 0 ? Twenty : Temperature.FromCelsius(15)),
            new TimePassed(Duration.FromSeconds(rest), true, Twenty),
        })]);

    private static double LogPosterior(DeveloperLife[] lives, double[] state, double[] prior)
    {
        var usual = DeveloperProfile.Paper;
        var capacity = usual.CapacitySquareMetresPerLitre.Middle * Math.Exp(state[1]);
        var profile = usual with
        {
            AppearanceFactor = usual.AppearanceFactor * Math.Exp(state[0]),
            CapacitySquareMetresPerLitre = new(capacity, capacity, capacity),
            OpenLossPerHour = usual.OpenLossPerHour * Math.Exp(state[2]),
        };
        var q10 = usual.Temperatures.Middle.Q10 * Math.Exp(state[3]);
        var sum = state.Zip(prior, (value, spread) => Normal.PDFLn(0, spread, value)).Sum();
        foreach (var life in lives)
        {
            var bottle = DeveloperBottle.Fill(profile, life.Filled, Volume.FromMillilitres(50));
            foreach (var happened in life.Events)
            {
                if (happened is ImageAppeared seen)
                {
                    var expected = profile.Time.Seconds * Math.Pow(q10, (20 - seen.Temperature.Celsius) / 10) / profile.AppearanceFactor / bottle.Activity.Middle;
                    sum += StudentT.PDFLn(0, DeveloperFit.ReadingSpread, 4, Math.Log(seen.Appearance.Seconds / expected));
                }
                else
                {
                    bottle = bottle.After(happened);
                }
            }
        }

        return sum;
    }
}
