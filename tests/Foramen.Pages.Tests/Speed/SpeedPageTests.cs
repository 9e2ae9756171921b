using Foramen.Pages.Speed;

namespace Foramen.Pages.Tests.Speed;

/// <summary>What is not reached or not measured is said plainly.</summary>
public class SpeedPageTests
{
    private static readonly IReadOnlyList<(string, IReadOnlyList<Mark>)> Register =
    [
        ("Print", [new("print.time", "a print", "≤ 1.5", "`bench/run`"), new("tally", "the tally", "< 2 %", "`bench/field`"), new("works", "it starts offline", "works", "`OfflineTests`")]),
    ];

    [Theory]
    [InlineData("1.5", true)]
    [InlineData("1.51", false)]
    public void A_limit_may_be_touched(string figure, bool reached) => Assert.Equal(reached, new Mark("a", "", "≤ 1.5", "").IsReachedBy(figure));

    [Theory]
    [InlineData("-0.9 %", true)]
    [InlineData("2.0 %", false)]
    public void Below_is_below(string figure, bool reached) => Assert.Equal(reached, new Mark("a", "", "< 2 %", "").IsReachedBy(figure));

    [Theory]
    [InlineData("0.70", true)]
    [InlineData("0.69", false)]
    public void At_least_is_at_least(string figure, bool reached) => Assert.Equal(reached, new Mark("a", "", "≥ 0.7", "").IsReachedBy(figure));

    [Theory]
    [InlineData("fast")]
    [InlineData("2 ms")]
    public void Another_unit_is_no_figure(string figure) => Assert.Throws<PageException>(() => new Mark("a", "", "≤ 2 s", "").IsReachedBy(figure));

    [Fact]
    public void The_page_says_what_is_missing_and_what_failed()
    {
        var page = SpeedPage.Write(Register, [new("print.time", "12 MP", "3 s", "1 s", "3.00", "2026-01-01", "a machine", "print.md")]);
        Assert.Contains("Of 2 marks that are measured 0 are reached, 1 are not, and 1 have not been measured.", page, StringComparison.Ordinal);
        Assert.Contains("**Not reached:** a print (≤ 1.5).", page, StringComparison.Ordinal);
        Assert.Contains("**Not measured yet:** the tally (< 2 %).", page, StringComparison.Ordinal);
        Assert.Contains("| a print | 12 MP | 3 s | 1 s | 3.00 | ≤ 1.5 | **no** | 2026-01-01 | a machine |", page, StringComparison.Ordinal);
        Assert.Contains("held by a test", page, StringComparison.Ordinal);
    }

    [Fact]
    public void A_result_of_no_mark_is_refused()
        => Assert.Throws<PageException>(() => SpeedPage.Write(Register, [new("other", "", "", "", "1", "d", "m", "f")]));

    [Fact]
    public void A_file_without_rows_or_a_row_without_a_date_is_refused()
    {
        Assert.Throws<PageException>(() => MarkResults.Read("a.md", ["# A"]));
        Assert.Throws<PageException>(() => MarkResults.Read("a.md", ["## Marks", "| a | b | c | d | 1 | | m |"]));
    }
}
