using Foramen.Engine.Paper;
using static Foramen.Engine.Tests.Paper.PaperExamples;

namespace Foramen.Engine.Tests.Paper.PublishedValues;

/// <summary>
/// Laws of low-intensity failure against values worked by hand from the published statements.
/// K. Schwarzschild, Astrophysical Journal 11, 89 (1900): equal effect for equal I·t^p, his own p 0.86.
/// P. A. Gainer, "LIRF is lurking at your f-stop": t = t_m + a·t_m^1.62.
/// </summary>
public class ReciprocityFailureTests
{
    [Theory]
    [InlineData(0.95, 10, 11.29)]
    [InlineData(0.95, 120, 154.39)]
    [InlineData(0.90, 30, 43.78)]
    [InlineData(0.90, 60, 94.56)]
    [InlineData(0.86, 10, 14.55)]
    [InlineData(0.86, 100, 211.63)]
    [InlineData(0.85, 60, 123.58)]
    [InlineData(0.80, 100, 316.23)]
    [InlineData(0.70, 30, 128.88)]
    [Source("schwarzschild-1900", Basis.Worked)]
    public void Schwarzschild(double exponent, double metered, double needed)
        => Assert.Equal(needed, SchwarzschildFailure.FromExponent(exponent).SecondsNeeded(metered), 0.006);

    [Theory]
    [InlineData(0.95, 0.350)]
    [InlineData(0.90, 0.738)]
    [InlineData(0.85, 1.172)]
    [InlineData(0.70, 2.847)]
    [Source("schwarzschild-1900", Basis.Worked)]
    public void Schwarzschild_loss_at_a_metered_100_seconds(double exponent, double stops)
    {
        var law = SchwarzschildFailure.FromExponent(exponent);
        Assert.Equal(stops, law.Loss(S(law.SecondsNeeded(100))).Value, 0.0006);
    }

    [Theory]
    [InlineData(10, 14.17)]
    [InlineData(60, 135.96)]
    [InlineData(100, 273.78)]
    [Source("gainer", Basis.Worked)]
    public void Additive_power_with_a_tenth_of_a_second(double metered, double needed)
        => Assert.Equal(needed, AdditivePowerFailure.FromExtraAtOneSecond(0.1).SecondsNeeded(metered), 0.006);

    [Fact]
    [Source("gainer", Basis.Worked)]
    public void Additive_power_backwards()
        => Assert.Equal(54.67, AdditivePowerFailure.FromExtraAtOneSecond(0.1).MeteredSecondsFor(120), 0.006);
}
