using CsCheck;
using Foramen.Engine.Print;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Print;

/// <summary>Paths against other ways of saying the same (SVG 1.1, section 8.3).</summary>
public sealed class SvgPathDataTests
{
    private static readonly Gen<int[]> AnyNumbers = Gen.Int[-90, 90].Array[10];

    [Fact]
    public void What_is_said_relative_to_where_one_is_is_the_same_said_from_the_origin() => AnyNumbers.Sample(n =>
    {
        var (x, y) = (n[0], n[1]);
        Same(
            $"m{x} {y}l{n[2]} {n[3]}h{n[4]}v{n[5]}c1 2 {n[6]} 4 5 {n[7]}s3 1 4 {n[8]}q{n[9]} 1 2 3t5 8a30 20 15 0 1 7 9z",
            string.Join(
                ' ',
                $"M{x} {y} L{x += n[2]} {y += n[3]} H{x += n[4]} V{y += n[5]} C{x + 1} {y + 2} {x + n[6]} {y + 4} {x += 5} {y += n[7]}",
                $"S{x + 3} {y + 1} {x += 4} {y += n[8]} Q{x + n[9]} {y + 1} {x += 2} {y += 3} T{x += 5} {y += 8} A30 20 15 0 1 {x + 7} {y + 9} Z"));
    });

    [Fact]
    public void Pairs_after_a_move_are_lines_and_numbers_after_a_command_repeat_it()
    {
        Same("M1 2 3 4 5 0 Z", "M1 2 L3 4 L5 0 Z");
        Same("m1 2 3 4 5 0 z", "m1 2 l3 4 l5 0 z");
        Same("M0 0 H3 7 V2 5 Z", "M0 0 H3 H7 V2 V5 Z");
        Same("M0 0 Q1 2 3 4 5 6 7 0 Z", "M0 0 Q1 2 3 4 Q5 6 7 0 Z");
    }

    [Fact]
    public void Numbers_need_no_more_between_them_than_tells_them_apart()
    {
        Same("M1.5.5-2-3+4.25e1 1E-1,-.5,\n\t7", "M 1.5 0.5 L -2 -3 L 42.5 0.1 L -0.5 7");
        Same("M0 0A5 5 0 0110 0 5 5 0 1010 8Z", "M0 0 A5 5 0 0 1 10 0 A5 5 0 1 0 10 8 Z");
        Same("  ,M0 0L4 0 4 4", "M0 0 L4 0 L4 4");
        Same("M0 0L1000000 0 0 -1000000", "M0 0L1e6 0 0 -1e6");
    }

    // De Casteljau: between between between the points.
    [Fact]
    public void A_cubic_curve_runs_as_its_points_say() => AnyNumbers.Sample(n =>
    {
        (double X, double Y)[] points = [(n[0], n[1]), (n[2], n[3]), (n[4], n[5]), (n[6], n[7])];
        var ring = Ring($"M{n[0]} {n[1]}C{n[2]} {n[3]} {n[4]} {n[5]} {n[6]} {n[7]}");
        for (var i = 0; i < ring.Count; i++)
        {
            var t = i / (ring.Count - 1.0);
            var left = points;
            while (left.Length > 1)
            {
                left = [.. left.Zip(left.Skip(1), (a, b) => (a.X + (t * (b.X - a.X)), a.Y + (t * (b.Y - a.Y))))];
            }

            Near(left[0], ring[i]);
        }
    });

    // A curve of the second degree is one of the third with its middle points a third of the way from the ends' to the middle's.
    [Fact]
    public void A_quadratic_curve_is_the_cubic_one_of_the_same_shape() => AnyNumbers.Sample(n => Same(
        $"M{3 * n[0]} {3 * n[1]}Q{3 * n[2]} {3 * n[3]} {3 * n[4]} {3 * n[5]}Z",
        $"M{3 * n[0]} {3 * n[1]}C{n[0] + (2 * n[2])} {n[1] + (2 * n[3])} {n[4] + (2 * n[2])} {n[5] + (2 * n[3])} {3 * n[4]} {3 * n[5]}Z"));

