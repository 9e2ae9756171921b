using CsCheck;
using Foramen.Engine.Light;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using MathNet.Numerics.Distributions;
using static Foramen.Engine.Tests.Paper.PaperExamples;
using static Foramen.Engine.Tests.Paper.Strips.StripExamples;

namespace Foramen.Engine.Tests.Paper.Strips;

/// <summary>The residuals against what the model says of itself, written down apart; their derivatives against differences.</summary>
public class StripModelTests
{
    // First tones 2 and 4 of 5 and 3 patches are three judgements, last tones 3 and 1 four.
    private const int JudgementsOfTwo = 7;

    private static readonly Gen<(PaperKind Kind, double[] Free)> GenCase =
        from kind in Gen.Enum<PaperKind>()
        from min in Gen.Double[0.04, 0.12]
        from net in Gen.Double[1.3, 2.3]
        from k in Gen.Double[3, 6]
        from middle in Gen.Double[0, 1]
        from g in Gen.Double[0.7, 1.4]
        from failure in Gen.Double[-0.1, 0.1]
        from lights in Gen.Double[-0.2, 0.2].Array[2]
        select (kind, (double[])[Math.Log(min), Math.Log(net), Math.Log(k), middle, Math.Log(g), failure, .. lights]);

    private static readonly Strip[] Two =
    [
        new()
        {
            OnSheet = Lamp(0.1),
            Light = LightColour.Lamp,
            Times = [S(2), S(8), S(32), S(128), S(512)],
            Patches = [StripPatch.Masked(D(0.07), 0.02), StripPatch.FullyFogged(D(1.9), 0.03), StripPatch.Exposed(S(0.9), D(0.1), 0.02), StripPatch.Exposed(S(60), D(1.2), 0.04)],
            Eye = [new EyeReading(EyeReadingKind.FirstTone, 2), new EyeReading(EyeReadingKind.LastTone, 3), new EyeReading(EyeReadingKind.Match, 3, D(0.6))],
        },
        new()
        {
            OnSheet = Lamp(0.5),
            Light = LightColour.Lamp,
            LightSpread = Stops.FromValue(0.4),
            Times = [S(1.5), S(6), S(24)],
            Patches = [StripPatch.Exposed(S(12), D(1.5), 0.02)],
            Eye = [new EyeReading(EyeReadingKind.FirstTone, 4), new EyeReading(EyeReadingKind.LastTone, 1)],
        },
    ];

    [Fact]
    public void Derivatives_are_those_of_the_residuals() => GenCase.Sample(one =>
    {
        var model = new StripModel(one.Kind, RowsOf(one.Kind, Two), StripPrior.Usual);
        var jacobian = Evaluate(model, one.Free).Jacobian;
        for (var j = 0; j < model.Count; j++)
        {
            const double Small = 1e-4;
            var (above, below) = ((double[])one.Free.Clone(), (double[])one.Free.Clone());
            above[j] += Small;
            below[j] -= Small;
            var (more, less) = (Evaluate(model, above).Residuals, Evaluate(model, below).Residuals);
            for (var i = 0; i < model.Rows; i++)
            {
                // A judgement beyond six deviations counts as certain and beyond thirty as a straight line; no derivative goes over those two steps.
                var judged = i >= model.Rows - model.Count - JudgementsOfTwo && i < model.Rows - model.Count;
                if (judged && (Math.Min(more[i], less[i]) < 1e-3 || (more[i] > 29.9 && less[i] < 30.3) || (less[i] > 29.9 && more[i] < 30.3)))
                {
                    continue;
                }

                var derivative = jacobian[(i * model.Count) + j];
                Assert.Equal((more[i] - less[i]) / (2 * Small), derivative, 2e-3 * Math.Max(1, Math.Abs(derivative)));
            }
        }
    });

