using CsCheck;
using Foramen.Engine.Camera;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using static Foramen.Engine.Tests.Camera.CameraExamples;

namespace Foramen.Engine.Tests.Camera;

public class FrameOverPhotographTests
{
    // 90 degrees from left to right: a thousand pixels to the edge, a thousand to the picture plane.
    private static readonly PhotographField Wide = PhotographField.FromHorizontalAngle(2000, 1500, Angle.FromDegrees(90));

    // Similar triangles: 50 of 60 mm is 833 of 1000 pixels, 40 of 60 mm is 667.
    [Fact]
    public void A_sheet_straight_ahead_is_a_rectangle()
    {
        var outline = FrameOutline.Of(SheetProjection.Of(Flat(0.35, 60, 100, 80), Wide));
        Assert.Equal(0.5 - (833.333 / 2000), outline.Points.Min(p => p.X), 1e-6);
        Assert.Equal(0.5 + (833.333 / 2000), outline.Points.Max(p => p.X), 1e-6);
        Assert.Equal(0.5 - (666.667 / 1500), outline.Points.Min(p => p.Y), 1e-6);
        Assert.Equal(0.5 + (666.667 / 1500), outline.Points.Max(p => p.Y), 1e-6);
        Assert.Equal(0, outline.Missing);
    }

    // 120 mm at 40 mm is three times as wide as a photograph of 2000 pixels at 2000: 1/3 of the width and 80/40·2000 of 1500 pixels: 3/8 of the height are covered.
    [Fact]
    public void What_the_photograph_does_not_reach()
    {
        var tele = PhotographField.FromHorizontalAngle(2000, 1500, Angle.FromRadians(2 * Math.Atan(0.5)));
        var outline = FrameOutline.Of(SheetProjection.Of(Flat(0.35, 40, 120, 80), tele));
        Assert.Equal(1 - (1.0 / 3 * 3 / 8), outline.Missing, 0.03); // the cells are a twenty-fourth of a side
        Assert.Equal((1, 1, 1, 1), (outline.MissingLeft, outline.MissingRight, outline.MissingTop, outline.MissingBottom));
    }

    [Fact]
    public void Turned_to_the_right_the_right_is_missing()
    {
        var outline = FrameOutline.Of(SheetProjection.Of(Flat(0.35, 60, 80, 60), Wide, null, SheetAim.FromAngles(Angle.FromDegrees(25))));
        Assert.Equal(1, outline.MissingRight);
        Assert.Equal(0, outline.MissingLeft);
        Assert.InRange(outline.Missing, 0.05, 0.5);
    }

    // The middle half of the photograph is ±500 by ±375 pixels: ±30 by ±22.5 mm on a sheet of 100 × 80 mm.
    [Fact]
    public void Margins_to_a_subject()
    {
        var margins = FrameMargins.Of(SheetProjection.Of(Flat(0.35, 60, 100, 80), Wide), RectangleInPhotograph.FromFractions(0.25, 0.25, 0.5, 0.5));
        Assert.Equal(0.2, margins!.Value.Left, 1e-9);
        Assert.Equal(0.2, margins.Value.Right, 1e-9);
        Assert.Equal(17.5 / 80, margins.Value.Top, 1e-9);
        Assert.Equal(17.5 / 80, margins.Value.Bottom, 1e-9);
    }

    // The whole photograph is ±60 by ±45 mm: 10 mm and 5 mm cut off.
    [Fact]
    public void What_is_cut_off_has_less_than_no_margin()
    {
        var margins = FrameMargins.Of(SheetProjection.Of(Flat(0.35, 60, 100, 80), Wide), RectangleInPhotograph.FromFractions(0, 0, 1, 1));
        Assert.Equal(-0.1, margins!.Value.Left, 1e-9);
        Assert.Equal(-5 / 80.0, margins.Value.Top, 1e-9);
        Assert.Equal(-0.1, margins.Value.Least, 1e-9);
    }

    [Fact]
    public void Within_the_picture_the_place_is_the_point() => Gen.Select(AnyPoint, Gen.Double[-15, 15], Gen.Bool).Sample((place, tilt, upright) =>
    {
        var projection = SheetProjection.Of(place.Camera.TiltedTo(Angle.FromDegrees(tilt)), Wide, upright ? SheetFormat.Upright : SheetFormat.Level);
        if (projection.PositionOf(place.Point) is { } position && projection.PicturePlaceOf(position) is { } picture)
        {
            var expected = projection.PicturePointAt(place.Point);
            Assert.Equal(expected.XMillimetres, picture.XMillimetres, 1e-6);
            Assert.Equal(expected.YMillimetres, picture.YMillimetres, 1e-6);
        }
    });
}
