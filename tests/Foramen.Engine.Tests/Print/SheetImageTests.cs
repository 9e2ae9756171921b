using CsCheck;
using Foramen.Engine.Camera;
using Foramen.Engine.Print;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using static Foramen.Engine.Tests.Camera.CameraExamples;

namespace Foramen.Engine.Tests.Print;

public class SheetImageTests
{
    private static readonly PhotographField Wide = PhotographField.FromHorizontalAngle(400, 300, Angle.FromDegrees(90));

    private static LuminanceMap Even(float luminance, int width = 400, int height = 300)
        => LuminanceMap.FromValues(width, height, Enumerable.Repeat(luminance, width * height).ToArray());

    // Luminance that grows from the left edge to the right: a pixel's place can be read off its value.
    private static LuminanceMap Ramp()
    {
        var values = new float[400 * 300];
        for (var i = 0; i < values.Length; i++)
        {
            values[i] = (i % 400) + 0.5f;
        }

        return LuminanceMap.FromValues(400, 300, values);
    }

    // An even scene on the sheet is the camera's own falloff, whatever the spot: cos⁴ bends by less than a thousandth within one.
    [Fact]
    public void An_even_scene_shows_the_falloff() => AnyCamera.Sample(camera =>
    {
        var spread = PointSpread.Of(camera.Hole.Diameter, camera.FocalDistance, PaperLight.Monochromatic(450));
        var image = SheetImage.Make(Even(1000), SheetProjection.Of(camera, Wide), 200, spread, null, TestContext.Current.CancellationToken);
        for (var row = 3; row < image.Grid.Height; row += 13)
        {
            for (var column = 3; column < image.Grid.Width; column += 13)
            {
                if (image.At(column, row) is not { } light)
                {
                    continue;
                }

                var point = At(image.Grid.XMillimetres(column), image.Grid.YMillimetres(row));
                var expected = camera.ImageIlluminance(Luminance.FromCandelasPerSquareMetre(1000), point).Lux;
                var onAxis = camera.ImageIlluminance(Luminance.FromCandelasPerSquareMetre(1000), camera.HoleOffset).Lux;
                Assert.Equal(expected, light.Lux, (0.01 * expected) + (0.002 * onAxis));
            }
        }
    }, iter: Samples.Of(30));

    [Fact]
    public void Each_pixel_sees_the_place_its_ray_goes_to() => Gen.Select(
        AnyCamera, Gen.Double[-15, 15], Gen.Double[-15, 15], Gen.Bool).Sample((camera, tilt, pan, upright) =>
        {
            var projection = SheetProjection.Of(
                camera.TiltedTo(Angle.FromDegrees(tilt)), Wide, upright ? SheetFormat.Upright : SheetFormat.Level, SheetAim.FromAngles(Angle.FromDegrees(pan)));
            var image = SheetImage.Make(Ramp(), projection, 400, null, null, TestContext.Current.CancellationToken);
            // So many pixels of the map as fall on one of the sheet are one, as bright as their mean; nothing lies beyond the middle of the outermost.
            var together = Math.Max(1, Math.Floor(projection.PhotographPixelsPerMillimetre() * image.Grid.PitchMillimetres));
            var outermost = 400 / Math.Round(400 / together) / 2;
            for (var row = 1; row < image.Grid.Height; row += 17)
            {
                for (var column = 1; column < image.Grid.Width; column += 17)
                {
                    var point = projection.SheetPointAt(At(image.Grid.XMillimetres(column), image.Grid.YMillimetres(row)));
                    var position = projection.PositionOf(point);
                    Assert.Equal(position is null, image.At(column, row) is null);
                    if (position is not { } there)
                    {
                        continue;
                    }

                    // Half a pixel of the map in places, a two-hundredth in falloff, for what the mesh leaves out.
                    var unit = camera.ImageIlluminance(Luminance.FromCandelasPerSquareMetre(1), point).Lux;
                    var pixel = Math.Clamp(there.X * 400, outermost, 400 - outermost);
                    Assert.Equal(unit * pixel, image.At(column, row)!.Value.Lux, (unit * (0.5 + (0.005 * pixel))) + (1e-4 * camera.ImageIlluminance(Luminance.FromCandelasPerSquareMetre(400), camera.HoleOffset).Lux));
                }
            }
        }, iter: Samples.Of(40));

