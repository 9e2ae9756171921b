using CsCheck;
using Foramen.Engine.Camera;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using static Foramen.Engine.Tests.Camera.CameraExamples;

namespace Foramen.Engine.Tests.Camera;

/// <summary>The frame's edges over a photograph: their order, what of them is missing, and where they end.</summary>
public sealed class FrameEdgesTests
{
    private static readonly PhotographField Wide = PhotographField.FromHorizontalAngle(2000, 1500, Angle.FromDegrees(90));

    private static SheetProjection Aimed(PinholeCamera camera, double pan, double photographTilt = 0)
        => SheetProjection.Of(camera, Wide, null, SheetAim.FromAngles(Angle.FromDegrees(pan), Angle.FromDegrees(photographTilt)));

    // 50 of 60 mm is 833 of 1000 pixels, 40 of 60 mm is 667: clockwise from the top left, a side of twenty-four steps after the other, evenly.
    [Fact]
    public void The_outline_goes_once_about_from_the_top_left()
    {
        var points = FrameOutline.Of(SheetProjection.Of(Flat(0.35, 60, 100, 80), Wide)).Points;
        Assert.Equal(96, points.Count);
        var (left, right, top, bottom) = (0.5 - (5 / 12.0), 0.5 + (5 / 12.0), 0.5 - (4 / 9.0), 0.5 + (4 / 9.0));
        (double X, double Y)[] corners = [(left, top), (right, top), (right, bottom), (left, bottom), (left, top)];
        for (var i = 0; i < 96; i++)
        {
            var (from, to, part) = (corners[i / 24], corners[(i / 24) + 1], i % 24 / 24.0);
            Assert.Equal(from.X + (part * (to.X - from.X)), points[i].X, 1e-9);
            Assert.Equal(from.Y + (part * (to.Y - from.Y)), points[i].Y, 1e-9);
        }
    }

    // Point by point along each side and over the sheet, much finer than the outline looks; it may be off by a step of a twenty-fourth.
    [Fact]
    public void What_is_missing_is_what_no_place_is_found_for() => Gen.Select(AnyCamera, Gen.Double[-70, 70], Gen.Double[-40, 40]).Sample((camera, pan, tilt) =>
    {
        var projection = Aimed(camera, pan, tilt);
        var outline = FrameOutline.Of(projection);
        double Part(Func<double, SheetPoint> along) => Enumerable.Range(0, 240).Count(i => projection.PositionOf(projection.SheetPointAt(along(((i + 0.5) / 240) - 0.5))) is null) / 240.0;
        var (w, h) = (projection.PictureSize.Width.Millimetres, projection.PictureSize.Height.Millimetres);
        Assert.Equal(Part(at => At(at * w, h / 2)), outline.MissingTop, 0.045);
        Assert.Equal(Part(at => At(at * w, -h / 2)), outline.MissingBottom, 0.045);
        Assert.Equal(Part(at => At(-w / 2, at * h)), outline.MissingLeft, 0.045);
        Assert.Equal(Part(at => At(w / 2, at * h)), outline.MissingRight, 0.045);
        var rows = Enumerable.Range(0, 40).Select(row => Part(at => At(at * w, (((row + 0.5) / 40) - 0.5) * h))).Average();
        Assert.Equal(rows, outline.Missing, 0.045);
    }, iter: Samples.Of(25));

    // Turned by 80° the right of the sheet, 39.8° off its axis, looks out behind the photograph's plane; so does all of it, turned by 180°.
    [Fact]
    public void Behind_the_photograph_there_is_no_outline()
    {
        var aside = FrameOutline.Of(Aimed(Flat(0.35, 60, 100, 80), 80));
        Assert.Empty(aside.Points);
        Assert.Equal(1, aside.MissingRight);
        Assert.InRange(aside.MissingTop, 0.8, 1);
        var back = FrameOutline.Of(Aimed(Flat(0.35, 60, 100, 80), 180));
        Assert.Equal((1, 1, 1, 1, 1), (back.Missing, back.MissingLeft, back.MissingRight, back.MissingTop, back.MissingBottom));
    }

