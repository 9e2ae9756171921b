using CsCheck;
using Foramen.Engine.Quantities;
using MathNet.Numerics.Distributions;

namespace Foramen.Engine.Tests.Quantities;

public class NormalTableTests
{
    private static readonly Gen<double> Deviations = Gen.Double[-9, 9];

    [Fact]
    public void The_table_is_as_near_to_the_function_as_it_says()
        => Deviations.Sample(x => Assert.Equal(Normal.CDF(0, 1, x), NormalTable.Below(x), 5e-7));

    [Fact]
    public void The_series_is_as_near_to_the_function_as_it_says()
        => Deviations.Sample(x => Assert.Equal(Normal.CDF(0, 1, x), NormalTable.BelowExactly(x), 1e-12));

    [Fact]
    public void On_its_entries_the_table_holds_the_function()
    {
        for (var i = -8 * 256; i < 8 * 256; i++)
        {
            Assert.Equal(Normal.CDF(0, 1, i / 256.0), NormalTable.Below(i / 256.0), 1e-14);
        }
    }

    [Theory]
    [InlineData(-8)]
    [InlineData(-1e300)]
    [InlineData(double.NegativeInfinity)]
    [InlineData(double.NaN)]
    public void Below_its_reach_there_is_nothing(double deviations)
    {
        Assert.Equal(0, NormalTable.Below(deviations));
        Assert.Equal(0, NormalTable.BelowExactly(deviations));
    }

    [Theory]
    [InlineData(8)]
    [InlineData(1e300)]
    [InlineData(double.PositiveInfinity)]
    public void Above_its_reach_there_is_all(double deviations)
    {
        Assert.Equal(1, NormalTable.Below(deviations));
        Assert.Equal(1, NormalTable.BelowExactly(deviations));
    }
}
