using System.Runtime.InteropServices;

namespace Foramen.Engine.Quantities;

/// <summary>Cholesky's factorisation for the small symmetric systems of a fit; plain loops, because they are short and run in a browser too, over flat rows: there an element by two indices costs a call.</summary>
internal static class SymmetricMatrix
{
    /// <summary>L with L·Lᵀ the matrix; only the lower half is read and written.</summary>
    /// <param name="matrix">The matrix.</param>
    /// <param name="least">Part of a diagonal element that must remain of it; less is nothing but rounding.</param>
    /// <returns>Null where the matrix is not positive definite.</returns>
    public static double[,]? Factor(double[,] matrix, double least = 0)
    {
        var size = matrix.GetLength(0);
        var result = new double[size, size];
        var from = Flat(matrix);
        var lower = Flat(result);
        for (var i = 0; i < size; i++)
        {
            var row = lower.Slice(i * size, size);
            for (var j = 0; j <= i; j++)
            {
                var other = lower.Slice(j * size, size);
                var sum = from[(i * size) + j];
                for (var k = 0; k < j; k++)
                {
                    sum -= row[k] * other[k];
                }

                if (i != j)
                {
                    row[j] = sum / other[j];
                }
                else if (sum > least * from[(i * size) + i])
                {
                    row[i] = Math.Sqrt(sum);
                }
                else
                {
                    return null;
                }
            }
        }

        return result;
    }

    /// <summary>The solution of (L·Lᵀ)·x = right.</summary>
    public static double[] Solve(double[,] lower, ReadOnlySpan<double> right)
    {
        var size = lower.GetLength(0);
        var flat = Flat(lower);
        var x = new double[size];
        for (var i = 0; i < size; i++)
        {
            var row = flat.Slice(i * size, size);
            var sum = right[i];
            for (var k = 0; k < i; k++)
            {
                sum -= row[k] * x[k];
            }

            x[i] = sum / row[i];
        }

        for (var i = size - 1; i >= 0; i--)
        {
            var row = flat.Slice(i * size, size);
            var value = x[i] /= row[i];
            for (var k = 0; k < i; k++)
            {
                x[k] -= row[k] * value;
            }
        }

        return x;
    }

    /// <summary>The inverse of L·Lᵀ, as M·Mᵀ of M, the inverse of Lᵀ.</summary>
    public static double[,] Inverse(double[,] lower)
    {
        var size = lower.GetLength(0);
        var from = Flat(lower);
        // Row c holds column c of the inverse of L, from c on.
        var columns = new double[size * size];
        for (var c = 0; c < size; c++)
        {
            var column = columns.AsSpan(c * size, size);
            for (var i = c; i < size; i++)
            {
                var row = from.Slice(i * size, size);
                var sum = i == c ? 1.0 : 0;
                for (var k = c; k < i; k++)
                {
                    sum -= row[k] * column[k];
                }

                column[i] = sum / row[i];
            }
        }

        var result = new double[size, size];
        var inverse = Flat(result);
        for (var i = 0; i < size; i++)
        {
            var first = columns.AsSpan(i * size, size);
            for (var j = 0; j <= i; j++)
            {
                var second = columns.AsSpan(j * size, size);
                var sum = 0.0;
                for (var k = i; k < size; k++)
                {
                    sum += first[k] * second[k];
                }

                inverse[(i * size) + j] = inverse[(j * size) + i] = sum;
            }
        }

        return result;
    }

    private static Span<double> Flat(double[,] matrix) => matrix.Length == 0 ? [] : MemoryMarshal.CreateSpan(ref matrix[0, 0], matrix.Length);
}
