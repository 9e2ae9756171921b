using CsCheck;
using Foramen.Engine.Camera;
using MathNet.Numerics.LinearAlgebra;

namespace Foramen.Engine.Tests.Camera;

public sealed class NormalEquationsTests
{
    private const int Unknowns = 4;
    private const int Seen = 12;

    private static readonly Gen<(double[] Derivatives, double[] Residuals, double[] Weights)> AnySums = Gen.Select(
        Gen.Double[-3, 3].Array[Unknowns * Seen], Gen.Double[-2, 2].Array[Seen], Gen.Double[0.1, 1].Array[Seen]);

    // Another road: the rows stacked, each times the root of its weight and the damping as rows of its own, and solved by QR, which forms no products.
    [Fact]
    public void The_step_is_that_of_stacked_least_squares() => Gen.Select(AnySums, Gen.Double[0, 0.5]).Sample((sums, damping) =>
    {
        var (rows, right) = Stacked(sums);
        var diagonal = Matrix<double>.Build.Diagonal(Unknowns, Unknowns, i => Math.Sqrt(damping) * rows.Column(i).L2Norm());
        var expected = rows.Stack(diagonal).QR().Solve(Vector<double>.Build.DenseOfEnumerable(right.Concat(new double[Unknowns])));
        var step = Summed(sums).Solve(damping)!;
        var scale = 1 + expected.AbsoluteMaximum();
        for (var i = 0; i < Unknowns; i++)
        {
            Assert.Equal(expected[i], step[i], 1e-6 * scale);
        }
    });

    [Fact]
    public void The_inverse_times_the_sums_is_one() => AnySums.Sample(sums =>
    {
        var (rows, _) = Stacked(sums);
        var product = rows.TransposeThisAndMultiply(rows) * Matrix<double>.Build.DenseOfArray(Summed(sums).Inverse()!);
        Assert.True((product - Matrix<double>.Build.DenseIdentity(Unknowns)).L2Norm() < 1e-6);
    });

    // Unknowns outside the part that is read might hold anything.
    [Fact]
    public void Only_the_part_that_is_told_of_is_read() => Gen.Select(AnySums, Gen.Int[0, Unknowns - 1], Gen.Int[1, Unknowns]).Sample((sums, first, count) =>
    {
        var end = Math.Min(Unknowns, first + count);
        var (part, whole) = (Summed(sums), Summed(sums));
        var (rubbish, zeros) = (new double[Unknowns], new double[Unknowns]);
        Array.Fill(rubbish, 1e6);
        for (var i = first; i < end; i++)
        {
            rubbish[i] = zeros[i] = 1.5 + i;
        }

        part.Add(rubbish, 0.7, 0.5, first, end);
        whole.Add(zeros, 0.7, 0.5, 0, Unknowns);
        var (one, other) = (part.Solve(0)!, whole.Solve(0)!);
        for (var i = 0; i < Unknowns; i++)
        {
            Assert.Equal(other[i], one[i], 1e-9 * (1 + Math.Abs(other[i])));
        }
    });

    [Fact]
    public void An_unknown_that_nothing_was_said_of_has_no_answer()
    {
        var sums = new NormalEquations(2);
        sums.Add([1, 0], 1, 1, 0, 2);
        sums.Add([2, 0], 1, 1, 0, 2);
        Assert.Null(sums.Solve(1e-3));
        Assert.Null(sums.Inverse());
    }

    private static NormalEquations Summed((double[] Derivatives, double[] Residuals, double[] Weights) seen)
    {
        var sums = new NormalEquations(Unknowns);
        for (var i = 0; i < Seen; i++)
        {
            sums.Add(seen.Derivatives.AsSpan(i * Unknowns, Unknowns), seen.Residuals[i], seen.Weights[i], 0, Unknowns);
        }

        return sums;
    }

    private static (Matrix<double> Rows, double[] Right) Stacked((double[] Derivatives, double[] Residuals, double[] Weights) seen)
        => (Matrix<double>.Build.Dense(Seen, Unknowns, (i, j) => Math.Sqrt(seen.Weights[i]) * seen.Derivatives[(i * Unknowns) + j]),
            [.. seen.Residuals.Select((residual, i) => Math.Sqrt(seen.Weights[i]) * residual)]);
}
