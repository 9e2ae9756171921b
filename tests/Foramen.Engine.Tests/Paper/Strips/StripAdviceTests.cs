using Foramen.Engine.Light;
using Foramen.Engine.Paper;
using MathNet.Numerics.LinearAlgebra;
using static Foramen.Engine.Tests.Paper.PaperExamples;
using static Foramen.Engine.Tests.Paper.Strips.StripExamples;

namespace Foramen.Engine.Tests.Paper.Strips;

/// <summary>
/// The expected variance worked out once more: derivatives by differences of the public curve, light that is taken for known struck out of the information, and the five
/// nodes of Gauss and Hermite from the roots of x·(x⁴ − 10x² + 15): 0, ±√(5 − √10), ±√(5 + √10) with weights 8/15 and (7 ± 2√10)/60.
/// </summary>
public class StripAdviceTests
{
    private static readonly double[] Firsts = [2, 3, 4, 6, 8, 12, 16, 24, 32, 48, 64, 96];
    private static readonly double[] Ratios = [1.0 / 3, 0.5, 2.0 / 3, 1, 1.5];

    public static TheoryData<string, StripGoal> Cases =>
    [
        ("negative", StripGoal.Failure), ("negative", StripGoal.Curve), ("positive", StripGoal.Failure), ("positive", StripGoal.Curve),
        ("too dark", StripGoal.Curve), ("too dark", StripGoal.Failure), ("two lights", StripGoal.Failure), ("two lights", StripGoal.Curve),
        ("unread", StripGoal.Curve),
    ];

    [Theory]
    [MemberData(nameof(Cases))]
    public void The_strip_that_is_advised_is_the_shortest_of_those_that_leave_about_as_little_doubt_as_the_best(string name, StripGoal goal)
    {
        var (kind, strips) = Case(name);
        var prior = name == "unread" ? StripPrior.Usual with { LnSteepness = (Math.Log(7), 0.3) } : StripPrior.Usual;
        var posterior = StripPosterior.Of(kind, StripRows.Of(strips, kind, PaperSensitivity.BlueSensitive, prior.Failure), prior);
        var advice = StripAdvice.Next(strips, kind, PaperSensitivity.BlueSensitive, goal, prior);
        double Spread(double variance) => goal == StripGoal.Failure ? Math.Sqrt(variance) : Math.Sqrt(variance / 3) / Math.Log10(2);

        var expected = Expected(posterior, strips[0], goal);
        var now = expected([], 0);
        Assert.Equal(1, advice.SpreadNow / Spread(now), 1e-3);
        var chosen = expected([.. advice.Plan.Steps.Select(step => step.Total.Seconds)], advice.Dimmer.Value);
        Assert.Equal(1, advice.SpreadAfter / Spread(chosen), 1e-3);

        var all = new List<(double Longest, double Variance)>();
        for (var dimmer = 0; dimmer <= (goal == StripGoal.Failure ? 6 : 0); dimmer++)
        {
            foreach (var ratio in Ratios)
            {
                foreach (var first in Firsts.Where(first => first * Math.Pow(2, 7 * ratio) <= 1800 && first * (Math.Pow(2, ratio) - 1) >= 2))
                {
                    all.Add((first * Math.Pow(2, 7 * ratio), expected([.. Enumerable.Range(0, 8).Select(i => first * Math.Pow(2, ratio * i))], dimmer)));
                }
            }
        }

        var least = all.Min(one => one.Variance);
        var bound = Math.Min(1.05 * least, least + (0.1 * Math.Max(0, now - least)));
        Assert.True(chosen <= bound * (1 + 1e-4));
        Assert.All(all.Where(one => one.Longest < advice.Plan.Longest.Seconds - 1e-6), one => Assert.True(one.Variance >= bound * (1 - 1e-4)));
    }

