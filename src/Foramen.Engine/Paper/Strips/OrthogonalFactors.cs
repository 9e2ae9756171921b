namespace Foramen.Engine.Paper;

/// <summary>
/// J = Q·R by Householder's reflections (Golub and Van Loan, Matrix Computations, ch. 5), columns scaled to a like length, with a damping row a
/// parameter below. Plain loops: the systems have some twenty rows.
/// </summary>
internal sealed class OrthogonalFactors
{
    private readonly double[] matrix;
    private readonly double[] diagonal;
    private readonly double[] scale;
    private readonly int rows;
    private readonly int count;

    /// <summary>The factors.</summary>
    /// <param name="jacobian">Row by row.</param>
    /// <param name="dataRows">Its rows.</param>
    /// <param name="count">Its columns.</param>
    /// <param name="scale">What each column is divided by.</param>
    /// <param name="damping">On the diagonal below, in units of the scale.</param>
    public OrthogonalFactors(double[] jacobian, int dataRows, int count, double[] scale, double damping)
    {
        this.count = count;
        this.scale = scale;
        rows = dataRows + (damping > 0 ? count : 0);
        matrix = new double[rows * count];
        diagonal = new double[count];
        for (var i = 0; i < dataRows; i++)
        {
            for (var j = 0; j < count; j++)
            {
                matrix[(i * count) + j] = jacobian[(i * count) + j] / scale[j];
            }
        }

        for (var j = 0; damping > 0 && j < count; j++)
        {
            matrix[((dataRows + j) * count) + j] = damping;
        }

        for (var column = 0; column < count; column++)
        {
            Reflect(column);
        }
    }

    /// <summary>The step that makes J·step + residuals smallest.</summary>
    public double[] SolveNegative(double[] residuals)
    {
        var right = new double[rows];
        for (var i = 0; i < residuals.Length; i++)
        {
            right[i] = -residuals[i];
        }

        for (var column = 0; column < count; column++)
        {
            var product = 0.0;
            for (var i = column; i < rows; i++)
            {
                product += matrix[(i * count) + column] * right[i];
            }

            for (var i = column; i < rows; i++)
            {
                right[i] -= product * matrix[(i * count) + column];
            }
        }

        var step = new double[count];
        for (var i = count - 1; i >= 0; i--)
        {
            var sum = right[i];
            for (var j = i + 1; j < count; j++)
            {
                sum -= matrix[(i * count) + j] * step[j];
            }

            step[i] = sum / diagonal[i];
        }

        for (var i = 0; i < count; i++)
        {
            step[i] /= scale[i];
        }

        return step;
    }

    /// <summary>(JᵀJ)⁻¹ = R⁻¹·R⁻ᵀ.</summary>
    public double[,] InverseOfNormal()
    {
        var inverse = new double[count, count];
        for (var column = 0; column < count; column++)
        {
            for (var i = column; i >= 0; i--)
            {
                var sum = i == column ? 1.0 : 0.0;
                for (var j = i + 1; j <= column; j++)
                {
                    sum -= matrix[(i * count) + j] * inverse[j, column];
                }

                inverse[i, column] = sum / diagonal[i];
            }
        }

        var normal = new double[count, count];
        for (var i = 0; i < count; i++)
        {
            for (var j = 0; j < count; j++)
            {
                var sum = 0.0;
                for (var k = Math.Max(i, j); k < count; k++)
                {
                    sum += inverse[i, k] * inverse[j, k];
                }

                normal[i, j] = sum / (scale[i] * scale[j]);
            }
        }

        return normal;
    }

    // Below the diagonal stands the reflection's vector v, scaled so that the reflection is 1 − v·vᵀ; the diagonal of R stands apart.
    private void Reflect(int column)
    {
        var sum = 0.0;
        for (var i = column; i < rows; i++)
        {
            sum += matrix[(i * count) + column] * matrix[(i * count) + column];
        }

        var length = Math.Sqrt(sum);
        var head = matrix[(column * count) + column];
        var sign = head > 0 ? 1 : -1;
        diagonal[column] = -sign * length;
        matrix[(column * count) + column] = head + (sign * length);
        var norm = Math.Sqrt(length * (length + Math.Abs(head)));
        for (var i = column; i < rows; i++)
        {
            matrix[(i * count) + column] /= norm;
        }

        for (var j = column + 1; j < count; j++)
        {
            var product = 0.0;
            for (var i = column; i < rows; i++)
            {
                product += matrix[(i * count) + column] * matrix[(i * count) + j];
            }

            for (var i = column; i < rows; i++)
            {
                matrix[(i * count) + j] -= product * matrix[(i * count) + column];
            }
        }
    }
}
