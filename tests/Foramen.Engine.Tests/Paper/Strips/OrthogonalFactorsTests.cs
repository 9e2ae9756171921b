using CsCheck;
using Foramen.Engine.Paper;
using MathNet.Numerics.LinearAlgebra;

namespace Foramen.Engine.Tests.Paper.Strips;

/// <summary>Against the normal equations, solved by a library.</summary>
public class OrthogonalFactorsTests
{
    // Six on the diagonal outweighs the rest of its row, so that the columns never lie in one plane.
    private static readonly Gen<(double[] Jacobian, double[] Residuals, double[] Scale)> GenSystem =
        from jacobian in Gen.Double[-1, 1].Array[7 * 3]
        from residuals in Gen.Double[-2, 2].Array[7]
        from scale in Gen.Double[0.2, 5].Array[3]
        select (jacobian.Select((value, i) => value + (i is 0 or 4 or 8 ? 6 : 0)).ToArray(), residuals, scale);

    // (JᵀJ + d²·S²)·step = −Jᵀr, S the scale of each column.
    [Fact]
    public void The_step_solves_the_damped_normal_equations() => Gen.Select(GenSystem, Gen.OneOf(Gen.Const(0.0), Gen.Double[0.1, 3])).Sample((system, damping) =>
    {
        var step = new OrthogonalFactors(system.Jacobian, 7, 3, system.Scale, damping).SolveNegative(system.Residuals);
        var j = Matrix<double>.Build.DenseOfRowMajor(7, 3, system.Jacobian);
        var normal = j.TransposeThisAndMultiply(j) + Matrix<double>.Build.DiagonalOfDiagonalArray([.. system.Scale.Select(scale => damping * damping * scale * scale)]);
        var left = (normal * Vector<double>.Build.DenseOfArray(step)) + j.TransposeThisAndMultiply(Vector<double>.Build.DenseOfArray(system.Residuals));
        Assert.Equal(0, left.AbsoluteMaximum(), 1e-8);
    });

    [Fact]
    public void The_inverse_is_that_of_the_normal_matrix() => GenSystem.Sample(system =>
    {
        var j = Matrix<double>.Build.DenseOfRowMajor(7, 3, system.Jacobian);
        var inverse = Matrix<double>.Build.DenseOfArray(new OrthogonalFactors(system.Jacobian, 7, 3, system.Scale, 0).InverseOfNormal());
        Assert.Equal(0, ((j.TransposeThisAndMultiply(j) * inverse) - Matrix<double>.Build.DenseIdentity(3)).Enumerate().Max(Math.Abs), 1e-7);
    });

    [Fact]
    public void A_parameter_that_nothing_depends_on_is_left_where_it_is() => GenSystem.Sample(system =>
    {
        var jacobian = system.Jacobian.Select((value, i) => i % 3 == 1 ? 0 : value).ToArray();
        double[] others = [.. system.Jacobian.Where((_, i) => i % 3 != 1)];
        var step = new OrthogonalFactors(jacobian, 7, 3, system.Scale, 0.5).SolveNegative(system.Residuals);
        var without = new OrthogonalFactors(others, 7, 2, [system.Scale[0], system.Scale[2]], 0.5).SolveNegative(system.Residuals);
        Assert.Equal(0, step[1], 1e-12);
        Assert.Equal(without[0], step[0], 1e-9);
        Assert.Equal(without[1], step[2], 1e-9);
    });

    // Columns whose heads are zero are reflected as well.
    [Fact]
    public void A_head_of_zero_is_no_hindrance()
    {
        double[] jacobian = [0, 1, 2, 0, 0, 3];
        var step = new OrthogonalFactors(jacobian, 3, 2, [1, 1], 0).SolveNegative([1, 4, 0]);
        Assert.Equal(-2, step[0], 1e-12);
        Assert.Equal(-0.1, step[1], 1e-12);
    }
}