    [Fact]
    public void Smooth_curves_go_on_as_the_last_of_their_kind_did_and_begin_anew_after_others()
    {
        Same("M0 0C1 2 3 4 5 5S8 8 9 1", "M0 0C1 2 3 4 5 5C7 6 8 8 9 1");
        Same("M0 0C1 2 3 4 5 5S8 8 9 1 2 2 0 3", "M0 0C1 2 3 4 5 5C7 6 8 8 9 1C10 -6 2 2 0 3");
        Same("M0 0L5 5S8 8 9 1", "M0 0L5 5C5 5 8 8 9 1");
        Same("M0 0Q3 4 5 5S8 8 9 1", "M0 0Q3 4 5 5C5 5 8 8 9 1");
        Same("M0 0Q3 4 5 5T9 1 2 2", "M0 0Q3 4 5 5Q7 6 9 1Q11 -4 2 2");
        Same("M0 0C1 2 3 4 5 5T9 1L0 9", "M0 0C1 2 3 4 5 5Q5 5 9 1L0 9");
    }

    // Half a chord of 6 and a radius of 5 leave the middle 4 from the chord; of the four arcs each flag takes its two. Sweep 1 runs clockwise as it is seen, y being downwards.
    [Theory]
    [InlineData(0, 1, -1, 4)]
    [InlineData(1, 1, -9, -4)]
    [InlineData(0, 0, 1, -4)]
    [InlineData(1, 0, 9, 4)]
    public void Of_the_four_arcs_the_flags_say_which(int large, int sweep, double height, double middle)
    {
        var ring = Ring($"M0 0A5 5 0 {large} {sweep} 6 0");
        Assert.All(ring, place => Assert.Equal(5, double.Hypot(place.X - 3, place.Y - middle), 1e-9));
        Near((3, height), ring[ring.Count / 2]);
        Near((6, 0), ring[^1]);
    }

    // The four arcs of above and one whose radius is too small, drawn between ends that lie level and between the same ends turned.
    [Theory]
    [InlineData(5, 0, 0)]
    [InlineData(5, 0, 1)]
    [InlineData(5, 1, 0)]
    [InlineData(5, 1, 1)]
    [InlineData(2, 0, 1)]
    public void A_circles_arc_turns_with_its_ends(int radius, int large, int sweep) => Gen.Double[-Math.PI, Math.PI].Sample(angle =>
    {
        var (c, s) = (Math.Cos(angle), Math.Sin(angle));
        var level = Ring($"M0 0A{radius} {radius} 0 {large} {sweep} 6 0");
        var turned = Ring(FormattableString.Invariant($"M0 0A{radius} {radius} 0 {large} {sweep} {6 * c:R} {6 * s:R}"));
        Assert.Equal(level.Count, turned.Count);
        Assert.All(level.Zip(turned), pair => Near(((c * pair.First.X) - (s * pair.First.Y), (s * pair.First.X) + (c * pair.First.Y)), pair.Second, 1e-6));
    });

    // An ellipse is a circle that was stretched and turned: what is turned back and shrunk is the circle's arc.
    [Fact]
    public void An_ellipses_arc_is_a_circles_that_was_stretched_and_turned()
        => Gen.Select(Gen.Double[-1, 1].Array[4], Gen.Double[0.5, 4], Gen.Double[0.5, 4], Gen.Double[-180, 180], Gen.Int[0, 1], Gen.Int[0, 1]).Where(one => double.Hypot(one.Item1[0] - one.Item1[2], one.Item1[1] - one.Item1[3]) > 0.01).Sample((at, rx, ry, degrees, large, sweep) =>
        {
            var (c, s) = (Math.Cos(degrees * Math.PI / 180), Math.Sin(degrees * Math.PI / 180));
            (double X, double Y) Drawn((double X, double Y) place) => ((c * rx * place.X) - (s * ry * place.Y), (s * rx * place.X) + (c * ry * place.Y));
            var (from, to) = (Drawn((at[0], at[1])), Drawn((at[2], at[3])));
            var circle = Ring(FormattableString.Invariant($"M{at[0]:R} {at[1]:R}A1 1 0 {large} {sweep} {at[2]:R} {at[3]:R}"));
            var ellipse = Ring(FormattableString.Invariant($"M{from.X:R} {from.Y:R}A{rx:R} {-ry:R} {degrees:R} {large} {sweep} {to.X:R} {to.Y:R}"));
            Assert.Equal(circle.Count, ellipse.Count);

            // Where the ends are all but a diameter apart, rounding decides on which side the middle lies.
            if (Math.Abs(double.Hypot(at[0] - at[2], at[1] - at[3]) - 2) > 1e-3)
            {
                Assert.All(circle.Zip(ellipse), pair => Near(Drawn(pair.First), pair.Second, 1e-6));
            }
        });

