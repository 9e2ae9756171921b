using Foramen.Engine.Bath;
using static Foramen.Engine.Tests.Bath.BathExamples;

namespace Foramen.Engine.Tests.Bath.PublishedValues;

/// <summary>The factorial method: <i>Cyclopaedia of Photography</i> (1911).</summary>
[Source("cyclopaedia-1911")]
public class FactorialTests
{
    // Factor 15, appearance in 9 s: 135 s.
    [Fact]
    public void Nine_seconds_at_factor_fifteen()
        => Assert.Equal(135, FactorialDevelopment.Time(S(9), 15, DevelopingVessel.Tray).Seconds, 1e-12);

    // Coated paper: appearance after 8 to 12 s in 70 to 75 s (common practice, no source).
    [Fact]
    [Source("common-practice")]
    public void The_default_factor_suits_coated_paper()
        => Assert.InRange(DeveloperProfile.Paper.Time.Seconds / DeveloperProfile.Paper.AppearanceFactor, 8, 12);
}