    // A subject of the right half and the upper quarter: from the middle to 1000 pixels, 60 mm; from 375 to 750 pixels up, 22.5 to 45 mm. On a sheet of 100 × 80 mm.
    [Fact]
    public void Each_margin_is_on_its_own_side()
    {
        var margins = FrameMargins.Of(SheetProjection.Of(Flat(0.35, 60, 100, 80), Wide), RectangleInPhotograph.FromFractions(0.5, 0, 0.5, 0.25))!.Value;
        Assert.Equal(0.5, margins.Left, 1e-9);
        Assert.Equal(-0.1, margins.Right, 1e-9);
        Assert.Equal(-5 / 80.0, margins.Top, 1e-9);
        Assert.Equal(62.5 / 80, margins.Bottom, 1e-9);
        Assert.Equal(-0.1, margins.Least, 1e-9);
    }

    [Theory]
    [InlineData(0.1, 0.2, 0.3, 0.4)]
    [InlineData(0.4, 0.1, 0.2, 0.3)]
    [InlineData(0.3, 0.4, 0.1, 0.2)]
    [InlineData(0.2, 0.3, 0.4, 0.1)]
    public void The_least_margin_is_the_least(double left, double right, double top, double bottom)
        => Assert.Equal(0.1, new FrameMargins(left, right, top, bottom).Least);

    // Bent edges count with their bulge: seen tilted up, the upper edge of a wide rectangle is drawn highest in its middle or at its ends, never only at its corners.
    [Fact]
    public void Bent_edges_count_by_the_box_about_them() => Gen.Select(Gen.Double[-20, 20], Gen.Double[-20, 20], Gen.Double[0.1, 0.4], Gen.Double[0.1, 0.4]).Sample((pan, tilt, x, y) =>
    {
        var projection = Aimed(Curved(0.3, 60, 50, 120, 90).TiltedTo(Angle.FromDegrees(tilt)), pan);
        var subject = RectangleInPhotograph.FromFractions(x, y, 0.5, 0.5);
        var (left, right, top, bottom) = (1.0, 1.0, 1.0, 1.0);
        for (var i = 0; i < 400; i++)
        {
            var part = i % 100 / 100.0 * 0.5;
            var (px, py) = (i / 100) switch { 0 => (x + part, y), 1 => (x + part, y + 0.5), 2 => (x, y + part), _ => (x + 0.5, y + part) };
            var place = projection.PicturePlaceOf(PhotographPosition.FromFractions(px, py))!.Value;
            (left, right) = (Math.Min(left, 0.5 + (place.XMillimetres / 120)), Math.Min(right, 0.5 - (place.XMillimetres / 120)));
            (top, bottom) = (Math.Min(top, 0.5 - (place.YMillimetres / 90)), Math.Min(bottom, 0.5 + (place.YMillimetres / 90)));
        }

        var margins = FrameMargins.Of(projection, subject)!.Value;
        Assert.Equal(left, margins.Left, 0.002);
        Assert.Equal(right, margins.Right, 0.002);
        Assert.Equal(top, margins.Top, 0.002);
        Assert.Equal(bottom, margins.Bottom, 0.002);
    });

    [Fact]
    public void A_subject_beside_or_behind_has_no_margins()
    {
        Assert.Null(FrameMargins.Of(Aimed(BoxA, 90), RectangleInPhotograph.FromFractions(0.2, 0.2, 0.5, 0.5)));
        Assert.Null(FrameMargins.Of(Aimed(BoxA, -60), RectangleInPhotograph.FromFractions(0.2, 0.2, 0.8, 0.5)));
    }

