namespace Foramen.Engine.Camera;

/// <summary>Least squares with a dozen unknowns: sums of products, solved by Cholesky's method.</summary>
internal sealed class NormalEquations(int count)
{
    // Row by row, the lower half.
    private readonly double[] products = new double[count * count];
    private readonly double[] right = new double[count];

    /// <summary>Adds a residual with its derivatives by each unknown.</summary>
    /// <param name="derivatives">By every unknown; only those from <paramref name="first"/> to before <paramref name="end"/> are read.</param>
    /// <param name="residual">What was seen less what the model says.</param>
    /// <param name="weight">Its weight.</param>
    /// <param name="first">First unknown that matters here.</param>
    /// <param name="end">After the last one.</param>
    public void Add(ReadOnlySpan<double> derivatives, double residual, double weight, int first, int end)
    {
        for (var i = first; i < end; i++)
        {
            var scaled = weight * derivatives[i];
            right[i] += scaled * residual;
            var row = products.AsSpan(i * count, i + 1);
            for (var j = first; j < row.Length; j++)
            {
                row[j] += scaled * derivatives[j];
            }
        }
    }

    /// <summary>The step, with the diagonal raised by a part of itself (Levenberg and Marquardt); null if the sums say nothing of some unknown.</summary>
    public double[]? Solve(double damping) => Factor(damping) is { } factor ? Back(factor, right) : null;

    /// <summary>The inverse of the sums' matrix: the covariance of the unknowns for residuals of variance one; null as above.</summary>
    public double[,]? Inverse()
    {
        if (Factor(0) is not { } factor)
        {
            return null;
        }

        var inverse = new double[count, count];
        for (var column = 0; column < count; column++)
        {
            var unit = new double[count];
            unit[column] = 1;
            var solved = Back(factor, unit);
            for (var row = 0; row < count; row++)
            {
                inverse[row, column] = solved[row];
            }
        }

        return inverse;
    }

    private double[,]? Factor(double damping)
    {
        var factor = new double[count, count];
        for (var i = 0; i < count; i++)
        {
            for (var j = 0; j <= i; j++)
            {
                var sum = products[(i * count) + j] * (i == j ? 1 + damping : 1);
                for (var k = 0; k < j; k++)
                {
                    sum -= factor[i, k] * factor[j, k];
                }

                if (i == j && !(sum > 1e-14 * products[(i * count) + i]))
                {
                    return null;
                }

                factor[i, j] = i == j ? Math.Sqrt(sum) : sum / factor[j, j];
            }
        }

        return factor;
    }

    private double[] Back(double[,] factor, double[] values)
    {
        var solved = (double[])values.Clone();
        for (var i = 0; i < count; i++)
        {
            for (var k = 0; k < i; k++)
            {
                solved[i] -= factor[i, k] * solved[k];
            }

            solved[i] /= factor[i, i];
        }

        for (var i = count - 1; i >= 0; i--)
        {
            for (var k = i + 1; k < count; k++)
            {
                solved[i] -= factor[k, i] * solved[k];
            }

            solved[i] /= factor[i, i];
        }

        return solved;
    }
}
