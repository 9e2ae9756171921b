using Foramen.Engine.Camera;
using Foramen.Engine.Paper;
using Foramen.Engine.Print;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using Foramen.Engine.Tests.Print.Motion;
using static Foramen.Engine.Tests.Camera.CameraExamples;

namespace Foramen.Engine.Tests.Print;

/// <summary>Images of 80 × 60 pixels, of which a narrow photograph leaves eight columns and six rows at each side unknown.</summary>
public sealed class SheetImageOnSmallSheetTests
{
    [Fact]
    public void A_photograph_that_reaches_all_over_leaves_nothing_unknown()
    {
        var image = SmallSheet.Image((_, _) => 1);
        Assert.True(image.Known.IsEmpty);
        Assert.Equal(1, image.KnownShare);
        Assert.NotNull(image.At(0, 0));
        Assert.NotNull(image.At(79, 59));
    }

    [Fact]
    public void Of_a_narrow_one_the_rim_is_unknown_and_the_share_is_that_of_the_areas()
    {
        var image = SmallSheet.Image((_, _) => 1, SmallSheet.Narrow);
        for (var row = 0; row < SmallSheet.Rows; row++)
        {
            for (var column = 0; column < SmallSheet.Columns; column++)
            {
                Assert.Equal(column is >= 8 and < 72 && row is >= 6 and < 54, image.At(column, row) is not null);
            }
        }

        Assert.Equal(0.64, image.KnownShare, 1e-12);
    }

    // The lens of a photograph one and a half times as wide as the sheet sees the sheet's middle two thirds of it.
    [Fact]
    public void The_light_for_a_place_is_that_of_the_pixel_that_sees_it()
    {
        var image = SmallSheet.Image((column, row) => 1 + column + (100 * row));
        foreach (var (column, row) in new[] { (0, 0), (79, 0), (0, 59), (79, 59), (17, 42), (40, 30) })
        {
            var place = PhotographPosition.FromFractions(0.5 + ((column + 0.5 - 40) / 120), 0.5 + ((row + 0.5 - 30) / 90));
            Assert.Equal(image.At(column, row)!.Value.Lux, image.LightFor(place)!.Value.Lux);
        }
    }

    [Theory]
    [InlineData(-0.6, 30)]
    [InlineData(80.6, 30)]
    [InlineData(40, -0.6)]
    [InlineData(40, 60.6)]
    public void Beside_the_sheet_a_place_has_no_light(double x, double y)
        => Assert.Null(SmallSheet.Image((_, _) => 1).LightFor(PhotographPosition.FromFractions(0.5 + ((x - 40) / 120), 0.5 + ((y - 30) / 90))));

    [Theory]
    [InlineData(-1, 0)]
    [InlineData(80, 0)]
    [InlineData(0, -1)]
    [InlineData(0, 60)]
    public void A_pixel_beside_the_picture_is_refused(int column, int row)
        => Assert.Throws<RefusalException>(() => SmallSheet.Image((_, _) => 1).At(column, row));

    // A photograph of one and a half sheets: a print of 81 pixels needs 121.5 of it, one of 300 more than its 400.
    [Theory]
    [InlineData(400, 300, 81, 122)]
    [InlineData(400, 300, 201, 302)]
    [InlineData(400, 300, 300, 400)]
    [InlineData(400, 300, 1000, 400)]
    public void A_photograph_needs_a_pixel_for_each_of_the_print(int width, int height, int longSide, int pixels)
    {
        var field = PhotographField.FromHorizontalAngle(width, height, Angle.FromDegrees(2 * Math.Atan(0.75) * 180 / Math.PI));
        Assert.Equal(pixels, SheetImage.PhotographLongSide(SheetProjection.Of(Flat(0.35, 100, 100, 75), field), longSide));
    }

    // Of an upright photograph the height is the long side: 300 pixels over 1.5 sheets across, so 200/81 to each of 81, and 162 of 400.
    [Fact]
    public void Of_an_upright_photograph_the_height_is_asked_for()
    {
        var field = PhotographField.FromHorizontalAngle(300, 400, Angle.FromDegrees(2 * Math.Atan(0.75) * 180 / Math.PI));
        Assert.InRange(SheetImage.PhotographLongSide(SheetProjection.Of(Flat(0.35, 100, 100, 75), field), 81), 162, 163);
    }

