using Foramen.Engine.Bath;
using static Foramen.Engine.Tests.Bath.BathExamples;

namespace Foramen.Engine.Tests.Bath.PublishedValues;

/// <summary>D = D∞(1 − exp(−(t − ta)/τ)), S. E. Sheppard and C. E. K. Mees 1907 (form from memory); worked by hand for ta 8 s.</summary>
[Source("sheppard-mees-1907", Basis.Memory)]
public class DensityGrowthTests
{
    [Theory]
    [InlineData(15, 30, 0.769)]
    [InlineData(15, 60, 0.969)]
    [InlineData(15, 75, 0.988)]
    [InlineData(25, 30, 0.585)]
    [InlineData(25, 60, 0.875)]
    [InlineData(25, 75, 0.931)]
    [InlineData(25, 150, 0.997)]
    public void Part_reached(double timeConstant, double seconds, double part)
        => Assert.Equal(part, new DensityGrowth(S(8), S(timeConstant)).Reached(S(seconds)), 0.0006);
}
