using CsCheck;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;

namespace Foramen.Engine.Tests.Scene;

public class SrgbTransferTests
{
    [Fact]
    public void There_and_back() => Gen.Double[0, 1].Sample(value =>
    {
        // The standard's two break points are rounded and miss each other by 3e-8 in linear light.
        Assert.Equal(value, SrgbTransfer.ToEncoded(SrgbTransfer.ToLinear(value)), 1e-6);
        Assert.Equal(value, SrgbTransfer.ToLinear(SrgbTransfer.ToEncoded(value)), 1e-6);
    });

    [Fact]
    public void Every_code_comes_back_and_more_code_is_more_light()
    {
        for (var code = 0; code < 256; code++)
        {
            Assert.Equal(code, SrgbTransfer.CodeOf(SrgbTransfer.LinearOfCode((byte)code)));
            Assert.True(code == 0 || SrgbTransfer.LinearOfCodes[code] > SrgbTransfer.LinearOfCodes[code - 1]);
        }
    }

    [Fact]
    public void Light_beyond_the_range_gives_the_nearer_end()
    {
        Assert.Equal(0, SrgbTransfer.CodeOf(-1));
        Assert.Equal(255, SrgbTransfer.CodeOf(double.PositiveInfinity));
    }

    [Theory]
    [InlineData(-0.001)]
    [InlineData(1.001)]
    [InlineData(double.NaN)]
    public void Codes_outside_the_range_are_refused(double value)
    {
        Assert.Throws<RefusalException>(() => SrgbTransfer.ToLinear(value));
        Assert.Throws<RefusalException>(() => SrgbTransfer.ToEncoded(value));
        Assert.Throws<RefusalException>(() => SrgbTransfer.CodeOf(double.NaN));
    }
}
