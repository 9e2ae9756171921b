using Foramen.Engine.Camera;
using Foramen.Engine.Paper;
using Foramen.Engine.Print;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using static Foramen.Engine.Tests.Camera.CameraExamples;

namespace Foramen.Engine.Tests.Print.Scan;

/// <summary>Predictions laid under prints that are themselves: turned, mirrored, shifted, exposed more.</summary>
public class PrintLayingTests
{
    private const double Seconds = 1;
    private static readonly Length Rim = Mm(5);
    private static readonly LogisticCurve Negative = LogisticCurve.FromRange(
        PaperKind.NegativeWorking, Density.FromValue(0.06), Density.FromValue(1.9), 120, Density.FromValue(0.66), LuminousExposure.FromLuxSeconds(2));

    private static readonly SheetImage Oblong = Image(120, 90);
    private static readonly SheetImage Square = Image(100, 96);

    [Theory]
    [InlineData(0, true)]
    [InlineData(0, false)]
    [InlineData(2, true)]
    [InlineData(2, false)]
    public void However_it_lies_it_is_found_and_agrees(int quarters, bool mirrored)
    {
        var comparison = Compare(Oblong, Scan(Oblong, new PrintLie(quarters, mirrored)));
        Assert.Equal(new PrintLie(quarters, mirrored), comparison.Lie);
        Assert.InRange(comparison.Agreement, 0.97, 1);
        Assert.Equal(0, comparison.RightMillimetres, 0.1);
        Assert.Equal(0, comparison.UpMillimetres, 0.1);
        Assert.Equal(0, comparison.MedianOff!.Value.Value, 0.05);
        Assert.True(comparison.WithinHalfStop > 0.95);
    }

    // A square one may lie on any side; one that is not only on those that its shape on the picture allows.
    [Theory]
    [InlineData(1, true)]
    [InlineData(3, false)]
    public void A_sheet_on_its_side_is_found(int quarters, bool mirrored)
    {
        Assert.Equal(new PrintLie(quarters, mirrored), Compare(Square, Scan(Square, new PrintLie(quarters, mirrored))).Lie);
        Assert.Equal(new PrintLie(quarters, mirrored), Compare(Oblong, Scan(Oblong, new PrintLie(quarters, mirrored))).Lie);
    }

    // Each way it may lie, the finer grid, the reading and the comparison: a page shows how far it is.
    [Fact]
    public void There_are_four_ways_for_an_oblong_sheet_and_eight_for_a_square_one()
    {
        var laying = PrintLaying.Begin(Setting(Scan(Oblong, default)), Oblong, Negative, PrintExposure.FromEffective(Seconds), Rim);
        Assert.Equal((4 + 3, 0), (laying.Stages, laying.Done));
        for (var stage = 1; stage < 7; stage++)
        {
            Assert.Null(laying.Step(TestContext.Current.CancellationToken));
            Assert.Equal(stage, laying.Done);
        }

        Assert.NotNull(laying.Step(TestContext.Current.CancellationToken));
        Assert.Equal(7, laying.Done);
        Assert.Equal(8 + 3, PrintLaying.Begin(Setting(Scan(Square, default)), Square, Negative, PrintExposure.FromEffective(Seconds), Rim).Stages);
    }

    // The picture within the rim lies so many pixels of half a millimetre to the right and down of where it was planned.
    [Theory]
    [InlineData(6, 0)]
    [InlineData(-5, 8)]
    [InlineData(0, -12)]
    public void A_picture_that_lies_beside_its_place_is_followed(int right, int down)
    {
        var comparison = Compare(Oblong, Scan(Oblong, default, right, down));
        Assert.Equal(right * 0.5, comparison.RightMillimetres, 0.1);
        Assert.Equal(-down * 0.5, comparison.UpMillimetres, 0.1);
        Assert.Equal(0, comparison.MedianOff!.Value.Value, 0.05);
        Assert.Equal(0.5, comparison.MillimetresPerPixel, 1e-9);
        Assert.Equal((260, 200), (comparison.Print.Width, comparison.Print.Height));
        Assert.Equal(260 * 200, comparison.StopsOff.Length);
    }

    // Twice the light is a stop, wherever the paper can tell.
    [Fact]
    public void A_stop_more_light_is_a_stop()
    {
        var comparison = Compare(Oblong, Scan(Oblong, default, seconds: 2 * Seconds));
        Assert.Equal(1, comparison.MedianOff!.Value.Value, 0.05);
        Assert.True(comparison.WithinHalfStop < 0.2);
    }

