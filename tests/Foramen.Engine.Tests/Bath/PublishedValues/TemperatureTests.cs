using Foramen.Engine.Bath;
using static Foramen.Engine.Tests.Bath.BathExamples;

namespace Foramen.Engine.Tests.Bath.PublishedValues;

/// <summary>
/// B. T. J. Glover (1924) in L. P. Clerc, <i>Photography: Theory and Practice</i>, sec. 573: development papers take 20 to 40 s at 65 °F
/// and 30 to 60 s at 55 °F in metol-hydroquinone. W. B. Ferguson and B. F. Howard (1905): rate k(10 + x) = k(10)·b^x.
/// </summary>
public class TemperatureTests
{
    // 1.5 in 10 °F: 1.5^(18/10) = 2.07.
    [Theory]
    [InlineData(30, 20)]
    [InlineData(60, 40)]
    [Source("clerc", "sec. 573, B. T. J. Glover 1924", Basis.Worked)]
    public void Glover(double at55, double at65)
        => Assert.Equal(at55, at65 * TemperatureCoefficient.FromQ10(2.07, F(65)).TimeFactor(F(55)), 0.1);

    // The power law, worked with a pocket calculator: 75 s at 20 °C.
    [Theory]
    [InlineData(1.9, 10, 142.5)]
    [InlineData(1.9, 15, 103.4)]
    [InlineData(1.9, 25, 54.4)]
    [InlineData(2.0, 13, 121.8)]
    [InlineData(2.0, 18, 86.2)]
    [InlineData(2.0, 24, 56.8)]
    [InlineData(2.0, 30, 37.5)]
    [InlineData(2.5, 13, 142.4)]
    [InlineData(2.5, 28, 36.0)]
    [Source("ferguson-howard-1905", Basis.Worked)]
    public void Ferguson_and_Howard(double q10, double celsius, double seconds)
        => Assert.Equal(seconds, 75 * TemperatureCoefficient.FromQ10(q10, C(20)).TimeFactor(C(celsius)), 0.06);

    // Rate is b^x: equal steps of temperature are equal ratios of time, which Arrhenius is not.
    [Fact]
    [Source("ferguson-howard-1905")]
    public void Ferguson_and_Howard_in_their_own_form()
    {
        var law = TemperatureCoefficient.FromQ10(2, C(10));
        Assert.Equal(Math.Pow(Math.Pow(2, 0.1), 7), 1 / law.TimeFactor(C(17)), 1e-12);
    }
}
