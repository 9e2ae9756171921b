using Foramen.Engine.Camera;
using Foramen.Engine.Exposure;
using Foramen.Engine.Paper;
using Foramen.Engine.Print;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using OpenCvSharp;

namespace Foramen.Imaging.Tests.Prints;

/// <summary>Prints of known densities, photographed by another library (OpenCV: perspective, sampling, softening), read by us.</summary>
public sealed class PrintOnAPhotographTests
{
    // 120 mm on 900 pixels: what a photograph of the print cannot resolve.
    private const double MillimetresPerPixel = 120.0 / 900;

    [Theory]
    [InlineData(PaperKind.NegativeWorking, 1)]
    [InlineData(PaperKind.NegativeWorking, 2)]
    [InlineData(PaperKind.DirectPositive, 3)]
    [InlineData(PaperKind.DirectPositive, 4)]
    public void Aslant_in_uneven_light_with_flare_and_noise_densities_come_back_within_a_twentieth(PaperKind kind, int seed)
    {
        var drawn = new DrawnPrint { Kind = kind, Seed = seed };
        var comparison = Compare(drawn);
        var (width, height, pitch, truth) = drawn.Truth();
        var read = 0;
        for (var y = -38; y <= 38; y += 4)
        {
            for (var x = -52; x <= 52; x += 4)
            {
                // Tones are read where the subject is even: as in print and meter, nothing is said of a place that is half light and half dark.
                var (expected, spread) = Around(truth, width, height, x / pitch, y / pitch, 2.5 / pitch);
                if (expected > ScannedPrint.TrustedDensity || spread > 0.15)
                {
                    continue;
                }

                Assert.Equal(expected, comparison.DensityAround(SheetPoint.FromMillimetres(x, y), Length.FromMillimetres(1.5))!.Value.Value, 0.05);
                read++;
            }
        }

        Assert.True(read > 30, $"{read} places were even enough to be read.");
    }

    [Fact]
    public void Corners_are_found_to_a_pixel()
    {
        var found = SheetFinder.Find(new DrawnPrint { Kind = PaperKind.NegativeWorking }.Draw());
        PixelPoint[] all = [found.TopLeft, found.TopRight, found.BottomRight, found.BottomLeft];
        Assert.All(all.Zip(DrawnPrint.Corners), pair => Assert.InRange(pair.First.DistanceTo(pair.Second), 0, 1));
    }

    [Fact]
    [Source("opencv", Basis.Library)]
    public void The_map_through_four_corners_is_OpenCVs()
    {
        var map = new PrintCorners(DrawnPrint.Corners[0], DrawnPrint.Corners[1], DrawnPrint.Corners[2], DrawnPrint.Corners[3]).ToMap();
        using var theirs = Cv2.GetPerspectiveTransform([new(0, 0), new(1, 0), new(1, 1), new(0, 1)], DrawnPrint.Corners.Select(one => new Point2f((float)one.X, (float)one.Y)).ToArray());
        foreach (var (u, v) in new[] { (0.1, 0.2), (0.5, 0.5), (0.93, 0.31), (0.2, 0.97) })
        {
            var there = Cv2.PerspectiveTransform([new Point2f((float)u, (float)v)], theirs)[0];
            var (x, y) = map.Map(u, v);
            Assert.Equal(there.X, x, 0.01);
            Assert.Equal(there.Y, y, 0.01);
        }
    }

    [Theory]
    [InlineData(0, true)]
    [InlineData(2, true)]
    [InlineData(0, false)]
    [InlineData(2, false)]
    public void However_it_lies_it_is_turned_upright(int quarters, bool mirrored)
        => Assert.Equal(new PrintLie(quarters, mirrored), Compare(new DrawnPrint { Kind = PaperKind.DirectPositive, Lie = new PrintLie(quarters, mirrored) }).Lie);

    // Aimed 1° to the right, a picture 90 mm behind the hole moves 90 mm · tan 1° = 1.571 mm to the left in its middle.
    [Fact]
    public void A_camera_aimed_off_is_seen_in_millimetres()
    {
        var comparison = Compare(new DrawnPrint { Kind = PaperKind.NegativeWorking, Pan = Angle.FromDegrees(1) });
        Assert.Equal(-1.571, comparison.RightMillimetres, 0.15);
        Assert.Equal(0, comparison.UpMillimetres, 0.15);
    }

    [Theory]
    [InlineData(PaperKind.NegativeWorking)]
    [InlineData(PaperKind.DirectPositive)]
    public void Half_a_stop_more_light_is_seen_as_half_a_stop(PaperKind kind)
    {
        var drawn = new DrawnPrint { Kind = kind, EffectiveSeconds = DrawnPrint.Usual * Math.Sqrt(2) };
        var scan = drawn.Draw();
        var comparison = PrintComparison.Of(Setting(scan), drawn.Planned, drawn.Curve, PrintExposure.FromEffective(DrawnPrint.Usual), DrawnPrint.Rim, TestContext.Current.CancellationToken);
        Assert.Equal(0.5, comparison.MedianOff!.Value.Value, 0.1);
        Assert.True(comparison.WithinHalfStop < 0.75);
    }

    [Fact]
    public void A_print_as_planned_is_within_half_a_stop_nearly_everywhere()
    {
        var comparison = Compare(new DrawnPrint { Kind = PaperKind.NegativeWorking });
        Assert.Equal(0, comparison.MedianOff!.Value.Value, 0.05);
        Assert.True(comparison.WithinHalfStop > 0.95);
        Assert.InRange(comparison.Agreement, 0.97, 1);
    }

