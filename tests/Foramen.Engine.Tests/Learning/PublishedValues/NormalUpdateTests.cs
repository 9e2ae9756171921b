using Foramen.Engine.Learning;
using Foramen.Engine.Quantities;
using static Foramen.Engine.Tests.Learning.LearningExamples;

namespace Foramen.Engine.Tests.Learning.PublishedValues;

/// <summary>
/// Conjugate updates of a normal mean in closed form (A. Gelman et al., Bayesian Data Analysis, 3rd ed. 2013, eq. 2.11 and 2.12: precisions add, the mean is weighted by them)
/// and a scalar Kalman filter worked step by step. The room's errors are Student's t, which near the middle weigh (ν + 1)/ν of a normal, so
/// the comparison is made where the scales are held and that weight is put in.
/// </summary>
public class NormalUpdateTests
{
    private static readonly PriorBeliefs Held = PriorBeliefs.Usual with { ScatterWorth = 1e9, Speed = Stops.FromValue(1), HalfLifeDays = 1e9 };

    [Theory]
    [InlineData(0.5, 0.5)]
    [InlineData(-0.25, 0.35)]
    [InlineData(0.1, 0.2)]
    [Source("gelman-2013", "eq. 2.11 and 2.12", Basis.Worked)]
    public void One_reading_moves_the_mean_by_its_share_of_the_precision(double seen, double spread)
    {
        var believed = Beliefs.From([StripOf("a", seen, spread)], Now, Held).Of(Speed);

        // The effective precision of a t reading at its own posterior residual; a fixed point, found here by repetition.
        var (mean, variance) = ClosedForm([(seen, spread)], 1);
        Assert.Equal(mean, believed.Mean.Value, 0.01);
        Assert.Equal(Math.Sqrt(variance), believed.Spread.Value, 0.01);
    }

    // The steps of a scalar Kalman filter on a constant (R. E. Kalman, J. Basic Eng. 82, 35, 1960; gain P/(P + R)): P0 1, R 0.25, readings 0.5 then 0.25.
    // Gain 0.8, mean 0.4, P 0.2; gain 0.4444, mean 0.3333, P 0.1111 (worked by hand). t errors are somewhat firmer near the middle.
    [Fact]
    [Source("kalman-1960", Basis.Worked)]
    public void Two_readings_follow_a_scalar_Kalman_filter_worked_by_hand()
    {
        var one = Beliefs.From([StripOf("a", 0.5, 0.5)], Now, Held).Of(Speed);
        var two = Beliefs.From([StripOf("a", 0.5, 0.5), StripOf("b", 0.25, 0.5)], Now, Held).Of(Speed);
        Assert.Equal(0.4, one.Mean.Value, 0.03);
        Assert.Equal(Math.Sqrt(0.2), one.Spread.Value, 0.04);
        Assert.Equal(0.3333, two.Mean.Value, 0.03);
        Assert.Equal(Math.Sqrt(0.1111), two.Spread.Value, 0.03);
    }

    // Linear filter for speed and failure together, h = (1, −lg2 t): prior speed sd 1.0 and failure sd 0.05, readings sd 0.4 (worked by matrix algebra outside the
    // project: sd of the speed 0.445, 0.405, 0.397 and of the exponent 0.0482, 0.0468, 0.0455 after 60, 240 and 480 s).
    [Fact]
    [Source("kalman-1960", Basis.Worked)]
    public void Speed_and_failure_are_learned_together_as_a_linear_filter_does()
    {
        var prior = Held with { Failure = Stops.FromValue(0.05) };
        double[] times = [60, 240, 480];
        double[] speeds = [0.4452, 0.4045, 0.3969];
        double[] exponents = [0.0482, 0.0468, 0.0455];
        for (var count = 1; count <= 3; count++)
        {
            var evidence = times.Take(count).Select((time, i) => StripOf($"{i}", 0, 0.4, Math.Log2(time)));
            var beliefs = Beliefs.From(evidence, Now, prior);
            Assert.Equal(speeds[count - 1], beliefs.Of(Speed).Spread.Value, 0.03);
            Assert.Equal(exponents[count - 1], beliefs.Of(new BeliefKey(BeliefKind.Failure, "box")).Spread.Value, 0.0015);
        }
    }

    // Forty equal readings: t weights (ν + 1)/(ν + 1) tend to one and the posterior to the normal one, 1/sqrt(1 + 40/0.25).
    [Fact]
    [Source("gelman-2013", "eq. 2.11 and 2.12", Basis.Worked)]
    public void Many_readings_narrow_the_belief_as_the_root_of_their_number()
    {
        var random = new Random(7);
        var evidence = Enumerable.Range(0, 400).Select(i => StripOf($"{i:000}", 0.3 + (0.5 * Normal(random)), 0.5));
        var believed = Beliefs.From(evidence, Now, Held).Of(Speed);
        Assert.Equal(0.3, believed.Mean.Value, 0.06);
        Assert.InRange(believed.Spread.Value, 0.8 * 0.5 / 20, 1.3 * 0.5 / 20);
    }

    private static double Normal(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());

    private static (double Mean, double Variance) ClosedForm((double Seen, double Spread)[] readings, double prior)
    {
        var (mean, variance) = (0.0, prior * prior);
        for (var round = 0; round < 200; round++)
        {
            var (precision, sum) = (1 / (prior * prior), 0.0);
            foreach (var (seen, spread) in readings)
            {
                var weight = 5 / (4 + ((((seen - mean) * (seen - mean)) + (0.25 * variance)) / (spread * spread)));
                precision += weight / (spread * spread);
                sum += weight * seen / (spread * spread);
            }

            (mean, variance) = (sum / precision, 1 / precision);
        }

        return (mean, variance);
    }
}
