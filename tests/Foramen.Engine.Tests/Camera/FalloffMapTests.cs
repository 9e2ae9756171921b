using CsCheck;
using Foramen.Engine.Camera;
using Foramen.Engine.Quantities;
using static Foramen.Engine.Tests.Camera.CameraExamples;

namespace Foramen.Engine.Tests.Camera;

public sealed class FalloffMapTests
{
    // cos⁴ of what each cell's middle sees, worked from the distances: (f²/(f² + r²))², r from the foot of the hole.
    [Fact]
    public void Each_cell_stands_for_its_own_middle_from_the_top_left() => Gen.Select(Gen.Int[2, 9], Gen.Int[2, 9], Gen.Double[-15, 15], Gen.Double[-15, 15]).Sample((columns, rows, footX, footY) =>
    {
        var map = FalloffMap.Of(Flat(0.3, 60, 90, 70, 0, footX, footY), columns, rows);
        Assert.Equal(rows, map.Rows.Count);
        for (var row = 0; row < rows; row++)
        {
            Assert.Equal(columns, map.Rows[row].Count);
            for (var column = 0; column < columns; column++)
            {
                var (x, y) = (-45 + (90.0 / columns * (column + 0.5)) - footX, 35 - (70.0 / rows * (row + 0.5)) - footY);
                Assert.Equal(2 * Math.Log2(3600 / (3600 + (x * x) + (y * y))), map.Rows[row][column].Value, 1e-9);
            }
        }
    });

    // The worst corner of a sheet beside its hole is the far one; √(40² + 30²) = 50 mm from the middle, and 6 and 8 mm more: √(46² + 38²) = 59.67.
    [Theory]
    [InlineData(6, 8)]
    [InlineData(-6, 8)]
    [InlineData(6, -8)]
    [InlineData(-6, -8)]
    public void The_corner_that_counts_is_the_worst(double footX, double footY)
        => Assert.Equal(0.404 * 0.3 * 60 / Math.Sqrt((46 * 46) + (38 * 38)), FalloffMap.Of(Flat(0.3, 60, 80, 60, 0.05, footX, footY)).ThickestEdge!.Value.Millimetres, 1e-4);

    // Two circles shifted by half their diameter overlap by 0.3910 (Goodman 6.3): an edge of 0.15 mm at 45° before a hole of 0.3 mm. Under half of the hole is left.
    [Fact]
    public void A_corner_sees_what_the_rims_leave()
    {
        var map = FalloffMap.Of(Flat(0.3, 50, 80, 60, 0.15));
        Assert.Equal(0.3910, map.CornerOpenPart, 5e-5);
        Assert.False(map.CoversCorners);
        Assert.True(FalloffMap.Of(Flat(0.3, 50, 80, 60, 0.1)).CoversCorners);
    }

    [Fact]
    public void Absurd_maps_are_refused()
    {
        Assert.Throws<RefusalException>(() => FalloffMap.Of(BoxA, 1, 5));
        Assert.Throws<RefusalException>(() => FalloffMap.Of(BoxA, 201, 5));
        Assert.Throws<RefusalException>(() => FalloffMap.Of(BoxA, 5, 1));
        Assert.Throws<RefusalException>(() => FalloffMap.Of(BoxA, 5, 201));
    }

    // f = s·D/S by hand: 20 mm of paper for 1 m at 3 m is 60 mm. Spread: 0.3/20 = 0.015 and twice 0.003: √(0.015² + 2·0.003²) = 0.015588.
    [Fact]
    public void A_focal_distance_from_a_print_has_its_spread()
    {
        var measured = ChamberMeasurement.Of(Length.FromMetres(1), Length.FromMetres(3), Mm(20));
        Assert.Equal(60, measured.FocalDistance.Millimetres, 1e-9);
        Assert.Equal(0.015588, measured.RelativeSd, 1e-6);
    }

    [Theory]
    [InlineData(0.009, 3, 20, "distance between the marks")]
    [InlineData(1, 0.049, 20, "from the hole to the marks")]
    [InlineData(1, 3, 2.9, "on the paper")]
    [InlineData(0.01, 100, 20, "focal distance that follows")]
    public void Measurements_that_cannot_be_are_refused(double apart, double away, double onPaper, string says)
        => Assert.Contains(says, Assert.Throws<RefusalException>(() => ChamberMeasurement.Of(Length.FromMetres(apart), Length.FromMetres(away), Mm(onPaper))).Message, StringComparison.Ordinal);
}