    // A density misses the curve by so many of its spreads (reading and family together), a judgement has the probability Φ(z), a parameter its prior.
    [Fact]
    public void Half_the_sum_of_squares_is_the_logarithm_of_the_posterior() => GenCase.Sample(one =>
    {
        var (kind, free) = one;
        var model = new StripModel(kind, RowsOf(kind, Two), StripPrior.Usual);
        var curve = LogisticCurve.Create(kind, D(Math.Exp(free[0])), D(Math.Exp(free[0]) + Math.Exp(free[1])), Math.Exp(free[2]), free[3], Math.Exp(free[4]));
        double At(int strip, double seconds) => curve.DensityAtLg(
            Math.Log10(Two[strip].OnSheet.Lux) + ((0.9 + (seconds > 1 ? free[5] : 0)) * Math.Log10(seconds)) + (seconds > 1 ? 0 : 0.1 * Math.Log10(seconds)) + free[6 + strip]);
        double Off(double read, double density, double spread) => Math.Pow(read - density, 2) / ((spread * spread) + (0.01 * 0.01));
        double Told(double difference, double threshold, bool seen)
        {
            var z = (seen ? 1 : -1) * Math.Log(Math.Abs(difference) / threshold) / 0.4;
            return z < -30 ? z * z : -2 * Math.Log(Normal.CDF(0, 1, z));
        }

        var (first, last) = kind == PaperKind.NegativeWorking ? (0.03, 0.06) : (0.06, 0.03);
        var unexposed = curve.UnexposedDensity.Value;
        var fogged = curve.MinimumDensity.Value + curve.MaximumDensity.Value - unexposed;
        var expected = Off(0.07, unexposed, 0.02) + Off(1.9, fogged, 0.03) + Off(0.1, At(0, 0.9), 0.02) + Off(1.2, At(0, 60), 0.04) + Off(0.6, At(0, 32), 0.06)
            + Off(1.5, At(1, 12), 0.02)
            + Told(At(0, 8) - unexposed, first, true) + Told(At(0, 2) - unexposed, first, false)
            + Told(At(0, 128) - At(0, 32), last, true) + Told(At(0, 512) - At(0, 128), last, false)
            + Told(At(1, 24) - unexposed, first, false)
            + Told(At(1, 6) - At(1, 1.5), last, true) + Told(At(1, 24) - At(1, 6), last, false);
        (double Mean, double Sd)[] priors =
        [
            (Math.Log(0.07), 0.5), (Math.Log(1.85), 0.22), (Math.Log(5.5), 0.45), (0.7, 1.2), (0, 0.35), (0, 0.05), (0, 0.25 * Math.Log10(2)), (0, 0.4 * Math.Log10(2)),
        ];
        expected += priors.Select((prior, j) => Math.Pow((free[j] - prior.Mean) / prior.Sd, 2)).Sum();
        Assert.Equal(expected, Evaluate(model, free).Residuals.Sum(residual => residual * residual), 1e-5 * expected);
    });

    // A difference that is the threshold is seen half the time; one e^0.4 as large with Φ(1) = 0.841345 (any table of the normal distribution).
    [Theory]
    [InlineData(0, true, 0.5)]
    [InlineData(0, false, 0.5)]
    [InlineData(1, true, 0.841344746)]
    [InlineData(-1, false, 0.841344746)]
    [InlineData(-1, true, 0.158655254)]
    [InlineData(1, false, 0.158655254)]
    public void What_an_eye_tells_apart_is_as_likely_as_the_normal_distribution_says(double deviations, bool seen, double probability)
    {
        // Without asymmetry and in the middle of the curve the first patch has half of the net density, which is as large as asked.
        var net = 2 * 0.03 * Math.Exp(0.4 * deviations);
        var strip = new Strip { OnSheet = Lamp(1), Light = LightColour.Lamp, Times = [S(1)], Eye = [new EyeReading(EyeReadingKind.FirstTone, seen ? 1 : 2)] };
        var model = new StripModel(PaperKind.NegativeWorking, RowsOf(PaperKind.NegativeWorking, strip), StripPrior.Usual);
        Assert.Equal(Math.Sqrt(-2 * Math.Log(probability)), Evaluate(model, [Math.Log(0.07), Math.Log(net), Math.Log(5), 0, 0, 0, 0]).Residuals[0], 1e-7);
    }

    // −2 ln Φ(z) = z² + ln(2πz²) far outside, by the asymptotic series of Φ.
    [Theory]
    [InlineData(1e-3, true)]
    [InlineData(1e-5, true)]
    [InlineData(1e-8, true)]
    [InlineData(1e-11, true)]
    [InlineData(1.0, false)]
    [InlineData(0.5, false)]
    public void Far_outside_a_judgement_counts_as_the_square_of_its_deviations(double difference, bool seen)
    {
        var strip = new Strip { OnSheet = Lamp(1), Light = LightColour.Lamp, Times = [S(1)], Eye = [new EyeReading(EyeReadingKind.FirstTone, seen ? 1 : 2)] };
        var model = new StripModel(PaperKind.NegativeWorking, RowsOf(PaperKind.NegativeWorking, strip), StripPrior.Usual);
        var z = Math.Log(difference / 0.03) / 0.4;
        Assert.Equal(Math.Sqrt((z * z) + Math.Log(2 * Math.PI * z * z)), Evaluate(model, [Math.Log(0.07), Math.Log(2 * difference), Math.Log(5), 0, 0, 0, 0]).Residuals[0], 0.01 * Math.Abs(z));
    }

    // Two blacks that no number tells apart were told apart: next to impossible, but finite, and the way back is downhill.
    [Theory]
    [InlineData(PaperKind.NegativeWorking)]
    [InlineData(PaperKind.DirectPositive)]
    public void What_cannot_be_told_apart_still_pulls_the_curve_to_where_it_can(PaperKind kind)
    {
        var strip = new Strip { OnSheet = Lamp(1), Light = LightColour.Lamp, Times = [S(1)], Eye = [new EyeReading(EyeReadingKind.FirstTone, 1)] };
        var model = new StripModel(kind, RowsOf(kind, strip), StripPrior.Usual);
        var (residuals, jacobian) = Evaluate(model, [Math.Log(0.07), Math.Log(1.8), Math.Log(7), 5, 0, 0, 0]);
        Assert.InRange(residuals[0], 50, 80);
        Assert.True(double.IsFinite(jacobian[StripParameters.Middle]));
        Assert.True(jacobian[StripParameters.Middle] > 0);
    }

