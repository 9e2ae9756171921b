using Foramen.Engine.Bath;
using Foramen.Engine.Learning;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Learning;

/// <summary>
/// A bottle followed along its life, against the Bath's own bottle with the same parameters put into its profile, and its slopes against finite differences.
/// </summary>
public class DeveloperTrailTests
{
    private static readonly Temperature Warm = Temperature.FromCelsius(24);
    private static readonly Volume Filled = Volume.FromMillilitres(300);

    // Everything that can happen to a bottle, in the open and closed, warm and cool, topped up with less than full strength.
    private static readonly BottleEvent[] Life =
    [
        new SheetDeveloped(Area.FromSquareCentimetres(130), Density.FromValue(0.9), Volume.FromMillilitres(20)),
        new SheetDeveloped(Area.FromSquareCentimetres(260), Density.FromValue(0.7), Volume.FromMillilitres(15)),
        new TimePassed(Duration.FromSeconds(5 * 3600), true, Warm),
        new FreshAdded(Volume.FromMillilitres(60), 0.7),
        new SheetDeveloped(Area.FromSquareCentimetres(130), Density.FromValue(0.7), Volume.FromMillilitres(2)),
        new TimePassed(Duration.FromSeconds(6 * 86_400), false, Temperature.FromCelsius(16)),
        new PouredAway(Volume.FromMillilitres(90)),
        new SheetDeveloped(Area.FromSquareCentimetres(200), Density.FromValue(0.7), Volume.FromMillilitres(2)),
        new FreshAdded(Volume.FromMillilitres(40), 1.2),
    ];

    public static TheoryData<double, double, double, double> States { get; } = new()
    {
        { 0, 0, 0, 0 },
        { 0.1, -0.2, 0.4, 0.15 },
        { -0.15, 0.3, -0.5, -0.1 },
    };

    [Theory]
    [MemberData(nameof(States))]
    public void Every_first_tone_is_expected_as_the_Bath_expects_it(double factor, double capacity, double ageing, double q10)
    {
        for (var count = 0; count <= Life.Length; count++)
        {
            var seconds = Expected(Life[..count], factor, capacity, ageing, q10, 14);
            var (residual, _) = See(Life[..count], [factor, capacity, ageing, q10], 1.1 * seconds, 14);
            Assert.Equal(Math.Log(1.1), residual, 1e-9);
        }
    }

    [Theory]
    [MemberData(nameof(States))]
    public void Its_slopes_are_those_of_finite_differences(double factor, double capacity, double ageing, double q10)
    {
        const double step = 1e-5;
        double[] state = [factor, capacity, ageing, q10];
        for (var count = 0; count <= Life.Length; count++)
        {
            var (_, slopes) = See(Life[..count], state, 12, 14);
            for (var i = 0; i < 4; i++)
            {
                // A residual falls as the expected one rises.
                double At(double by) => See(Life[..count], [.. state.Select((value, j) => j == i ? value + by : value)], 12, 14).Residual;
                Assert.Equal((At(-step) - At(step)) / (2 * step), slopes[i], 1e-7);
            }
        }
    }

    // Half a bottle's worth at a time: additively nothing is left after two, multiplicatively a quarter.
    [Fact]
    public void By_the_additive_model_a_bottle_is_used_up_and_goes_no_further()
    {
        var half = new SheetDeveloped(Area.FromSquareMetres(0.5 * 0.3 * 5.7), Density.FromValue(0.7), Volume.FromMillilitres(0));
        foreach (var (sheets, activity) in new[] { (1, 0.5), (2, (0 + 0.25) / 2), (3, (0 + 0.125) / 2), (4, (0 + 0.0625) / 2) })
        {
            var (residual, _) = See([.. Enumerable.Repeat(half, sheets)], new double[4], 75 / 7.5 / activity, 20);
            Assert.Equal(0, residual, 1e-9);
        }

        // What is used up depends on the capacity no more: the slope is that of the multiplicative part, (1 − 1/2·e^−c)³, alone.
        var (_, slopes) = See([half, half, half], new double[4], 12, 20);
        const double step = 1e-5;
        double Multiplicative(double capacity) => Math.Pow(1 - (0.5 * Math.Exp(-capacity)), 3);
        Assert.Equal(-(Math.Log(Multiplicative(step)) - Math.Log(Multiplicative(-step))) / (2 * step), slopes[(int)DeveloperParameter.Capacity], 1e-7);
    }

