using Foramen.Field.Texts;

namespace Foramen.Field.Tests.Texts;

public sealed class LearnedWordsTests
{
    [Theory]
    [InlineData(0.04, "as light as by the label, ± 0.6 stops")]
    [InlineData(-0.04, "as light as by the label, ± 0.6 stops")]
    [InlineData(-0.1, "0.1 stops darker than by the label, ± 0.6 stops")]
    [InlineData(1.3, "1.3 stops lighter than by the label, ± 0.6 stops")]
    public void What_is_expected_is_said_against_the_label(double mean, string said) => Assert.Equal(said, Words.Learned.Expected(mean, 0.6));

    [Theory]
    [InlineData(0, 0.5, "by the label as light as wanted, seen 0.5 stops lighter than wanted")]
    [InlineData(-0.7, 0, "by the label 0.7 stops darker than wanted, seen as light as wanted")]
    public void What_was_foretold_and_what_was_seen_are_each_said_against_what_was_wanted(double foretold, double seen, string said)
        => Assert.Equal(said, Words.Learned.ForetoldAndSeen(foretold, seen));
}