    [Fact]
    public void What_is_plainly_told_apart_says_nothing_more()
    {
        var strip = new Strip { OnSheet = Lamp(1), Light = LightColour.Lamp, Times = [S(1)], Eye = [new EyeReading(EyeReadingKind.FirstTone, 1)] };
        var model = new StripModel(PaperKind.NegativeWorking, RowsOf(PaperKind.NegativeWorking, strip), StripPrior.Usual);
        var (residuals, jacobian) = Evaluate(model, [Math.Log(0.07), Math.Log(2), Math.Log(5), 0, 0, 0, 0]);
        Assert.Equal(0, residuals[0], 1e-12);
        Assert.All(jacobian[..model.Count], derivative => Assert.Equal(0, derivative, 1e-12));
    }

    // Huber 1964, c = 1.5: full weight up to 1.5 spreads, then c over the distance. Spreads of 0.03 and 0.04 make 0.05; a slope of 2 times 0.06 in lg H beside
    // them makes 0.13.
    [Theory]
    [InlineData(0.05, 0, 1)]
    [InlineData(-0.074, 0, 1)]
    [InlineData(0.15, 0, 0.5)]
    [InlineData(-0.30, 0, 0.25)]
    [InlineData(0.26, 0.06, 0.75)]
    [InlineData(-0.39, 0.06, 0.5)]
    public void A_density_far_off_counts_less(double off, double lgSpread, double weight)
    {
        var strip = new Strip
        {
            OnSheet = Lamp(1),
            Light = LightColour.Lamp,
            Patches = [StripPatch.Exposed(S(1), D(1.1 + off), 0.03, S(lgSpread * Math.Log(10))), StripPatch.Masked(D(0.1), 0.03)],
        };
        var model = new StripModel(PaperKind.NegativeWorking, RowsOf(PaperKind.NegativeWorking, strip), StripPrior.Usual with { CurveSpread = 0.04 });
        double[] free = [Math.Log(0.1), Math.Log(2), Math.Log(4), 0, 0, 0, 0];
        Assert.Equal([1, 1], model.Weights);
        var stated = off / 0.05;
        Assert.Equal(stated, Evaluate(model, free).Residuals[0], 1e-9);

        var change = model.Reweigh(free, 1);
        var spread = lgSpread > 0 ? 0.13 : 0.05;
        Assert.Equal(weight, model.Weights[0], 1e-9);
        Assert.Equal(1, model.Weights[1]);
        Assert.Equal(Math.Sqrt(weight) * off / spread, Evaluate(model, free).Residuals[0], 1e-9);
        Assert.Equal(Math.Max(1 - weight, (spread / 0.05) - 1), change, 1e-9);
        Assert.Equal(0, model.Reweigh(free, 1), 1e-12);

        // Twice the scale halves the distance.
        model.Reweigh(free, 2);
        Assert.Equal(Math.Min(1, 2 * 1.5 / (Math.Abs(off) / spread)), model.Weights[0], 1e-9);
    }

    // The trace of (JᵀJ)⁻¹·JᵀJ is the number of parameters: what densities do not decide is left to judgements and priors.
    [Fact]
    public void Densities_and_priors_decide_all_parameters_between_them() => GenCase.Sample(one =>
    {
        Strip[] measured = [.. Two.Select(strip => strip with { Eye = [] })];
        var rows = RowsOf(one.Kind, measured);
        var model = new StripModel(one.Kind, rows, StripPrior.Usual);
        var fit = LeastSquares.Fit(model.Evaluate, model.Rows, one.Free, 1e-10, 200);
        var covariance = fit.InverseOfNormal();
        double[] spreads = [0.5, 0.22, 0.45, 1.2, 0.35, 0.05, .. rows.LightSpreads];
        var (squares, decided) = model.DensitySums(fit.Parameters, covariance);
        Assert.Equal(model.Count - spreads.Select((sd, j) => covariance[j, j] / (sd * sd)).Sum(), decided, 1e-6);
        Assert.Equal(Evaluate(model, fit.Parameters).Residuals[..rows.Patches.Count].Sum(residual => residual * residual), squares, 1e-9);
    });

    private static StripRows RowsOf(PaperKind kind, params Strip[] strips) => StripRows.Of(strips, kind, PaperSensitivity.BlueSensitive, SchwarzschildFailure.FromExponent(0.9));

    // What is not filled in must not be taken for nothing, so the arrays come dirty.
    private static (double[] Residuals, double[] Jacobian) Evaluate(StripModel model, double[] free)
    {
        var (residuals, jacobian) = (new double[model.Rows], new double[model.Rows * model.Count]);
        Array.Fill(residuals, 7);
        Array.Fill(jacobian, 7);
        model.Evaluate(free, residuals, jacobian);
        return (residuals, jacobian);
    }
}