    // Within the plane but beyond 50 m: 60 mm times the tangent of an angle less than 0.07° from aside.
    [Theory]
    [InlineData(89.9, true)]
    [InlineData(89.95, false)]
    [InlineData(-89.9, true)]
    [InlineData(-89.95, false)]
    public void Beyond_fifty_metres_of_paper_nothing_is_drawn(double pan, bool drawn)
    {
        Assert.Equal(drawn, Aimed(Flat(0.35, 60, 100, 80), pan).PicturePlaceOf(PhotographPosition.FromFractions(0.5, 0.5)) is not null);
        Assert.Equal(drawn, SheetProjection.Of(Flat(0.35, 60, 100, 80).TiltedTo(Angle.FromDegrees(pan)), Wide).PicturePlaceOf(PhotographPosition.FromFractions(0.5, 0.5)) is not null);
    }

    // Turned by a, a millimetre at the middle is 1000/60 pixels over cos² a along the turn and over cos a across: the second is fewer.
    [Theory]
    [InlineData(0)]
    [InlineData(30)]
    [InlineData(-40)]
    public void Pixels_of_a_turned_photograph_to_a_millimetre(double turn)
    {
        var expected = 1000 / 60.0 / Math.Cos(turn * Math.PI / 180);
        Assert.Equal(expected, Aimed(Flat(0.35, 60, 100, 80, footX: 8, footY: -6), turn).PhotographPixelsPerMillimetre(), 0.003 * expected);
        Assert.Equal(expected, Aimed(Flat(0.35, 60, 100, 80, footX: 8, footY: -6), 0, turn).PhotographPixelsPerMillimetre(), 0.003 * expected);
    }

    [Fact]
    public void Behind_the_photograph_a_millimetre_has_no_pixels()
        => Assert.Equal(0, Aimed(Flat(0.35, 60, 100, 80), 180).PhotographPixelsPerMillimetre());

    // Rotation by Rodrigues' formula: tilt about the right, pan about the vertical, and back by the photograph's tilt about its right.
    [Fact]
    public void Turns_are_rotations_one_after_the_other() => Gen.Select(Gen.Double[-90, 90], Gen.Double[-180, 180], Gen.Double[-90, 90], Gen.Double[-1, 1].Array[3]).Sample((tilt, pan, photographTilt, vector) =>
    {
        static (double X, double Y, double Z) About((double X, double Y, double Z) k, double angle, (double X, double Y, double Z) v)
        {
            var (s, c) = Math.SinCos(angle * Math.PI / 180);
            var dot = (k.X * v.X) + (k.Y * v.Y) + (k.Z * v.Z);
            return (
                (v.X * c) + (((k.Y * v.Z) - (k.Z * v.Y)) * s) + (k.X * dot * (1 - c)),
                (v.Y * c) + (((k.Z * v.X) - (k.X * v.Z)) * s) + (k.Y * dot * (1 - c)),
                (v.Z * c) + (((k.X * v.Y) - (k.Y * v.X)) * s) + (k.Z * dot * (1 - c)));
        }

        // Right × up is backwards in these axes, so the turn that lifts what is ahead goes the other way about.
        var expected = About((1, 0, 0), photographTilt, About((0, 1, 0), pan, About((1, 0, 0), -tilt, (vector[0], vector[1], vector[2]))));
        var turn = AxesTurn.Between(Angle.FromDegrees(tilt), Angle.FromDegrees(pan), Angle.FromDegrees(photographTilt));
        var turned = turn.Apply(vector[0], vector[1], vector[2]);
        Assert.Equal(expected.X, turned.X, 1e-12);
        Assert.Equal(expected.Y, turned.Y, 1e-12);
        Assert.Equal(expected.Z, turned.Z, 1e-12);
        var back = turn.Undo(turned.X, turned.Y, turned.Z);
        Assert.Equal(vector[0], back.X, 1e-12);
        Assert.Equal(vector[1], back.Y, 1e-12);
        Assert.Equal(vector[2], back.Z, 1e-12);
    });
}