    [Fact]
    public void Light_follows_the_scene()
    {
        var projection = SheetProjection.Of(Flat(0.35, 60, 100, 80), Wide);
        var spread = PointSpread.Of(Mm(0.35), Mm(60), PaperLight.Monochromatic(450));
        var one = SheetImage.Make(Even(1), projection, 100, spread, null, TestContext.Current.CancellationToken);
        var thousand = SheetImage.Make(Even(1000), projection, 100, spread, null, TestContext.Current.CancellationToken);
        for (var i = 0; i < one.Lux.Length; i++)
        {
            Assert.Equal(1000 * one.Lux[i], thousand.Lux[i], 1e-4 * thousand.Lux[i]);
        }
    }

    // The same scene with four times the pixels makes the same image: areas are averaged first, not skipped.
    [Fact]
    public void Fine_patterns_average_to_grey()
    {
        var values = new float[1600 * 1200];
        for (var i = 0; i < values.Length; i++)
        {
            values[i] = (((i % 1600) + (i / 1600)) & 1) * 200;
        }

        var projection = SheetProjection.Of(Flat(0.35, 60, 100, 80), Wide);
        var image = SheetImage.Make(LuminanceMap.FromValues(1600, 1200, values), projection, 200, null, null, TestContext.Current.CancellationToken);
        var middle = image.At(100, 80)!.Value.Lux;
        Assert.Equal(Flat(0.35, 60, 100, 80).ImageIlluminance(Luminance.FromCandelasPerSquareMetre(100), SheetPoint.Middle).Lux, middle, 0.01 * middle);
    }

    // 53 degrees of photograph on 80 degrees of sheet: the known part is (2·30 × 2·22.5)/(100 × 80) of its area, and known pixels are as bright as if all were.
    [Fact]
    public void What_the_photograph_does_not_cover_is_unknown_and_darkens_nothing()
    {
        var narrow = PhotographField.FromHorizontalAngle(400, 300, Angle.FromRadians(2 * Math.Atan(0.5)));
        var camera = Flat(0.35, 60, 100, 80);
        var spread = PointSpread.Of(Mm(0.35), Mm(60), PaperLight.Monochromatic(450));
        var image = SheetImage.Make(Even(1000), SheetProjection.Of(camera, narrow), 500, spread, null, TestContext.Current.CancellationToken);
        Assert.Equal(60 * 45 / (100.0 * 80), image.KnownShare, 0.003);
        for (var row = 0; row < image.Grid.Height; row++)
        {
            for (var column = 0; column < image.Grid.Width; column++)
            {
                var point = At(image.Grid.XMillimetres(column), image.Grid.YMillimetres(row));
                var expected = camera.ImageIlluminance(Luminance.FromCandelasPerSquareMetre(1000), point).Lux;
                if (image.At(column, row) is { } light)
                {
                    Assert.Equal(expected, light.Lux, 0.01 * expected);
                }
                else
                {
                    Assert.Equal(0, image.Lux[(row * image.Grid.Width) + column]);
                }
            }
        }
    }

