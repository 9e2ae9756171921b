namespace Foramen.Engine.Paper;

/// <summary>
/// Nonlinear least squares by Levenberg and Marquardt's method (J. J. Moré, "The Levenberg–Marquardt algorithm: implementation and theory", 1978, for the
/// scaling; H. B. Nielsen, IMM-REP-1999-05, for the damping), each step by orthogonal factors, so that no normal equations square the condition. Small and
/// without helpers because it runs hundreds of times while a slider moves, also in a browser.
/// </summary>
internal sealed class LeastSquares
{
    private readonly OrthogonalFactors factors;

    private LeastSquares(double[] parameters, double sum, OrthogonalFactors factors, bool converged)
    {
        Parameters = parameters;
        SumOfSquares = sum;
        this.factors = factors;
        Converged = converged;
    }

    /// <summary>Where the sum is least.</summary>
    public double[] Parameters { get; }

    /// <summary>The least sum of squares.</summary>
    public double SumOfSquares { get; }

    /// <summary>Whether it settled within the steps allowed.</summary>
    public bool Converged { get; }

    /// <summary>(JᵀJ)⁻¹, to be multiplied by the variance of a residual.</summary>
    public double[,] InverseOfNormal() => factors.InverseOfNormal();

    /// <summary>Finds the least sum of squares near some parameters.</summary>
    /// <param name="model">Residuals and derivatives.</param>
    /// <param name="rows">How many residuals, at least as many as parameters.</param>
    /// <param name="start">Where to start.</param>
    /// <param name="tolerance">Relative change of parameters and sum at which it has settled.</param>
    /// <param name="mostSteps">Steps allowed.</param>
    public static LeastSquares Fit(LeastSquaresModel model, int rows, ReadOnlySpan<double> start, double tolerance = 1e-12, int mostSteps = 500)
    {
        var count = start.Length;
        var at = start.ToArray();
        var trial = new double[count];
        var (residuals, jacobian) = (new double[rows], new double[rows * count]);
        var (newResiduals, newJacobian) = (new double[rows], new double[rows * count]);
        var scale = new double[count];
        model(at, residuals, jacobian);
        var sum = Square(residuals);
        var (damping, growth) = (1e-3, 2.0);
        var converged = false;
        for (var step = 0; step < mostSteps && !converged; step++)
        {
            Widen(scale, jacobian, rows);
            var move = new OrthogonalFactors(jacobian, rows, count, scale, Math.Sqrt(damping)).SolveNegative(residuals);
            var (length, size) = (0.0, 0.0);
            for (var i = 0; i < count; i++)
            {
                trial[i] = at[i] + move[i];
                length = Math.Max(length, Math.Abs(move[i]) * scale[i]);
                size = Math.Max(size, Math.Abs(at[i]) * scale[i]);
            }

            model(trial, newResiduals, newJacobian);
            var newSum = Square(newResiduals);
            var foretold = Foretold(jacobian, residuals, move, rows);
            converged = length <= tolerance * (size + tolerance) || foretold <= tolerance * tolerance * sum;
            if (double.IsFinite(newSum) && newSum <= sum)
            {
                var gain = foretold > 0 ? (sum - newSum) / foretold : 1;
                damping *= Math.Max(1.0 / 3, 1 - Math.Pow((2 * gain) - 1, 3));
                damping = Math.Max(damping, 1e-15);
                growth = 2;
                (at, trial) = (trial, at);
                (residuals, newResiduals) = (newResiduals, residuals);
                (jacobian, newJacobian) = (newJacobian, jacobian);
                sum = newSum;
            }
            else
            {
                damping *= growth;
                growth *= 2;
                converged |= damping > 1e12;
            }
        }

        return new LeastSquares(at, sum, new OrthogonalFactors(jacobian, rows, count, scale, 0), converged);
    }

    private static double Square(double[] residuals)
    {
        var sum = 0.0;
        foreach (var one in residuals)
        {
            sum += one * one;
        }

        return sum;
    }

    private static void Widen(double[] scale, double[] jacobian, int rows)
    {
        for (var j = 0; j < scale.Length; j++)
        {
            var sum = 0.0;
            for (var i = 0; i < rows; i++)
            {
                sum += jacobian[(i * scale.Length) + j] * jacobian[(i * scale.Length) + j];
            }

            scale[j] = Math.Max(scale[j], Math.Max(Math.Sqrt(sum), 1e-30));
        }
    }

    /// <summary>How much less the sum would be if the model were linear.</summary>
    private static double Foretold(double[] jacobian, double[] residuals, double[] move, int rows)
    {
        var less = 0.0;
        for (var i = 0; i < rows; i++)
        {
            var change = 0.0;
            for (var j = 0; j < move.Length; j++)
            {
                change += jacobian[(i * move.Length) + j] * move[j];
            }

            less -= change * ((2 * residuals[i]) + change);
        }

        return less;
    }
}
