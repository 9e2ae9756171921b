using Foramen.Field.Ledgers;
using Foramen.Field.Texts;
using Foramen.Journal.Listing;

namespace Foramen.Field.Tests.Ledgers;

public sealed class LedgerSearchTests
{
    private static readonly IReadOnlyList<LedgerRow> Rows =
    [
        Row(1, "The elevator", "Positive", "Quay", "noon", true),
        Row(2, null, "Grade 2", null, "overcast", false),
        Row(3, "The weir", "Positive", null, "overcast", null),
    ];

    [Theory]
    [InlineData("", null, new[] { 3, 2, 1 })]
    [InlineData("positive", null, new[] { 3, 1 })]
    [InlineData("POSITIVE overcast", null, new[] { 3 })]
    [InlineData("Sheet 2", null, new[] { 2 })]
    [InlineData("", true, new[] { 1 })]
    [InlineData("", false, new[] { 2 })]
    [InlineData("gull", null, new int[0])]
    public void It_finds_by_all_words_and_by_the_verdict_newest_first(string text, bool? kept, int[] numbers)
    {
        var (group, rows) = Assert.Single(new LedgerSearch(text, kept).In(Rows));
        Assert.Null(group);
        Assert.Equal(numbers, rows.Select(row => row.Number));
    }

    [Fact]
    public void It_groups_by_name_with_what_is_not_known_last()
    {
        Assert.Equal(["Grade 2", "Positive"], Groups(LedgerGrouping.Paper));
        Assert.Equal(["noon", "overcast"], Groups(LedgerGrouping.Light));
        Assert.Equal(["Quay", Words.Records.NotSaid], Groups(LedgerGrouping.Place));
    }

    private static IEnumerable<string?> Groups(LedgerGrouping by) => new LedgerSearch(By: by).In(Rows).Select(group => group.Group);

    private static LedgerRow Row(int number, string? name, string paper, string? place, string light, bool? keeper) => new()
    {
        Sheet = default, Number = number, Name = name, Paper = paper, Place = place, Light = light, Keeper = keeper,
    };
}