    [Fact]
    public void A_second_mask_takes_from_what_the_first_left_of_image_and_flash()
    {
        var image = SmallSheet.Image((_, _) => 1);

        // Of 10 mm, eight columns, about 20 mm to either side of the middle; the right one in the upper half alone.
        PrintMask Bar(double x, double height, double y) => PrintMask.Create(
            MaskOutline.SvgPath(FormattableString.Invariant($"M0 0H10V{height}H0Z")), Mm(10), MaskPlace.InTray(Mm(0)), middle: SheetPoint.FromMillimetres(x, y));
        var one = image.Masked(Bar(-20, 75, 0), PaperKind.NegativeWorking);
        var both = one.Masked(Bar(20, 37.5, 18.75), PaperKind.NegativeWorking);
        Assert.False(image.IsMasked);
        Assert.True(both.IsMasked);
        var (open, shaded) = (new float[80], new float[80]);
        foreach (var row in new[] { 0, 1, 29, 30, 59 })
        {
            image.ReadFalloff(row, open);
            both.ReadFalloff(row, shaded);
            for (var column = 0; column < 80; column++)
            {
                var dark = column is >= 20 and < 28 || (row < 30 && column is >= 52 and < 60);
                Assert.Equal(dark ? 0 : open[column], shaded[column], 1e-5);
                Assert.Equal(dark ? 0 : image.At(column, row)!.Value.Lux, both.At(column, row)!.Value.Lux, 1e-5);
            }
        }
    }

    [Theory]
    [InlineData(40, 31, false)]
    [InlineData(41, 30, false)]
    [InlineData(40, 28, true)]
    [InlineData(44, 30, true)]
    public void A_scene_of_the_photographs_shape_to_a_pixel_is_taken(int width, int height, bool refused)
    {
        var projection = SheetProjection.Of(Flat(0.35, 100, 100, 75), PhotographField.FromHorizontalAngle(400, 300, Angle.FromDegrees(60)));
        void Make() => SheetImage.Make(LuminanceMap.FromValues(width, height, new float[width * height]), projection, 16, cancellation: TestContext.Current.CancellationToken);
        if (refused)
        {
            Assert.Throws<RefusalException>(Make);
        }
        else
        {
            Make();
        }
    }

    // A hole of 3 mm on a picture 10 mm wide spreads over some twenty pixels of 0.06 mm, so fewer are worked out and enlarged. Even light stays even, and a
    // bright half is half as bright at its edge, in the picture's middle.
    [Fact]
    public void An_image_worked_out_on_fewer_pixels_lies_where_the_other_does()
    {
        var values = new float[160 * 120];
        for (var i = 0; i < values.Length; i++)
        {
            values[i] = i % 160 < 80 ? 0 : 1000;
        }

        var scene = LuminanceMap.FromValues(160, 120, values);
        var spread = PointSpread.Of(Mm(3), Mm(300), PaperLight.Monochromatic(450));
        SheetImage Make(double photographDegrees) => SheetImage.Make(
            scene,
            SheetProjection.Of(Flat(3, 300, 10, 7.5), PhotographField.FromHorizontalAngle(400, 300, Angle.FromDegrees(photographDegrees))),
            161,
            spread,
            cancellation: TestContext.Current.CancellationToken);
        var image = Make(10);
        Assert.Equal((161, 121), (image.Grid.Width, image.Grid.Height));
        Assert.True(image.Known.IsEmpty);
        var full = PinholeLux(image, 160, 60);
        Assert.Equal(full / 2, PinholeLux(image, 80, 60), full * 0.01);
        foreach (var column in new[] { 2, 20, 50, 70, 79 })
        {
            Assert.Equal(full, PinholeLux(image, column, 30) + PinholeLux(image, 160 - column, 30), full * 0.01);
            Assert.Equal(PinholeLux(image, column, 60), PinholeLux(image, column, 5), full * 0.005);
        }

        // The photograph's 1.4° are 7.3 mm: all beyond is unknown and darkens nothing.
        var narrow = Make(1.4);
        var half = 300 * Math.Tan(0.7 * Math.PI / 180);
        for (var column = 0; column < 161; column++)
        {
            // To a pixel of the coarser ones.
            if (Math.Abs(Math.Abs(narrow.Grid.XMillimetres(column)) - half) > 0.13)
            {
                Assert.Equal(Math.Abs(narrow.Grid.XMillimetres(column)) < half, narrow.At(column, 60) is not null);
            }

            if (narrow.At(column, 60) is null)
            {
                Assert.Equal(0, narrow.Lux[(60 * 161) + column]);
            }
            else if (narrow.Grid.XMillimetres(column) > half - 0.5)
            {
                Assert.Equal(full, PinholeLux(narrow, column, 60), full * 0.02);
            }
        }
    }

    private static double PinholeLux(SheetImage image, int column, int row) => image.At(column, row)!.Value.Lux;
}
