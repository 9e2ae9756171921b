using CsCheck;
using Foramen.Engine.Camera;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Camera;

/// <summary>The meter against holes drawn from their definition: an ellipse of half axes a and b has the area πab, so the equivalent diameter is 2√(ab).</summary>
public sealed class HoleMeterTests
{
    private static readonly ScanScale At4800 = ScanScale.FromDotsPerInch(4800, 0);

    private static double Pixels(RenderedHole hole) => HoleMeter.Measure(hole.Draw(), At4800).DiameterPixels;

    [Fact]
    public void Twenty_pixels_across_is_measured_within_one_percent_under_noise_and_blur()
    {
        var worst = 0.0;
        for (var seed = 0; seed < Samples.Of(200); seed++)
        {
            var chance = new Random(seed);
            var hole = new RenderedHole
            {
                X = 44 + (8 * chance.NextDouble()),
                Y = 44 + (8 * chance.NextDouble()),
                Blur = 0.3 + (1.2 * chance.NextDouble()),
                Noise = 0.03,
                Slope = chance.NextDouble() - 0.5,
                Seed = seed,
            };
            worst = Math.Max(worst, Math.Abs((Pixels(hole) / hole.Diameter) - 1));
        }

        Assert.InRange(worst, 0, 0.01);
    }

    [Fact]
    public void An_ellipse_twenty_pixels_wide_gives_its_area_and_its_axes()
    {
        for (var seed = 0; seed < Samples.Of(100); seed++)
        {
            var chance = new Random(seed);
            var ratio = 0.8 + (0.2 * chance.NextDouble());
            var hole = new RenderedHole { LongAxis = 10 / Math.Sqrt(ratio), ShortAxis = 10 * Math.Sqrt(ratio), Direction = Math.PI * chance.NextDouble(), Noise = 0.015, Seed = seed };
            var measured = HoleMeter.Measure(hole.Draw(), At4800);
            Assert.InRange(measured.DiameterPixels / 20, 0.99, 1.01);
            Assert.InRange(measured.Roundness - ratio, -0.03, 0.03);
        }
    }

    [Fact]
    public void The_stated_spread_covers_the_error()
    {
        // Of normal errors 95 % lie within 1.96 standard deviations.
        var inside = 0;
        var trials = Samples.Of(200);
        for (var seed = 0; seed < trials; seed++)
        {
            var chance = new Random(seed + 1000);
            var hole = new RenderedHole { X = 44 + (8 * chance.NextDouble()), Y = 48, LongAxis = 12, ShortAxis = 12, Noise = 0.02, Seed = seed };
            var measured = HoleMeter.Measure(hole.Draw(), At4800);
            inside += Math.Abs(measured.DiameterPixels - 24) < 1.96 * measured.RelativeSd * measured.DiameterPixels ? 1 : 0;
        }

        Assert.InRange(inside / (double)trials, 0.88, 1);
    }

    [Fact]
    public void Millimetres_go_with_the_resolution() => Gen.Double[600, 9600].Sample(
        dotsPerInch =>
        {
            var scan = new RenderedHole { LongAxis = 20, ShortAxis = 20, Noise = 0 }.Draw();
            var measured = HoleMeter.Measure(scan, ScanScale.FromDotsPerInch(dotsPerInch));

            // 1 in = 25.4 mm exactly.
            Assert.Equal(measured.DiameterPixels * 25.4 / dotsPerInch, measured.Diameter.Millimetres, 1e-9);
        },
        iter: Samples.Of(20));

    [Fact]
    public void Moving_and_turning_the_plate_changes_nothing() => Gen.Select(Gen.Double[40, 56], Gen.Double[40, 56], Gen.Double[0, Math.PI]).Sample(
        (x, y, direction) =>
        {
            var hole = new RenderedHole { X = x, Y = y, Direction = direction, LongAxis = 16, ShortAxis = 13.5, Noise = 0 };
            var measured = HoleMeter.Measure(hole.Draw(), At4800);
            Assert.InRange(measured.DiameterPixels / hole.Diameter, 0.998, 1.002);
            Assert.InRange(measured.Roundness, (13.5 / 16) - 0.01, (13.5 / 16) + 0.01);
            Assert.InRange(measured.Middle.X, x - 0.05, x + 0.05);
            Assert.InRange(measured.Middle.Y, y - 0.05, y + 0.05);
        },
        iter: Samples.Of(40));

    [Fact]
    public void Dark_in_bright_measures_as_bright_in_dark() => Gen.Select(Gen.Double[8, 20], Gen.Double[0.05, 0.45]).Sample(
        (radius, light) =>
        {
            var bright = new RenderedHole { LongAxis = radius, ShortAxis = radius, Inside = light + 0.5, Outside = light, Noise = 0, Encoding = ScanEncoding.Linear };
            var dark = bright with { Inside = light, Outside = light + 0.5 };
            var (first, second) = (HoleMeter.Measure(bright.Draw(), At4800), HoleMeter.Measure(dark.Draw(), At4800));
            Assert.True(first.IsBright && !second.IsBright);

            // Half a code of 128 at either level, where nothing but the blur of one pixel lies between.
            Assert.Equal(first.DiameterPixels, second.DiameterPixels, 0.04);
        },
        iter: Samples.Of(30));

    [Fact]
    public void A_large_hole_is_measured_from_some_of_its_pixels()
    {
        var hole = new RenderedHole { Width = 1200, Height = 1100, X = 600, Y = 540, LongAxis = 430, ShortAxis = 420, Direction = 0.4, Blur = 0 };
        var measured = HoleMeter.Measure(hole.Draw(), At4800);
        Assert.InRange(measured.DiameterPixels / hole.Diameter, 0.9995, 1.0005);
        Assert.InRange(measured.Roundness, (420 / 430.0) - 0.002, (420 / 430.0) + 0.002);
    }