    [Fact]
    public void Radii_too_small_are_enlarged_and_none_are_a_line()
    {
        var ring = Ring("M0 0A1 1 0 0 1 10 0");
        Assert.All(ring, place => Assert.Equal(5, double.Hypot(place.X - 5, place.Y), 1e-6));
        Near((5, -5), ring[ring.Count / 2], 1e-6);
        Same("M0 0A0 5 0 0 1 10 0L3 3", "M0 0L10 0L3 3");
        Same("M0 0A5 0 0 0 1 10 0L3 3", "M0 0L10 0L3 3");
        Same("M0 0A5 5 0 0 1 0 0L3 3L4 0", "M0 0L0 0L3 3L4 0");
    }

    // After a close one is where the subpath began, and a new one begins there.
    [Fact]
    public void After_a_close_one_is_back_at_the_beginning()
    {
        var rings = SvgPathData.Rings("M10 20h4v4zl-2 0 0 -3z m5 5h1v1z");
        Assert.Equal(3, rings.Count);
        Assert.Equal([(10, 20), (14, 20), (14, 24)], rings[0]);
        Assert.Equal([(10, 20), (8, 20), (8, 17)], rings[1]);
        Assert.Equal([(15, 25), (16, 25), (16, 26)], rings[2]);
    }

    [Fact]
    public void What_has_fewer_than_three_places_encloses_nothing() => Assert.Equal(3, Assert.Single(SvgPathData.Rings("M0 0L9 9M1 1H5V5ZM7 7")).Count);

    [Theory]
    [InlineData("M0 0 X", "character 6")]
    [InlineData("M0 0 L1", "character 8")]
    [InlineData("M0 0 L1e 1", "lacks a number")]
    [InlineData("M0 0 L- 1", "lacks a number")]
    [InlineData("M0 0 L1000001 1", "lacks a number")]
    [InlineData("M0 0Z5 5", "“5” where a command")]
    [InlineData("M0 0A5 5 0 1", "flags")]
    [InlineData("M0 0\u0007", "“?”")]
    [InlineData("Z", "begin with M")]
    public void What_is_wrong_is_said_with_its_place(string data, string says)
        => Assert.Contains(says, Assert.Throws<RefusalException>(() => SvgPathData.Rings(data)).Message, StringComparison.Ordinal);

    [Fact]
    public void Up_to_twenty_thousand_segments_and_two_hundred_thousand_characters_are_read()
    {
        string Lines(int count) => "M0 0" + string.Concat(Enumerable.Repeat("l1 1", count));
        Assert.Equal(20_000, SvgPathData.Rings(Lines(19_999))[0].Count);
        Assert.Throws<RefusalException>(() => SvgPathData.Rings(Lines(20_000)));
        Assert.Single(SvgPathData.Rings("M0 0H1V1".PadRight(200_000)));
        Assert.Throws<RefusalException>(() => SvgPathData.Rings("M0 0H1V1".PadRight(200_001)));
    }

    private static IReadOnlyList<(double X, double Y)> Ring(string data) => Assert.Single(SvgPathData.Rings(data));

    private static void Same(string one, string other)
    {
        var (left, right) = (SvgPathData.Rings(one), SvgPathData.Rings(other));
        Assert.Equal(right.Select(ring => ring.Count), left.Select(ring => ring.Count));
        Assert.All(left.SelectMany(ring => ring).Zip(right.SelectMany(ring => ring)), pair => Near(pair.Second, pair.First));
    }

    private static void Near((double X, double Y) expected, (double X, double Y) place, double within = 1e-9)
    {
        Assert.Equal(expected.X, place.X, within);
        Assert.Equal(expected.Y, place.Y, within);
    }
}
