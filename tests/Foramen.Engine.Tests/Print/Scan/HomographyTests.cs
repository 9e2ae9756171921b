using CsCheck;
using Foramen.Engine.Camera;
using Foramen.Engine.Print;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Print.Scan;

public class HomographyTests
{
    private static readonly Gen<Homography> AnyMap = Gen.Double[-35, 35].Array[8].Select(off => Through(
        (100 + off[0], 90 + off[1]), (400 + off[2], 90 + off[3]), (400 + off[4], 290 + off[5]), (100 + off[6], 290 + off[7])));

    [Fact]
    public void A_line_of_places_is_mapped_as_its_places_are() => Gen.Select(AnyMap, Gen.Double[-0.2, 1.2], Gen.Double[-0.2, 1.2]).Sample((map, u, v) =>
    {
        var (ax, bx, ay, by, aw, bw) = map.Along(v);
        var (x, y) = map.Map(u, v);
        Assert.Equal(x, ((ax * u) + bx) / ((aw * u) + bw), 1e-9);
        Assert.Equal(y, ((ay * u) + by) / ((aw * u) + bw), 1e-9);
    });

    [Fact]
    public void A_row_of_pixels_leads_back_to_their_places() => Gen.Select(AnyMap, Gen.Double[-0.2, 1.2], Gen.Double[-0.2, 1.2]).Sample((map, u, v) =>
    {
        var (x, y) = map.Map(u, v);
        var (ux, u1, vx, v1, wx, w1) = map.PlacesAlong(y);
        Assert.Equal(u, ((ux * x) + u1) / ((wx * x) + w1), 1e-9);
        Assert.Equal(v, ((vx * x) + v1) / ((wx * x) + w1), 1e-9);
        var back = map.PlaceOf(PixelPoint.At(x, y));
        Assert.Equal(u, back.U, 1e-9);
        Assert.Equal(v, back.V, 1e-9);
    });

    // A projective map keeps the cross-ratio of four places on a line (projective geometry).
    [Fact]
    public void The_cross_ratio_stays() => Gen.Select(AnyMap, Gen.Double[0, 1], Gen.Double[0, 1]).Sample((map, from, to) =>
    {
        (double X, double Y) At(double t) => map.Map(t, from + ((to - from) * t));
        double Between(double a, double b) => double.Hypot(At(a).X - At(b).X, At(a).Y - At(b).Y);
        Assert.Equal(0.5 * 0.6 / (0.2 * 0.9), Between(0.1, 0.6) * Between(0.4, 1) / (Between(0.4, 0.6) * Between(0.1, 1)), 1e-6);
    });

    [Theory]
    [InlineData(90, 90)]
    [InlineData(250, 190)]
    [InlineData(240, 180)]
    public void A_third_corner_that_is_pushed_in_or_lies_on_the_diagonal_makes_no_four_sided_figure(double x, double y)
        => Assert.Contains("four-sided", Refused((100, 90), (400, 90), (x, y), (100, 290)), StringComparison.Ordinal);

    [Fact]
    public void Corners_named_the_other_way_round_are_said_to_be_mirrored()
        => Assert.Contains("mirrored", Refused((400, 90), (100, 90), (100, 290), (400, 290)), StringComparison.Ordinal);

    // Two exchanged: they cross, and turn twice to the right and twice to the left.
    [Fact]
    public void Crossing_sides_are_no_mirrored_sheet()
        => Assert.Contains("four-sided", Refused((100, 90), (400, 290), (400, 90), (100, 290)), StringComparison.Ordinal);

    [Fact]
    public void Wherever_the_naming_begins_the_sheet_is_the_same_one_turned() => Gen.Select(Gen.Double[0, 1], Gen.Double[0, 1]).Sample((u, v) =>
    {
        var map = Through((110, 90), (400, 120), (380, 290), (100, 260));
        var turned = Through((100, 260), (110, 90), (400, 120), (380, 290));
        var (x, y) = map.Map(u, v);
        var (turnedX, turnedY) = turned.Map(1 - v, u);
        Assert.Equal(x, turnedX, 1e-9);
        Assert.Equal(y, turnedY, 1e-9);
    });

    private static Homography Through(params (double X, double Y)[] corners) => Homography.Through(corners);

    private static string Refused(params (double X, double Y)[] corners) => Assert.Throws<RefusalException>(() => Homography.Through(corners)).Message;
}
