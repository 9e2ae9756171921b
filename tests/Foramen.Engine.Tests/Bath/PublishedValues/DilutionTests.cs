using Foramen.Engine.Bath;
using Foramen.Engine.Quantities;
using static Foramen.Engine.Tests.Bath.BathExamples;

namespace Foramen.Engine.Tests.Bath.PublishedValues;

/// <summary>C1·V1 = C2·V2 (any chemistry textbook).</summary>
[Source("chemistry-textbook", "C1·V1 = C2·V2", Basis.Worked)]
public class DilutionTests
{
    // 1 + 9 in 300 ml: 30 and 270; 1 + 4 in 500 ml: 100 and 400.
    [Theory]
    [InlineData(9, 300, 30, 270)]
    [InlineData(4, 500, 100, 400)]
    [InlineData(0, 300, 300, 0)]
    public void Parts(double water, double working, double concentrate, double waterVolume)
    {
        Assert.Equal(concentrate, Dilution.OnePlus(water).ConcentrateFor(Ml(working)).Millilitres, 1e-9);
        Assert.Equal(waterVolume, Dilution.OnePlus(water).WaterFor(Ml(working)).Millilitres, 1e-9);
    }

    [Fact]
    [OwnRule]
    public void Nothing_gets_stronger_by_mixing_with_water()
        => Assert.Throws<RefusalException>(() => Dilution.OnePlus(-1));
}