    [Fact]
    public void A_print_without_detail_or_of_something_else_is_refused()
    {
        var other = ScanPictures.Draw(400, 300, (column, row) => (column / 30) % 2 == (row / 40) % 2 ? 0.1 : 0.8);
        Assert.Contains("does not look like", Assert.Throws<RefusalException>(() => Compare(Oblong, other)).Message, StringComparison.Ordinal);
        Assert.Contains("does not look like", Assert.Throws<RefusalException>(() => Compare(Oblong, ScanPictures.Draw(400, 300, (_, _) => 0.5))).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void It_can_be_stopped()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        var laying = PrintLaying.Begin(Setting(Scan(Oblong, default)), Oblong, Negative, PrintExposure.FromEffective(Seconds), Rim);
        Assert.Throws<OperationCanceledException>(() => laying.Step(stop.Token));
        Assert.Equal(0, laying.Done);
    }

    private static PrintComparison Compare(SheetImage image, ScanImage scan)
        => PrintComparison.Of(Setting(scan), image, Negative, PrintExposure.FromEffective(Seconds), Rim, TestContext.Current.CancellationToken);

    private static PrintSetting Setting(ScanImage scan) => new(scan, ScanPictures.Whole(scan), ScanPictures.LightIsReflectance, null);

    // The print as the paper gives it, pixel by pixel, and each of them 2 × 2 on the scan, turned and mirrored the other way round than the reading will.
    private static ScanImage Scan(SheetImage image, PrintLie lie, int right = 0, int down = 0, double seconds = Seconds)
    {
        var print = PredictedPrint.Expose(image, Negative, PrintExposure.FromEffective(seconds), new PrintLook { Side = PrintSide.AsProcessed, Border = Rim });
        var densities = print.Densities(TestContext.Current.CancellationToken);
        var (width, height, rim) = (print.Width, print.Height, print.BorderPixels);
        double At(int column, int row)
        {
            var isRim = column < rim || row < rim || column >= width - rim || row >= height - rim;
            var (x, y) = isRim ? (column, row) : (Math.Clamp(column - right, rim, width - rim - 1), Math.Clamp(row - down, rim, height - rim - 1));
            return Math.Pow(10, -densities[(y * width) + x]);
        }

        var isOnItsSide = lie.Quarters % 2 == 1;
        var (across, high) = isOnItsSide ? (height, width) : (width, height);
        return ScanPictures.Draw(2 * across, 2 * high, (x, y) =>
        {
            var (column, row) = lie.Quarters switch
            {
                0 => (x / 2, y / 2),
                1 => (width - 1 - (y / 2), x / 2),
                2 => (width - 1 - (x / 2), height - 1 - (y / 2)),
                _ => (y / 2, across - 1 - (x / 2)),
            };
            return At(lie.Mirrored ? width - 1 - column : column, row);
        });
    }

    // Leaves of all sizes and tones that have fallen on one another.
    private static SheetImage Image(double width, double height)
    {
        var chance = new Random(11);
        var values = new float[400 * 400];
        Array.Fill(values, 30f);
        for (var leaf = 0; leaf < 300; leaf++)
        {
            var (x, y, size, value) = (chance.Next(400), chance.Next(400), 4 + (60 * Math.Pow(chance.NextDouble(), 3)), (float)(0.6 * Math.Pow(10, 1.2 * chance.NextDouble())));
            var (left, right) = (Math.Max(0, (int)(x - size)), Math.Min(400, (int)(x + size)));
            for (var row = Math.Max(0, (int)(y - (0.7 * size))); row < Math.Min(400, y + (0.7 * size)); row++)
            {
                values.AsSpan((row * 400) + left, right - left).Fill(value);
            }
        }

        var projection = SheetProjection.Of(Flat(0.35, 60, width, height), PhotographField.FromHorizontalAngle(400, 300, Angle.FromDegrees(100)));
        var image = SheetImage.Make(LuminanceMap.FromValues(400, 300, values.AsSpan(0, 400 * 300)), projection, (int)(2 * width));
        var lux = new float[image.Grid.Width * image.Grid.Height];
        for (var i = 0; i < lux.Length; i++)
        {
            lux[i] = values[(i / image.Grid.Width * 400) + (i % image.Grid.Width)];
        }

        return image.WithLux(lux);
    }
}
