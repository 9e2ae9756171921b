using Foramen.Engine.Paper;

namespace Foramen.Engine.Tests.Paper.Strips.PublishedValues;

/// <summary>
/// Nine patches 0.15 apart from lg H −0.30, made from Dmin 0.06, Dn 2, k 5.5, x0 0.50; fitted apart from this code by a Levenberg–Marquardt routine of another
/// language's library, all four parameters free and no priors.
/// </summary>
[Source("levenberg-marquardt", Basis.Library)]
public class LogisticPatchesTests
{
    [Theory]
    [InlineData(new[] { 0.08, 0.11, 0.18, 0.31, 0.56, 0.92, 1.33, 1.66, 1.86 }, 0.0568, 2.0026, 5.514, 0.4992)]
    [InlineData(new[] { 0.09, 0.09, 0.20, 0.31, 0.53, 0.95, 1.31, 1.67, 1.85 }, 0.0625, 1.9744, 5.645, 0.4958)]
    public void Four_free_parameters(double[] densities, double min, double net, double k, double middle)
    {
        var fit = LeastSquares.Fit(
            (b, residuals, jacobian) =>
            {
                var shape = new CurveShape(PaperKind.NegativeWorking, Math.Exp(b[0]), Math.Exp(b[1]), Math.Exp(b[2]), b[3], 1);
                Span<double> gradient = stackalloc double[5];
                for (var i = 0; i < densities.Length; i++)
                {
                    var x = -0.30 + (0.15 * i);
                    residuals[i] = densities[i] - shape.Density(x);
                    shape.Gradient(x, gradient);
                    for (var j = 0; j < 4; j++)
                    {
                        jacobian[(i * 4) + j] = -gradient[j];
                    }
                }
            },
            densities.Length,
            [Math.Log(0.1), Math.Log(1.8), Math.Log(4), 0.3]);
        Assert.Equal(min, Math.Exp(fit.Parameters[0]), 0.002);
        Assert.Equal(net, Math.Exp(fit.Parameters[1]), 0.005);
        Assert.Equal(k, Math.Exp(fit.Parameters[2]), 0.03);
        Assert.Equal(middle, fit.Parameters[3], 0.002);
    }
}