    [Fact]
    public void A_burr_is_seen_and_its_light_is_lost()
    {
        // A needle 3 pixels wide reaching 8 pixels in from the right: it takes about 24 pixels of area.
        var hole = new RenderedHole { LongAxis = 30, ShortAxis = 30, Noise = 0.01, Burr = (x, y) => x > 70 && Math.Abs(y - 48) < 1.5 };
        var measured = HoleMeter.Measure(hole.Draw(), ScanScale.FromDotsPerInch(2540, 0));
        var lost = (Math.PI * 900) - (Math.PI / 4 * measured.DiameterPixels * measured.DiameterPixels);
        Assert.InRange(lost, 15, 33);
        Assert.InRange(measured.Burr.Millimetres, 0.02, 0.09);
        Assert.Equal(0, HoleMeter.Measure((hole with { Burr = (_, _) => false }).Draw(), At4800).Burr.Millimetres);
    }

    [Fact]
    public void Dust_beside_the_hole_is_left_out_and_said()
    {
        var hole = new RenderedHole { Width = 200, Height = 200, X = 120, Y = 110, LongAxis = 16, ShortAxis = 16, More = (x, y) => Math.Abs(y - 30) < 3 && x is > 20 and < 90 };
        var measured = HoleMeter.Measure(hole.Draw(), At4800);
        Assert.InRange(measured.DiameterPixels, 31.8, 32.2);
        Assert.Equal("One smaller or ragged spot was taken for dust.", Assert.Single(measured.Doubts));
    }

    [Fact]
    public void A_second_hole_is_said()
    {
        var hole = new RenderedHole { Width = 200, X = 60, LongAxis = 16, ShortAxis = 16, More = (x, y) => double.Hypot(x - 150, y - 48) < 14 };
        var measured = HoleMeter.Measure(hole.Draw(), At4800);
        Assert.InRange(measured.DiameterPixels, 31.8, 32.2);
        Assert.Contains("second round spot", Assert.Single(measured.Doubts), StringComparison.Ordinal);
    }

    [Fact]
    public void The_plate_on_the_scanners_lid_is_not_taken_for_the_hole()
    {
        // A dark square plate amid a lid as bright as the hole.
        var hole = new RenderedHole { Width = 300, Height = 300, X = 150, Y = 140, LongAxis = 14, ShortAxis = 14, More = (x, y) => x is < 60 or > 240 || y is < 60 or > 240 };
        Assert.InRange(Pixels(hole), 27.8, 28.2);
    }

    [Fact]
    public void The_offset_is_to_the_right_and_upwards()
    {
        var scan = new RenderedHole { X = 50, Y = 40, LongAxis = 12, ShortAxis = 12, Noise = 0 }.Draw();
        var measured = HoleMeter.Measure(scan, ScanScale.FromDotsPerInch(254), PixelPoint.At(48, 48));
        Assert.InRange(measured.Offset!.Value.RightMillimetres, 0.19, 0.21);
        Assert.InRange(measured.Offset!.Value.UpMillimetres, 0.79, 0.81);
    }

    [Theory]
    [InlineData(4, "touches the border")]
    [InlineData(-30, "no hole")]
    public void A_hole_at_the_border_or_beyond_is_refused(double x, string says)
    {
        var scan = new RenderedHole { X = x, Noise = 0.005 }.Draw();
        Assert.Contains(says, Assert.Throws<RefusalException>(() => HoleMeter.Measure(scan, At4800)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_hair_alone_is_no_hole()
    {
        var scan = new RenderedHole { LongAxis = 30, ShortAxis = 4 }.Draw();
        Assert.Contains("Nothing round", Assert.Throws<RefusalException>(() => HoleMeter.Measure(scan, At4800)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Too_few_pixels_are_refused()
    {
        var scan = new RenderedHole { LongAxis = 2.5, ShortAxis = 2.5, Noise = 0.005 }.Draw();
        Assert.Contains("higher resolution", Assert.Throws<RefusalException>(() => HoleMeter.Measure(scan, At4800)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Noise_alone_is_no_hole() => Gen.Int[0, 1000].Sample(
        seed => Assert.Throws<RefusalException>(() => HoleMeter.Measure(new RenderedHole { X = -40, Noise = 0.08, Outside = 0.5, Seed = seed }.Draw(), At4800)),
        iter: Samples.Of(20));

    [Fact]
    public void A_clipped_scan_is_doubted_and_its_spread_is_wider()
    {
        var clear = new RenderedHole { LongAxis = 20, ShortAxis = 20, Noise = 0 };
        var clipped = HoleMeter.Measure((clear with { Inside = 2, Outside = 0.02 }).Draw(), At4800);
        var measured = HoleMeter.Measure(clear.Draw(), At4800);
        Assert.Contains("clipped", Assert.Single(clipped.Doubts), StringComparison.Ordinal);
        Assert.True(clipped.RelativeSd > 3 * measured.RelativeSd);
    }

    [Fact]
    public void A_ruler_gives_the_scale_with_its_own_spread()
    {
        // 10 mm over 2000 pixels: 0.005 mm a pixel, 5080 dpi; two points each half a pixel wrong: 0.5·√2/2000.
        var scale = ScanScale.FromRuler(Length.FromMillimetres(10), 2000);
        Assert.Equal(0.005, scale.MillimetresPerPixel, 1e-12);
        Assert.Equal(5080, scale.DotsPerInch, 1e-6);
        Assert.Equal(Math.Sqrt(2) / 4000, scale.RelativeSd, 1e-12);
    }
}
