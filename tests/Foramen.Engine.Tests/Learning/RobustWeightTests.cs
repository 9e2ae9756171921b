using Foramen.Engine.Learning;
using MathNet.Numerics.Distributions;

namespace Foramen.Engine.Tests.Learning;

public class RobustWeightTests
{
    // Lange, Little and Taylor 1989: (ν + 1)/(ν + z²) with ν = 4; also from the density itself, −(log t)'/z.
    [Theory]
    [InlineData(0.5)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(6)]
    public void A_value_weighs_as_the_slope_of_Student_s_t_over_its_distance(double z)
    {
        const double step = 1e-5;
        var slope = (StudentT.PDFLn(0, 1, 4, z + step) - StudentT.PDFLn(0, 1, 4, z - step)) / (2 * step);
        Assert.Equal(-slope / z, RobustWeight.OfSquare(z * z), 1e-8);
    }

    [Theory]
    [InlineData(-6)]
    [InlineData(-3)]
    [InlineData(-1)]
    [InlineData(0)]
    [InlineData(0.7)]
    [InlineData(2)]
    public void A_bound_steps_and_informs_as_the_derivatives_of_log_Phi_by_finite_differences(double z)
    {
        const double step = 1e-4;
        double Log(double at) => Math.Log(Normal.CDF(0, 1, at));
        var slope = (Log(z + step) - Log(z - step)) / (2 * step);
        var bend = (Log(z + step) - (2 * Log(z)) + Log(z - step)) / (step * step);
        var (move, information, believed) = RobustWeight.OfBound(z);
        Assert.Equal(-slope / bend, move, 1e-5 * (1 + Math.Abs(move)));
        Assert.Equal(-believed * bend, information, 1e-5);

        // Step times information is the slope of the whole: one verdict in twenty is plain wrong and says nothing.
        double Mixed(double at) => Math.Log(0.05 + (0.95 * Normal.CDF(0, 1, at)));
        Assert.Equal((Mixed(z + step) - Mixed(z - step)) / (2 * step), move * information, 1e-6);
        Assert.Equal(0.95 * Normal.CDF(0, 1, z) / (0.05 + (0.95 * Normal.CDF(0, 1, z))), believed, 1e-9);
    }

    // Mills' ratio of the upper tail, φ(x)/Q(x) = x + 1/(x + 2/(x + 3/(x + …))) (Laplace's continued fraction), gives hazard h and bend h(h − x).
    [Theory]
    [InlineData(10)]
    [InlineData(20)]
    public void Far_outside_a_bound_it_steps_as_far_as_Mills_ratio_says_and_is_not_believed(double outside)
    {
        var fraction = outside;
        for (var k = 40; k >= 1; k--)
        {
            fraction = outside + (k / fraction);
        }

        // The first term alone is used, which errs in the bend by some parts in a hundred.
        var (move, information, believed) = RobustWeight.OfBound(-outside);
        Assert.Equal(1 / (fraction - outside), move, 0.04 * outside);
        Assert.InRange(believed, 0, 1e-18);
        Assert.InRange(information, 0, 1e-18);
    }

    [Fact]
    public void Far_inside_a_bound_nothing_moves_and_the_verdict_is_believed_like_any_other()
    {
        var (move, information, believed) = RobustWeight.OfBound(12);
        Assert.InRange(move, 0, 1e-3);
        Assert.InRange(information, 0, 1e-8);
        Assert.Equal(0.95, believed, 1e-9);
    }

    [Fact]
    public void A_bound_further_off_than_thirty_spreads_counts_as_thirty()
        => Assert.Equal(RobustWeight.OfBound(-30), RobustWeight.OfBound(-300));
}