    // A Gaussian of spread σ has the contrast exp(−2π²σ²f²) (Fourier pair; any table of transforms).
    [Theory]
    [InlineData(0.3)]
    [InlineData(0.5)]
    [Source("fourier-table", Basis.Worked)]
    public void A_softer_print_tells_by_how_much(double millimetres)
    {
        var sharp = Compare(new DrawnPrint { Kind = PaperKind.NegativeWorking }).Sharpness!;
        var soft = Compare(new DrawnPrint { Kind = PaperKind.NegativeWorking, SofterMillimetres = millimetres }).Sharpness!;

        // What the photograph of the print itself softens is in both.
        Assert.Equal(millimetres, Math.Sqrt(soft.VarianceSquareMillimetres - sharp.VarianceSquareMillimetres), 0.1 * millimetres);
        Assert.InRange(Math.Sqrt(Math.Max(0, sharp.VarianceSquareMillimetres)), 0, MillimetresPerPixel);
    }

    [Fact]
    public void A_measured_tone_says_how_far_it_is_from_what_was_wanted()
    {
        var curve = new DrawnPrint { Kind = PaperKind.NegativeWorking }.Curve;
        var aim = RenderingBand.On(curve, Rendering.Mid).Aim!.Value;
        var tone = MeasuredTone.Of(curve, Rendering.Mid, curve.DensityAt(LuminousExposure.FromLuxSeconds(aim.LuxSeconds * Math.Sqrt(2))));
        Assert.Equal(0.5, tone.FromAim!.Value.Value, 0.01);
        Assert.Equal(ToneOutcome.Burnt, MeasuredTone.Of(curve, Rendering.Mid, Density.FromValue(1.94)).Outcome);
        Assert.Equal(ToneOutcome.Blocked, MeasuredTone.Of(curve, Rendering.Mid, Density.FromValue(0.07)).Outcome);
        Assert.Null(MeasuredTone.Of(curve, Rendering.MayBurn, Density.FromValue(1)).FromAim);
    }

    [Fact]
    public void The_print_of_another_sheet_is_refused()
    {
        var scan = new DrawnPrint { Kind = PaperKind.NegativeWorking, Seed = 8 }.Draw();
        var other = new DrawnPrint { Kind = PaperKind.NegativeWorking, Seed = 9 };
        var refusal = Assert.Throws<RefusalException>(() => PrintComparison.Of(Setting(scan), other.Planned, other.Curve, other.Exposure, DrawnPrint.Rim, TestContext.Current.CancellationToken));
        Assert.Contains("does not look like", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Ground_that_is_the_rims_own_tone_is_refused()
    {
        var codes = new byte[400 * 300];
        Array.Fill(codes, (byte)200);
        Assert.Contains("cannot be told", Refused(codes), StringComparison.Ordinal);
    }

    [Fact]
    public void A_print_that_reaches_the_border_is_refused()
    {
        var codes = new byte[400 * 300];
        Array.Fill(codes, (byte)200);
        for (var row = 60; row < 240; row++)
        {
            codes.AsSpan(row * 400, 300).Fill(60);
        }

        Assert.Contains("border", Refused(codes), StringComparison.Ordinal);
    }

    [Fact]
    public void A_round_thing_is_no_print()
    {
        var codes = new byte[400 * 300];
        for (var i = 0; i < codes.Length; i++)
        {
            codes[i] = double.Hypot((i % 400) - 200, (i / 400) - 150) < 110 ? (byte)60 : (byte)200;
        }

        Assert.Contains("four-sided", Refused(codes), StringComparison.Ordinal);
    }

    [Fact]
    public void A_clipped_known_patch_is_refused()
    {
        var scan = ScanImage.FromGrey(100, 100, Enumerable.Repeat((byte)255, 100 * 100).ToArray());
        var refusal = Assert.Throws<RefusalException>(() => PrintSetting.ScaleThrough(scan, null, [new KnownPatch(PixelPoint.At(50, 50), 10, Density.FromValue(0.06))]));
        Assert.Contains("clipped", refusal.Message, StringComparison.Ordinal);
    }

    private static string Refused(byte[] codes) => Assert.Throws<RefusalException>(() => SheetFinder.Find(ScanImage.FromGrey(400, 300, codes))).Message;

    private static PrintComparison Compare(DrawnPrint drawn)
        => PrintComparison.Of(Setting(drawn.Draw()), drawn.Planned, drawn.Curve, drawn.Exposure, DrawnPrint.Rim, TestContext.Current.CancellationToken);

    private static PrintSetting Setting(ScanImage scan)
    {
        var corners = SheetFinder.Find(scan);
        var light = LightField.Around(scan, corners);
        return new PrintSetting(scan, corners, PrintSetting.ScaleThrough(scan, light, DrawnPrint.Known), light);
    }

    // Density of the mean reflectance around a place, and how much the densities there differ.
    private static (double Density, double Spread) Around(float[] densities, int width, int height, double x, double y, double radius)
    {
        var (sum, count, least, most) = (0.0, 0, double.MaxValue, 0.0);
        for (var i = 0; i < densities.Length; i++)
        {
            if (double.Hypot((i % width) - ((width - 1) / 2.0) - x, ((height - 1) / 2.0) - (i / width) - y) <= radius)
            {
                (sum, count, least, most) = (sum + Math.Pow(10, -densities[i]), count + 1, Math.Min(least, densities[i]), Math.Max(most, densities[i]));
            }
        }

        return (-Math.Log10(sum / count), most - least);
    }
}
