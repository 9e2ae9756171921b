using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Quantities;

public class GuardTests
{
    [Theory]
    [InlineData("the hole's diameter", "mm", "The hole's diameter is 7 mm; it should be between 1 and 2.5 mm.")]
    [InlineData("x", "", "X is 7; it should be between 1 and 2.5.")]
    [InlineData("", "", " is 7; it should be between 1 and 2.5.")]
    public void A_refusal_is_one_sentence_with_what_where_and_what_would_be_right(string what, string unit, string says)
        => Assert.Equal(says, Assert.Throws<RefusalException>(() => Guard.Within(7, 1, 2.5, what, unit)).Message);

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(2.5)]
    public void What_lies_in_the_range_comes_back(double value) => Assert.Equal(value, Guard.Within(value, 1, 2.5, "x"));
}
