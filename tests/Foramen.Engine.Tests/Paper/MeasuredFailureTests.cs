using CsCheck;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using static Foramen.Engine.Tests.Paper.PaperExamples;

namespace Foramen.Engine.Tests.Paper;

public class MeasuredFailureTests
{
    // Straight in lg t from (1, 1.5) to (10, 30): half-way in lg is √10 against √45, and a decade on it is 30·20.
    [Theory]
    [InlineData(0, 0)]
    [InlineData(0.2, 0.3)]
    [InlineData(0.5, 0.75)]
    [InlineData(1, 1.5)]
    [InlineData(3.16227766, 6.70820393)]
    [InlineData(10, 30)]
    [InlineData(100, 600)]
    public void What_one_second_needs_holds_in_ratio_below_and_the_last_slope_goes_on(double metered, double needed)
    {
        var table = MeasuredFailure.FromTable([(S(1), S(1.5)), (S(10), S(30))]);
        Assert.Equal(needed, table.SecondsNeeded(metered), 1e-6);
        Assert.Equal(metered, table.MeteredSecondsFor(needed), 1e-6);
        Assert.Equal(30, table.LongestMeasured.Seconds, 1e-9);
    }

    [Fact]
    public void Each_row_comes_back_as_it_was_written()
        => Gen.Double[1.05, 3].Array[6].Sample(steps =>
        {
            var rows = new List<(Duration Metered, Duration Needed)>();
            var (metered, needed) = (1.0, 1.0);
            for (var i = 0; i < steps.Length; i += 2)
            {
                metered *= steps[i];
                needed *= steps[i] * steps[i + 1];
                rows.Add((S(metered), S(needed)));
            }

            var table = MeasuredFailure.FromTable(rows);
            foreach (var row in rows)
            {
                Assert.Equal(row.Needed.Seconds, table.SecondsNeeded(row.Metered.Seconds), 1e-9 * row.Needed.Seconds);
                Assert.Equal(row.Metered.Seconds, table.MeteredSecondsFor(row.Needed.Seconds), 1e-9 * row.Metered.Seconds);
            }
        });

    [Fact]
    public void One_row_is_a_table()
        => Assert.Equal(100, MeasuredFailure.FromTable([(S(5), S(10))]).SecondsNeeded(25), 1e-9);

    [Fact]
    public void Tables_are_equal_where_all_their_rows_are()
    {
        static MeasuredFailure Table(double metered, double needed) => MeasuredFailure.FromTable([(S(10), S(15)), (S(metered), S(needed)), (S(500), S(2000))]);
        Assert.Equal(Table(60, 120), Table(60, 120));
        Assert.Equal(Table(60, 120).GetHashCode(), Table(60, 120).GetHashCode());
        Assert.NotEqual(Table(60, 120), Table(60, 130));
        Assert.NotEqual(Table(60, 120), Table(70, 120));
        Assert.False(Table(60, 120).Equals(null));
    }

    [Theory]
    [InlineData(0.5, 1, 60, 90, "Row 1 of the failure table says 0.5 s needs 1 s")]
    [InlineData(10, 15, 60, 50, "Row 2 of the failure table says 60 s needs 50 s")]
    [InlineData(10, 60, 50, 60, "Row 2 of the failure table is out of order")]
    [InlineData(10, 15, 10, 20, "Row 2 of the failure table is out of order")]
    [InlineData(1, 1, 1, 2, "Row 2 of the failure table is out of order")]
    public void The_row_that_cannot_be_is_named(double metered, double needed, double laterMetered, double laterNeeded, string why)
        => Assert.Contains(
            why,
            Assert.Throws<RefusalException>(() => MeasuredFailure.FromTable([(S(metered), S(needed)), (S(laterMetered), S(laterNeeded))])).Message,
            StringComparison.Ordinal);

    [Fact]
    public void An_empty_table_is_called_empty_and_one_of_a_second_too_short()
    {
        Assert.Contains("is empty", Assert.Throws<RefusalException>(() => MeasuredFailure.FromTable([])).Message, StringComparison.Ordinal);
        Assert.Contains("nothing beyond one second", Assert.Throws<RefusalException>(() => MeasuredFailure.FromTable([(S(1), S(2))])).Message, StringComparison.Ordinal);
    }
}