    [Fact]
    public void A_bottle_that_was_emptied_is_as_strong_as_what_is_filled_in()
    {
        BottleEvent[] emptied =
        [
            new SheetDeveloped(Area.FromSquareMetres(0.3), Density.FromValue(0.7), Volume.FromMillilitres(1)),
            new PouredAway(Volume.FromMillilitres(400)),
            new FreshAdded(Volume.FromMillilitres(0)),
            new FreshAdded(Volume.FromMillilitres(100), 0.8),
        ];
        Assert.Equal(0, See(emptied, new double[4], 75 / 7.5 / 0.8, 20).Residual, 1e-9);

        // Half of it water: half the strength.
        Assert.Equal(0, See([.. emptied, new FreshAdded(Volume.FromMillilitres(100), 0)], new double[4], 75 / 7.5 / 0.4, 20).Residual, 1e-9);
    }

    [Theory]
    [InlineData(9.99, false)]
    [InlineData(10, true)]
    [InlineData(32, true)]
    [InlineData(32.01, false)]
    public void A_first_tone_counts_where_a_developer_can_work(double celsius, bool counts) => Assert.Equal(counts, Count([], 0.05, celsius) == 1);

    // Fresh developer has an activity of one.
    [Theory]
    [InlineData(0.999, true)]
    [InlineData(1, true)]
    [InlineData(1.001, false)]
    public void A_bottle_is_followed_down_to_the_weakest_activity(double weakest, bool counts) => Assert.Equal(counts, Count([], weakest, 20) == 1);

    private static int Count(BottleEvent[] before, double weakest, double celsius)
    {
        var count = 0;
        var life = new DeveloperLife("a", Filled, [.. before, new ImageAppeared(Duration.FromSeconds(12), Temperature.FromCelsius(celsius))]);
        DeveloperTrail.Follow(DeveloperProfile.Paper, life, new double[4], weakest, (_, _) => count++);
        return count;
    }

    private static (double Residual, double[] Slopes) See(BottleEvent[] before, double[] state, double seconds, double celsius)
    {
        var seen = new List<(double, double[])>();
        var life = new DeveloperLife("a", Filled, [.. before, new ImageAppeared(Duration.FromSeconds(seconds), Temperature.FromCelsius(celsius))]);
        DeveloperTrail.Follow(DeveloperProfile.Paper, life, state, 0, (residual, slopes) => seen.Add((residual, [.. slopes])));
        return Assert.Single(seen);
    }

    // t0·f(T)/(W·a), with the activity of the Bath's bottle; ageing follows the temperature by the starting law, so the steepness is put in by hand.
    private static double Expected(BottleEvent[] before, double factor, double capacity, double ageing, double q10, double celsius)
    {
        var usual = DeveloperProfile.Paper;
        var area = usual.CapacitySquareMetresPerLitre.Middle * Math.Exp(capacity);
        var profile = usual with
        {
            CapacitySquareMetresPerLitre = new(area, area, area),
            OpenLossPerHour = usual.OpenLossPerHour * Math.Exp(ageing),
            ClosedLossPerDay = usual.ClosedLossPerDay * Math.Exp(ageing),
        };
        var activity = DeveloperBottle.Fill(profile, Filled, Volume.FromMillilitres(50), Volume.FromMillilitres(1000)).After(before).Activity.Middle;
        var steepness = usual.Temperatures.Middle.Q10 * Math.Exp(q10);
        return usual.Time.Seconds * Math.Pow(steepness, (20 - celsius) / 10) / (usual.AppearanceFactor * Math.Exp(factor)) / activity;
    }
}
