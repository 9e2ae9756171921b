using CsCheck;
using Foramen.Engine.Camera;
using Foramen.Engine.Quantities;
using static Foramen.Engine.Tests.Camera.CameraExamples;

namespace Foramen.Engine.Tests.Camera;

public sealed class SightingMarksTests
{
    private static double Rear(SightingMarks marks, MarkFace face, string name) => marks.Lines.Single(line => line.Face == face && line.Name == name).RearAcrossMillimetres;

    // By hand: a sheet of 120 × 90 mm 60 mm behind the hole, marks 100 mm apart. The right edge is seen at tan = 60/60; its rear mark lies 100·60/60 = 100 mm to the left. Up:
    // 100·45/60 = 75 mm.
    [Fact]
    public void Rear_marks_lie_by_similar_triangles()
    {
        var marks = SightingMarks.For(Flat(0.3, 60, 120, 90), Mm(100));
        Assert.Equal(-100, Rear(marks, MarkFace.Top, "right edge"), 1e-9);
        Assert.Equal(100, Rear(marks, MarkFace.Top, "left edge"), 1e-9);
        Assert.Equal(0, Rear(marks, MarkFace.Top, "middle"), 1e-9);
        Assert.Equal(-75, Rear(marks, MarkFace.RightSide, "upper edge"), 1e-9);
        Assert.Equal(75, Rear(marks, MarkFace.RightSide, "lower edge"), 1e-9);
    }

    // By hand: a hole raised by 10 mm brings in more sky: the sheet's middle looks up by 10/60, so its rear mark lies 100·10/60 below the front mark.
    [Fact]
    public void A_raised_hole_tilts_the_middle_up()
        => Assert.Equal(-100 * 10 / 60.0, Rear(SightingMarks.For(Flat(0.3, 60, 120, 90, footY: -10), Mm(100)), MarkFace.RightSide, "middle"), 1e-9);

    [Fact]
    public void With_the_base_as_long_as_the_box_is_deep_the_marks_stand_as_wide_as_the_sheet() => Gen.Select(Gen.Double[40, 300], Gen.Double[30, 200], Gen.Double[30, 200]).Sample(
        (focal, width, height) =>
        {
            var marks = SightingMarks.For(Flat(0.3, focal, Math.Min(width, 5 * focal), Math.Min(height, 5 * focal)));
            Assert.Equal(Math.Min(width, 5 * focal), Rear(marks, MarkFace.Top, "left edge") - Rear(marks, MarkFace.Top, "right edge"), 1e-6);
        });

    // A tin of radius 45 with the hole in the wall opposite, 90 mm from the paper: an arc of 90 mm is seen from the hole at half its angle at the axis (Euclid III.20), so its
    // half, one radian, at half a radian.
    [Fact]
    [Source("euclid", "III.20", Basis.Worked)]
    public void Curved_paper_is_marked_by_the_angle_it_sees()
        => Assert.Equal(0.5, SightingMarks.For(Curved(0.3, 90, 45, 90, 60)).Lines.Single(line => line.Name == "right edge").Direction.Radians, 1e-9);

    // By hand: two marks each half a millimetre off over 100 mm: √2·0.5/100 = 0.00707 rad = 0.405°; on paper 60 mm behind 0.424 mm of 120.
    [Fact]
    public void The_tolerance_is_two_pointings_over_the_base()
    {
        var marks = SightingMarks.For(Flat(0.3, 60, 120, 90), Mm(100));
        Assert.Equal(0.405, marks.Tolerance.Degrees, 0.001);
        Assert.Equal(0.424 / 120, marks.WidthShare, 1e-5);
    }

    [Fact]
    public void Too_wide_a_sheet_and_too_short_a_base_are_refused()
    {
        Assert.Contains("80° aside", Assert.Throws<RefusalException>(() => SightingMarks.For(Flat(0.1, 10, 200, 50), Mm(50))).Message, StringComparison.Ordinal);
        Assert.Contains("20", Assert.Throws<RefusalException>(() => SightingMarks.For(BoxA, Mm(5))).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_template_that_does_not_fit_a_page_is_refused()
        => Assert.Contains("a page holds", Assert.Throws<RefusalException>(() => MarksTemplate.Of(SightingMarks.For(Flat(0.3, 60, 120, 90), Mm(400)), MarkFace.Top)).Message, StringComparison.Ordinal);
}
