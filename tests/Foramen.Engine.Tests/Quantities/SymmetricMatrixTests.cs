using CsCheck;
using Foramen.Engine.Quantities;
using MathNet.Numerics.LinearAlgebra;

namespace Foramen.Engine.Tests.Quantities;

/// <summary>Cholesky's factorisation against the general library's.</summary>
[Source("mathnet", Basis.Library)]
public class SymmetricMatrixTests
{
    // A·Aᵀ plus a little of the unit matrix is positive definite, whatever A is.
    private static readonly Gen<Matrix<double>> AnyPositive = Gen.Int[1, 7].SelectMany(size => Gen.Double[-3, 3].Array[size * size].Select(values =>
    {
        var any = Matrix<double>.Build.Dense(size, size, values);
        return (any * any.Transpose()) + (0.5 * Matrix<double>.Build.DenseIdentity(size));
    }));

    [Fact]
    public void The_factor_is_the_librarys() => AnyPositive.Sample(matrix =>
    {
        var (ours, theirs) = (SymmetricMatrix.Factor(matrix.ToArray())!, matrix.Cholesky().Factor);
        Assert.True((Matrix<double>.Build.DenseOfArray(ours) - theirs).FrobeniusNorm() < 1e-9 * theirs.FrobeniusNorm());
    });

    [Fact]
    public void Solution_and_inverse_are_the_librarys() => Gen.Select(AnyPositive, Gen.Double[-5, 5].Array[7]).Sample((matrix, right) =>
    {
        var size = matrix.RowCount;
        var lower = SymmetricMatrix.Factor(matrix.ToArray())!;
        var expected = matrix.Cholesky().Solve(Vector<double>.Build.Dense(right[..size]));
        Assert.True((Vector<double>.Build.Dense(SymmetricMatrix.Solve(lower, right.AsSpan(0, size))) - expected).L2Norm() <= 1e-8 * (1 + expected.L2Norm()));
        var inverse = matrix.Inverse();
        Assert.True((Matrix<double>.Build.DenseOfArray(SymmetricMatrix.Inverse(lower)) - inverse).FrobeniusNorm() <= 1e-8 * (1 + inverse.FrobeniusNorm()));
    });

    // [[1, 2], [2, 1]] has the eigenvalues 3 and −1; [[1, 1], [1, 1]] has 2 and 0. Of [[1, 1], [1, 1.01]] a hundredth of the last element remains.
    [Fact]
    public void What_is_not_positive_definite_has_no_factor()
    {
        Assert.Null(SymmetricMatrix.Factor(new double[,] { { 1, 2 }, { 2, 1 } }));
        Assert.Null(SymmetricMatrix.Factor(new double[,] { { 1, 1 }, { 1, 1 } }));
        Assert.Null(SymmetricMatrix.Factor(new[,] { { 1, 1 }, { 1, 1.01 } }, 0.02));
        Assert.NotNull(SymmetricMatrix.Factor(new[,] { { 1, 1 }, { 1, 1.01 } }, 0.005));
        Assert.NotNull(SymmetricMatrix.Factor(new[,] { { 1, 1 }, { 1, 1.01 } }));
    }

    // On a diagonal matrix all of each element remains, however large the others are.
    [Fact]
    public void What_has_to_remain_is_measured_by_its_own_element() => Gen.Int[-6, 6].Array[1, 6].Sample(powers =>
    {
        var matrix = new double[powers.Length, powers.Length];
        for (var i = 0; i < powers.Length; i++)
        {
            matrix[i, i] = Math.Pow(10, powers[i]);
        }

        Assert.NotNull(SymmetricMatrix.Factor(matrix, 0.5));
        Assert.Null(SymmetricMatrix.Factor(matrix, 1.5));
    });

    [Fact]
    public void Of_nothing_there_is_nothing()
    {
        var none = SymmetricMatrix.Factor(new double[0, 0]);
        Assert.NotNull(none);
        Assert.Empty(SymmetricMatrix.Inverse(none));
    }
}
