using Foramen.Engine.Quantities;
using Foramen.Field.Units;

namespace Foramen.Field.Tests.Units;

public sealed class NumberTextTests
{
    [Theory]
    [InlineData("0.35", 0.35)]
    [InlineData(" 0,35 ", 0.35)]
    [InlineData("−2", -2)]
    public void Point_comma_and_minus(string text, double value) => Assert.Equal(value, NumberText.Read(text, -10, 10, "the number"));

    [Theory]
    [InlineData("")]
    [InlineData("abc")]
    [InlineData("NaN")]
    [InlineData("∞")]
    [InlineData("1e999")]
    [InlineData("11")]
    public void What_is_no_sensible_number_is_refused_in_one_sentence(string text)
    {
        var e = Assert.Throws<RefusalException>(() => NumberText.Read(text, -10, 10, "the change", "stops"));
        Assert.StartsWith("The change", e.Message, StringComparison.Ordinal);
        Assert.EndsWith(".", e.Message, StringComparison.Ordinal);
    }
}