    // An edge between dark and bright is half as bright on the line as far inside, and the same on both sides of it.
    [Fact]
    public void An_edge_is_softened_by_the_spot()
    {
        var values = new float[400 * 300];
        for (var i = 0; i < values.Length; i++)
        {
            values[i] = i % 400 < 200 ? 0 : 1000;
        }

        var projection = SheetProjection.Of(Flat(0.35, 60, 20, 16), PhotographField.FromHorizontalAngle(400, 300, Angle.FromDegrees(20)));
        var spread = PointSpread.Of(Mm(0.35), Mm(60), PaperLight.Monochromatic(450));
        var image = SheetImage.Make(LuminanceMap.FromValues(400, 300, values), projection, 401, spread, null, TestContext.Current.CancellationToken);
        var camera = projection.Camera;
        double PartAt(int column) => image.At(column, 160)!.Value.Lux
            / camera.ImageIlluminance(Luminance.FromCandelasPerSquareMetre(1000), At(image.Grid.XMillimetres(column), 0)).Lux;
        Assert.Equal(1, PartAt(390), 0.002);
        Assert.Equal(0.5, PartAt(200), 0.002);
        Assert.Equal(1, PartAt(198) + PartAt(202), 0.005);

        // Into the dark, by Fourier's road: ½ − (1/π)∫ T(ν) sin(2πνx)/ν dν up to the cut-off. The kernel leaves out a twentieth of the energy, far away.
        foreach (var columns in new[] { 1, 2, 3, 4 })
        {
            var (x, integral) = (columns * image.Grid.PitchMillimetres, 0.0);
            for (var frequency = 0.01; frequency < 13; frequency += 0.02)
            {
                integral += spread.ContrastAt(frequency) * Math.Sin(2 * Math.PI * frequency * x) / frequency * 0.02;
            }

            Assert.Equal(0.5 - (integral / Math.PI), PartAt(200 - columns), 0.02);
        }
    }

    // A print with many pixels to the spot is worked out on fewer and enlarged: it must not differ from one with half as many pixels that is not.
    [Fact]
    public void A_larger_print_is_the_same_picture()
    {
        var values = new float[400 * 300];
        for (var i = 0; i < values.Length; i++)
        {
            values[i] = (i % 400 / 25 % 2 == 0 ? 100 : 1000) + (i / 400);
        }

        var scene = LuminanceMap.FromValues(400, 300, values);
        var projection = SheetProjection.Of(Flat(0.35, 60, 20, 16), PhotographField.FromHorizontalAngle(400, 300, Angle.FromDegrees(16)));
        var spread = PointSpread.Of(Mm(0.35), Mm(60), PaperLight.Monochromatic(450));
        var small = SheetImage.Make(scene, projection, 700, spread, null, TestContext.Current.CancellationToken);
        var large = SheetImage.Make(scene, projection, 1400, spread, null, TestContext.Current.CancellationToken);
        var bright = projection.Camera.ImageIlluminance(Luminance.FromCandelasPerSquareMetre(1000), SheetPoint.Middle).Lux;
        Assert.Equal(1400 * 1120, large.Lux.Length);
        Assert.Equal(small.KnownShare, large.KnownShare, 0.005);
        for (var row = 5; row < small.Grid.Height - 5; row += 7)
        {
            for (var column = 5; column < small.Grid.Width - 5; column += 7)
            {
                if (small.At(column, row) is { } light && large.At(2 * column, 2 * row) is { } a && large.At((2 * column) + 1, (2 * row) + 1) is { } b)
                {
                    Assert.Equal(light.Lux, (a.Lux + b.Lux) / 2, 0.006 * bright);
                }
            }
        }
    }

    [Fact]
    public void A_map_of_another_shape_is_refused()
        => Assert.Throws<RefusalException>(() => SheetImage.Make(Even(1, 300, 400), SheetProjection.Of(Flat(0.35, 60, 100, 80), Wide), 100, cancellation: TestContext.Current.CancellationToken));

    [Fact]
    public void It_tells_how_far_it_is_and_can_be_stopped()
    {
        var told = new List<double>();
        var projection = SheetProjection.Of(Flat(0.35, 60, 100, 80), Wide);
        var spread = PointSpread.Of(Mm(0.35), Mm(60), PaperLight.Monochromatic(450));
        SheetImage.Make(Even(1), projection, 400, spread, new Told(told), TestContext.Current.CancellationToken);
        Assert.Equal(1, told.Max(), 1e-9);
        Assert.True(told.Count > 5);
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(() => SheetImage.Make(Even(1), projection, 400, spread, null, stop.Token));
    }

    private sealed class Told(List<double> parts) : IProgress<double>
    {
        public void Report(double value)
        {
            lock (parts)
            {
                parts.Add(value);
            }
        }
    }
}
