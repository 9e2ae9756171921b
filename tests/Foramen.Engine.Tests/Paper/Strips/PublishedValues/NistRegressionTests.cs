using Foramen.Engine.Paper;

namespace Foramen.Engine.Tests.Paper.Strips.PublishedValues;

/// <summary>
/// NIST Statistical Reference Datasets, nonlinear regression: data, both starts, certified parameters, their standard deviations and the residual sum of squares, all
/// written down from memory of the published files (data that were remembered wrongly could not give the certified sums to eight digits). Rat43 is the
/// very curve of this room, Richards's. Derivatives are central differences, so that the problem is stated by its formula alone.
/// </summary>
[Source("nist-strd", Basis.Memory)]
public class NistRegressionTests
{
    private static readonly Dictionary<string, Problem> Problems = new()
    {
        ["Misra1a"] = new(
            (b, x) => b[0] * (1 - Math.Exp(-b[1] * x)),
            [77.6, 114.9, 141.1, 190.8, 239.9, 289.0, 332.8, 378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760.0],
            [10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01, 66.40, 75.47, 81.78],
            [[500, 0.0001], [250, 0.0005]],
            [2.3894212918E+02, 5.5015643181E-04],
            [2.7070075241E+00, 7.2668688436E-06],
            1.2455138894E-01),
        ["DanWood"] = new(
            (b, x) => b[0] * Math.Pow(x, b[1]),
            [1.309, 1.471, 1.490, 1.565, 1.611, 1.680],
            [2.138, 3.421, 3.597, 4.340, 4.882, 5.660],
            [[1, 5], [0.7, 4]],
            [7.6886226176E-01, 3.8604055871E+00],
            [1.8281973860E-02, 5.1726610913E-02],
            4.3173084083E-03),
        ["Rat42"] = new(
            (b, x) => b[0] / (1 + Math.Exp(b[1] - (b[2] * x))),
            [9, 14, 21, 28, 42, 57, 63, 70, 79],
            [8.930, 10.800, 18.590, 22.330, 39.350, 56.110, 61.730, 64.620, 67.080],
            [[100, 1, 0.1], [75, 2.5, 0.07]],
            [7.2462237576E+01, 2.6180768402E+00, 6.7359200066E-02],
            [1.7340283401E+00, 8.8295217536E-02, 3.4465663377E-03],
            8.0565229338E+00),
        ["Rat43"] = new(
            (b, x) => b[0] / Math.Pow(1 + Math.Exp(b[1] - (b[2] * x)), 1 / b[3]),
            [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15],
            [16.08, 33.83, 65.80, 97.20, 191.55, 326.20, 386.87, 520.53, 590.03, 651.92, 724.93, 699.56, 689.96, 637.56, 717.41],
            [[100, 10, 1, 1], [700, 5, 0.75, 1.3]],
            [6.9964151270E+02, 5.2771253025E+00, 7.5962938329E-01, 1.2792483859E+00],
            [1.6302297817E+01, 2.0828735829E+00, 1.9566123451E-01, 6.8761936385E-01],
            8.7864049080E+03),
        ["MGH09"] = new(
            (b, x) => b[0] * ((x * x) + (x * b[1])) / ((x * x) + (x * b[2]) + b[3]),
            [4, 2, 1, 0.5, 0.25, 0.167, 0.125, 0.1, 0.0833, 0.0714, 0.0625],
            [0.1957, 0.1947, 0.1735, 0.1600, 0.0844, 0.0627, 0.0456, 0.0342, 0.0323, 0.0235, 0.0246],
            [[0.25, 0.39, 0.415, 0.39]],
            [1.9280693458E-01, 1.9128232873E-01, 1.2305650693E-01, 1.3606233068E-01],
            [1.1435312227E-02, 1.9633220911E-01, 8.0842031232E-02, 9.0025542308E-02],
            3.0750560385E-04),
    };

    public static TheoryData<string> Names => [.. Problems.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void Certified_values_from_every_start(string name)
    {
        var problem = Problems[name];
        foreach (var start in problem.Starts)
        {
            var fit = LeastSquares.Fit(problem.Evaluate, problem.X.Length, start);
            Assert.True(fit.Converged);
            Assert.False(LeastSquares.Fit(problem.Evaluate, problem.X.Length, start, mostSteps: 1).Converged);
            Assert.Equal(1, fit.SumOfSquares / problem.Sum, 1e-8);
            var variance = fit.SumOfSquares / (problem.X.Length - start.Length);
            var inverse = fit.InverseOfNormal();
            for (var i = 0; i < start.Length; i++)
            {
                Assert.Equal(1, fit.Parameters[i] / problem.Parameters[i], 1e-6);
                Assert.Equal(1, Math.Sqrt(variance * inverse[i, i]) / problem.Deviations[i], 1e-5);
            }
        }
    }

    private sealed record Problem(
        Func<double[], double, double> Model, double[] X, double[] Y, double[][] Starts, double[] Parameters, double[] Deviations, double Sum)
    {
        public void Evaluate(ReadOnlySpan<double> at, Span<double> residuals, Span<double> jacobian)
        {
            var b = at.ToArray();
            for (var i = 0; i < X.Length; i++)
            {
                residuals[i] = Y[i] - Model(b, X[i]);
                for (var j = 0; j < b.Length; j++)
                {
                    var small = 1e-6 * Math.Max(Math.Abs(b[j]), 1e-6);
                    var kept = b[j];
                    b[j] = kept + small;
                    var above = Model(b, X[i]);
                    b[j] = kept - small;
                    jacobian[(i * b.Length) + j] = -(above - Model(b, X[i])) / (2 * small);
                    b[j] = kept;
                }
            }
        }
    }
}
