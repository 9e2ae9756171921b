using CsCheck;
using Foramen.Engine.Paper;

namespace Foramen.Engine.Tests.Paper.Strips;

public class LeastSquaresTests
{
    // H. H. Rosenbrock, Computer Journal 3, 175 (1960): r = (10·(y − x²), 1 − x), start (−1.2, 1), the least sum is 0 at (1, 1); written down from memory.
    [Fact]
    public void The_banana_valley_is_followed_to_its_end()
    {
        var calls = 0;
        var fit = LeastSquares.Fit(
            (at, residuals, jacobian) =>
            {
                calls++;
                residuals[0] = 10 * (at[1] - (at[0] * at[0]));
                residuals[1] = 1 - at[0];
                jacobian[0] = -20 * at[0];
                jacobian[1] = 10;
                jacobian[2] = -1;
                jacobian[3] = 0;
            },
            2,
            [-1.2, 1]);
        Assert.True(fit.Converged);
        Assert.Equal(1, fit.Parameters[0], 1e-9);
        Assert.Equal(1, fit.Parameters[1], 1e-9);
        Assert.InRange(calls, 5, 60);
    }

    // One parameter, y = e^(b·x): the valley's floor is far from the start, and many scales of it must settle alike.
    [Fact]
    public void Where_it_settles_does_not_hang_on_the_units() => Gen.Select(Gen.Double[-3, 3], Gen.Double[0.2, 1.5]).Sample((lgUnit, truth) =>
    {
        var unit = Math.Pow(10, lgUnit);
        var calls = 0;
        var fit = LeastSquares.Fit(
            (at, residuals, jacobian) =>
            {
                calls++;
                for (var i = 0; i < 5; i++)
                {
                    residuals[i] = Math.Exp(truth * i) + (i % 2 == 0 ? 0.1 : -0.1) - Math.Exp(at[0] * unit * i);
                    jacobian[i] = -i * unit * Math.Exp(at[0] * unit * i);
                }
            },
            5,
            [0.1 / unit]);
        Assert.True(fit.Converged);
        Assert.InRange(calls, 2, 40);

        // At the least sum the residuals stand upright on the derivative.
        var b = fit.Parameters[0] * unit;
        var slope = Enumerable.Range(0, 5).Sum(i => (Math.Exp(truth * i) + (i % 2 == 0 ? 0.1 : -0.1) - Math.Exp(b * i)) * i * Math.Exp(b * i));
        Assert.Equal(0, slope / Math.Exp(8 * b), 1e-8);
    });

    // A plane is foretold without error, so each step is believed more than the last.
    [Fact]
    public void A_line_is_found_in_a_few_steps()
    {
        var calls = 0;
        var fit = LeastSquares.Fit(
            (at, residuals, jacobian) =>
            {
                calls++;
                for (var i = 0; i < 4; i++)
                {
                    residuals[i] = at[0] + (at[1] * i) - (3 + (2 * i));
                    jacobian[2 * i] = 1;
                    jacobian[(2 * i) + 1] = i;
                }
            },
            4,
            [0, 0]);
        Assert.True(fit.Converged);
        Assert.Equal(3, fit.Parameters[0], 1e-9);
        Assert.Equal(2, fit.Parameters[1], 1e-9);
        Assert.InRange(calls, 2, 8);
    }

    [Fact]
    public void Where_every_step_leads_to_nothing_it_stays_and_stops()
    {
        var calls = 0;
        var fit = LeastSquares.Fit(
            (at, residuals, jacobian) =>
            {
                calls++;
                residuals[0] = at[0] == 1 ? 2 : double.NaN;
                jacobian[0] = 1;
            },
            1,
            [1]);
        Assert.Equal(1, fit.Parameters[0]);
        Assert.Equal(4, fit.SumOfSquares);
        Assert.True(fit.Converged);
        Assert.InRange(calls, 3, 30);
    }
}
