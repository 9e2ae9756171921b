using Foramen.Engine.Camera;

namespace Foramen.Engine.Tests.Camera.PublishedValues;

/// <summary>
/// Values of J0: Abramowitz and Stegun, Handbook of Mathematical Functions, table 9.1 (ten decimals), and the zeros of table 9.5. The table under
/// test promises 2e-7.
/// </summary>
[Source("abramowitz-stegun", "table 9.1")]
public class BesselTests
{
    private static readonly BesselTable Table = new(110);

    [Theory]
    [InlineData(0, 1)]
    [InlineData(1, 0.7651976866)]
    [InlineData(2, 0.2238907791)]
    [InlineData(5, -0.1775967713)]
    [InlineData(10, -0.2459357645)]
    [InlineData(17.5, -0.1031103982)]
    [InlineData(50, 0.0558123277)]
    [InlineData(100, 0.0199858503)]
    public void Values(double x, double value) => Assert.Equal(value, Table.At(x), 2e-7);

    [Theory]
    [InlineData(2.4048255577)]
    [InlineData(5.5200781103)]
    [InlineData(8.6537279129)]
    [InlineData(30.6346064684)]
    [Source("abramowitz-stegun", "table 9.5")]
    public void Zeros(double x) => Assert.Equal(0, Table.At(x), 2e-7);
}