    [Fact]
    public void The_sentence_says_what_light_it_is_to_be_made_in()
    {
        var (kind, strips) = Case("negative");
        var dimmer = StripAdvice.Next(strips, kind, PaperSensitivity.BlueSensitive, StripGoal.Failure);
        Assert.Contains(FormattableString.Invariant($"in {dimmer.Dimmer.Value:0} stops less light"), dimmer.Describe(), StringComparison.Ordinal);
        var same = StripAdvice.Next(strips, kind, PaperSensitivity.BlueSensitive, StripGoal.Curve);
        Assert.Equal(0, same.Dimmer.Value);
        Assert.Contains("in the same light", same.Describe(), StringComparison.Ordinal);
        Assert.Contains(FormattableString.Invariant($"8 patches from {same.Plan.Steps[0].Total.Seconds:0.#} s"), same.Describe(), StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_advised_after_a_fit_is_what_is_advised_after_its_strips()
    {
        var (kind, strips) = Case("negative");
        Assert.Equal(
            StripAdvice.Next(strips, kind, PaperSensitivity.BlueSensitive, StripGoal.Failure).Describe(),
            StripAdvice.After(Fit(kind, strips), StripGoal.Failure).Describe());
    }

    private static (PaperKind Kind, Strip[] Strips) Case(string name) => name switch
    {
        "positive" => (PaperKind.DirectPositive, [Of(Positive, 0.4, 2, 0.5, 9, exponent: 0.85)]),
        "too dark" => (PaperKind.NegativeWorking, [Of(Negative, 0.02, 2, 0.5, 6)]),
        "two lights" => (PaperKind.NegativeWorking, [Of(Negative, 0.4, 2, 0.5, 9, exponent: 0.85, lightSpread: 0.02), Of(Negative, 0.05, 20, 0.5, 7, exponent: 0.85, lightSpread: 0.3)]),
        "unread" => (PaperKind.NegativeWorking, [new Strip { OnSheet = Lamp(0.1), Light = LightColour.Noon }]),
        _ => (PaperKind.NegativeWorking, [Of(Negative, 0.4, 2, 0.5, 9, exponent: 0.95)]),
    };

    private static Func<double[], double, double> Expected(StripPosterior posterior, Strip first, StripGoal goal)
    {
        var lgLight = Math.Log10(first.OnSheet.Lux * Actinic.Factor(first.Light.ToSpectrum(), PaperSensitivity.BlueSensitive));
        var known = Matrix<double>.Build.DenseOfArray(posterior.Covariance).Inverse();
        var ownInformation = Math.Pow(Math.Max(0.05, first.LightSpread.Value) * Math.Log10(2), -2);
        var sd = Math.Sqrt(posterior.Covariance[3, 3]);
        var nodes = new[] { 0, Math.Sqrt(5 - Math.Sqrt(10)), -Math.Sqrt(5 - Math.Sqrt(10)), Math.Sqrt(5 + Math.Sqrt(10)), -Math.Sqrt(5 + Math.Sqrt(10)) }
            .Select((at, i) => (
                Weight: i == 0 ? 8.0 / 15 : (7 + ((i < 3 ? 2 : -2) * Math.Sqrt(10))) / 60,
                Curve: new Nearby(posterior.Kind, [.. posterior.Free.Select((value, j) => value + (at * posterior.Covariance[j, 3] / sd))])))
            .ToList();
        return (seconds, dimmer) => nodes.Sum(node => node.Weight * Left(node.Curve, seconds, dimmer));

        double Left(Nearby curve, double[] seconds, double dimmer)
        {
            // The unknowns are those of the fit and, in another light than the first strip's, the error of that light.
            var count = known.RowCount;
            var information = Matrix<double>.Build.Dense(count + 1, count + 1);
            information.SetSubMatrix(0, 0, known);
            information[count, count] = ownInformation;
            foreach (var time in seconds)
            {
                var lg = Math.Log10(time);
                var x = lgLight - (dimmer * Math.Log10(2)) + ((0.9 + curve.Free[5]) * lg) + (dimmer > 0 ? 0 : curve.Free[6]);
                var row = Vector<double>.Build.Dense(count + 1);
                row.SetSubVector(0, 5, curve.Derivatives(one => one.DensityAtLg(x)));
                row[5] = curve.Middle.SlopeAtLg(x) * lg;
                row[dimmer > 0 ? count : 6] = curve.Middle.SlopeAtLg(x);
                information += row.OuterProduct(row) / (0.05 * 0.05);
            }

            if (goal == StripGoal.Failure)
            {
                return information.Inverse()[5, 5];
            }

            var shape = information.SubMatrix(0, 6, 0, 6).Inverse().SubMatrix(0, 5, 0, 5);
            return curve.Tones.Sum(slope => slope * shape * slope);
        }
    }

    /// <summary>A curve and those that differ from it by a little in one of the five parameters.</summary>
    private sealed class Nearby
    {
        private const double Small = 1e-5;
        private readonly (LogisticCurve Above, LogisticCurve Below)[] pairs;

        public Nearby(PaperKind kind, double[] free)
        {
            Free = free;
            Middle = Moved(0, 0);
            pairs = [.. Enumerable.Range(0, 5).Select(i => (Moved(i, Small), Moved(i, -Small)))];
            Tones = [Derivatives(LgFirst), Derivatives(LgMid), Derivatives(LgDarkest)];

            LogisticCurve Moved(int parameter, double by)
            {
                var p = (double[])free.Clone();
                p[parameter] += by;
                return LogisticCurve.Create(kind, D(Math.Exp(p[0])), D(Math.Exp(p[0]) + Math.Exp(p[1])), Math.Exp(p[2]), p[3], Math.Exp(p[4]));
            }
        }

        public double[] Free { get; }

        public LogisticCurve Middle { get; }

        public Vector<double>[] Tones { get; }

        public Vector<double> Derivatives(Func<LogisticCurve, double> function)
            => Vector<double>.Build.Dense(5, i => (function(pairs[i].Above) - function(pairs[i].Below)) / (2 * Small));

        private static double LgFirst(LogisticCurve curve) => Lg(curve, curve.MinimumDensity.Value + 0.04);

        // 0.60 on a negative, −lg 0.18 on a positive, both within the scale.
        private static double LgMid(LogisticCurve curve)
        {
            var (min, net) = (curve.MinimumDensity.Value, curve.NetDensity);
            return Lg(curve, curve.Kind == PaperKind.NegativeWorking ? min + Math.Min(0.6, net / 2) : Math.Clamp(0.7447, min + 0.1, min + (0.6 * net)));
        }

        private static double LgDarkest(LogisticCurve curve) => Lg(curve, curve.MinimumDensity.Value + (0.9 * curve.NetDensity));

        private static double Lg(LogisticCurve curve, double density) => Math.Log10(curve.ExposureFor(D(density)).LuxSeconds);
    }
}
