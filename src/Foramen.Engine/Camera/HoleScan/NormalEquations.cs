using Foramen.Engine.Quantities;

namespace Foramen.Engine.Camera;

/// <summary>Least squares with a dozen unknowns: sums of products, solved by Cholesky's method.</summary>
internal sealed class NormalEquations(int count)
{
    private const double LeastPart = 1e-14;

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
    public double[]? Solve(double damping) => Factor(damping) is { } lower ? SymmetricMatrix.Solve(lower, right) : null;

    /// <summary>The inverse of the sums' matrix: the covariance of the unknowns for residuals of variance one; null as above.</summary>
    public double[,]? Inverse() => Factor(0) is { } lower ? SymmetricMatrix.Inverse(lower) : null;

    private double[,]? Factor(double damping)
    {
        var matrix = new double[count, count];
        for (var i = 0; i < count; i++)
        {
            for (var j = 0; j <= i; j++)
            {
                matrix[i, j] = products[(i * count) + j] * (i == j ? 1 + damping : 1);
            }
        }

        return SymmetricMatrix.Factor(matrix, LeastPart);
    }
}
