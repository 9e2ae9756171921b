using Foramen.Engine.Bath;
using static Foramen.Engine.Tests.Bath.BathExamples;

namespace Foramen.Engine.Tests.Bath.PublishedValues;

/// <summary>The factorial method: <i>Cyclopaedia of Photography</i> (1911).</summary>
[Source("cyclopaedia-1911")]
public class FactorialTests
{
    // "pyro 4 parts (factor 6), metol 2 parts (factor 30)": 84/6 = 14.
    [Fact]
    public void A_mixture() => Assert.Equal(14, FactorialDevelopment.MixtureFactor((4, 6), (2, 30)), 1e-12);

    // Factor 15, appearance in 9 s: 135 s.
    [Fact]
    public void Nine_seconds_at_factor_fifteen()
    {
        Assert.Equal(135, FactorialDevelopment.Time(S(9), 15, DevelopingVessel.Tray).Seconds, 1e-12);
        Assert.Equal(15, FactorialDevelopment.Factor(S(9), S(135)), 1e-12);
    }

    // Coated paper: appearance after 8 to 12 s in 70 to 75 s (common practice, no source).
    [Fact]
    [Source("common-practice")]
    public void The_default_factor_suits_coated_paper()
        => Assert.InRange(DeveloperProfile.Paper.Time.Seconds / DeveloperProfile.Paper.AppearanceFactor, 8, 12);
}
