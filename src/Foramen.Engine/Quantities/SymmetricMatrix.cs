namespace Foramen.Engine.Quantities;

/// <summary>Cholesky's factorisation for the small symmetric systems of a fit; plain loops, because they are short and run in a browser too.</summary>
internal static class SymmetricMatrix
{
    /// <summary>L with L·Lᵀ the matrix; only the lower half is read and written.</summary>
    /// <param name="matrix">The matrix.</param>
    /// <param name="least">Part of a diagonal element that must remain of it; less is nothing but rounding.</param>
    /// <returns>Null where the matrix is not positive definite.</returns>
    public static double[,]? Factor(double[,] matrix, double least = 0)
    {
        var size = matrix.GetLength(0);
        var lower = new double[size, size];
        for (var i = 0; i < size; i++)
        {
            for (var j = 0; j <= i; j++)
            {
                var sum = matrix[i, j];
                for (var k = 0; k < j; k++)
                {
                    sum -= lower[i, k] * lower[j, k];
                }

                if (i == j && !(sum > least * matrix[i, i]))
                {
                    return null;
                }

                lower[i, j] = i == j ? Math.Sqrt(sum) : sum / lower[j, j];
            }
        }

        return lower;
    }

    /// <summary>The solution of (L·Lᵀ)·x = right.</summary>
    public static double[] Solve(double[,] lower, ReadOnlySpan<double> right)
    {
        var size = lower.GetLength(0);
        var x = new double[size];
        for (var i = 0; i < size; i++)
        {
            var sum = right[i];
            for (var k = 0; k < i; k++)
            {
                sum -= lower[i, k] * x[k];
            }

            x[i] = sum / lower[i, i];
        }

        for (var i = size - 1; i >= 0; i--)
        {
            var sum = x[i];
            for (var k = i + 1; k < size; k++)
            {
                sum -= lower[k, i] * x[k];
            }

            x[i] = sum / lower[i, i];
        }

        return x;
    }

    /// <summary>The inverse of L·Lᵀ.</summary>
    public static double[,] Inverse(double[,] lower)
    {
        var size = lower.GetLength(0);
        var inverse = new double[size, size];
        var unit = new double[size];
        for (var column = 0; column < size; column++)
        {
            Array.Clear(unit);
            unit[column] = 1;
            var solved = Solve(lower, unit);
            for (var row = 0; row < size; row++)
            {
                inverse[row, column] = solved[row];
            }
        }

        return inverse;
    }
}
