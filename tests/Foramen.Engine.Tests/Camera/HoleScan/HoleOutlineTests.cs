using Foramen.Engine.Camera;

namespace Foramen.Engine.Tests.Camera;

/// <summary>
/// The outline of an edge that is given and not fitted, r = 20 + …, on scans that show just that edge and some light more: 31 sectors (2π·20/4 = 31.4 pixels of four).
/// </summary>
public sealed class HoleOutlineTests
{
    // Whole codes, 102 and 153 of 255.
    private const double Outside = 0.4, Inside = 0.6, Quiet = 0.01;

    private const int Sectors = 31;
    private const double SectorLength = 2 * Math.PI * 20 / Sectors;

    private static EdgeModel Edge(double x, double y, double radius, bool bright = true)
        => EdgeModel.From(new HoleCandidate(x, y, Math.PI * radius * radius, radius, radius, 0, bright, false), bright ? Outside : Inside, bright ? Inside : Outside);

    // The radius' waves stand after the eight other unknowns: two of them for each k from 2 on.
    private static EdgeModel Waved(EdgeModel model, int k, double cos, double sin)
    {
        var move = new double[model.Count];
        (move[8 + (2 * (k - 2))], move[8 + (2 * (k - 2)) + 1]) = (cos, sin);
        return model.Moved(move);
    }

    private static HoleOutline Outline(EdgeModel model, double noise = Quiet, int side = 96, Func<int, int, double>? more = null)
    {
        var codes = new byte[side * side];
        for (var i = 0; i < codes.Length; i++)
        {
            var (column, row) = (i % side, i / side);
            codes[i] = (byte)Math.Round(255 * (model.LightAt(column + 0.5, row + 0.5) + (more?.Invoke(column, row) ?? 0)));
        }

        var pixels = EdgePixels.About(model, ScanImage.FromGrey(side, side, codes, ScanEncoding.Linear));
        return HoleOutline.Of(new EdgeFit { Model = model, Pixels = pixels, Noise = noise, RadiusSd = 0 });
    }

    // Light on the pixel in the middle of a sector, on the edge.
    private static Func<int, int, double> On(int sector, double light)
    {
        var angle = 2 * Math.PI * (sector + 0.5) / Sectors;
        var (column, row) = ((int)(48 + (20 * Math.Cos(angle))), (int)(48 + (20 * Math.Sin(angle))));
        return (x, y) => x == column && y == row ? light : 0;
    }

    // Sectors are about four pixels long, at least twelve and at most half as many as degrees.
    [Theory]
    [InlineData(5, 12)]
    [InlineData(7.7, 12)]
    [InlineData(20, 31)]
    [InlineData(30, 47)]
    [InlineData(130, 180)]
    public void A_sector_is_about_four_pixels_long(double radius, int sectors)
        => Assert.Equal(sectors, Outline(Edge(20, 20, radius), side: 40).Left.Count);

    // Light of 0.3 on one pixel, of 0.2 that a pixel of hole is lighter: 1.5 pixels of hole more, over 4.05 pixels of edge. It is no further in than it is further out.
    [Theory]
    [InlineData(0, true, 0.3)]
    [InlineData(3, true, -0.3)]
    [InlineData(11, true, 0.3)]
    [InlineData(18, false, 0.3)]
    [InlineData(25, false, -0.3)]
    [InlineData(30, true, -0.3)]
    public void Light_beside_the_fit_moves_the_outline_of_its_sector(int sector, bool bright, double light)
    {
        var left = Outline(Edge(48, 48, 20, bright), 0.002, more: On(sector, light)).Left;
        Assert.Equal((bright ? light : -light) / 0.2 / SectorLength, left[sector], 0.02);
        Assert.All(Enumerable.Range(0, Sectors).Where(other => other != sector), other => Assert.Equal(0, left[other]));
    }

    // The light of n pixels of noise s has the noise s√n; four times that is more than noise. n is 65 here: a band of 8 pixels to either side over 31 sectors.
    [Theory]
    [InlineData(0.94, true)]
    [InlineData(1.06, false)]
    public void Four_standard_deviations_of_a_sectors_noise_are_seen(double times, bool seen)
    {
        var pixels = Math.PI * ((28 * 28) - (12 * 12)) / Sectors;
        Assert.Equal(seen, Outline(Edge(48, 48, 20), times * 0.3 / (4 * Math.Sqrt(pixels)), more: On(7, 0.3)).Left[7] > 0);
        Assert.Equal(seen, Outline(Edge(48, 48, 20, false), times * 0.3 / (4 * Math.Sqrt(pixels)), more: On(7, -0.3)).Left[7] > 0);
    }

    // Half across 340 pixels every second pixel is taken each way (4π·340·34 = 145 000 are more than four times 30 000), so each stands for four: 8 × 8 pixels of 0.3 are 96 of hole
    // over a sector of 2π·340/180 = 11.87 pixels.
    [Fact]
    public void Where_every_second_pixel_is_taken_each_counts_four_times()
    {
        var angle = 2 * Math.PI * 22.5 / 180;
        var (column, row) = ((int)(360 + (340 * Math.Cos(angle))) - 4, (int)(360 + (340 * Math.Sin(angle))) - 4);
        double Square(int x, int y) => x >= column && x < column + 8 && y >= row && y < row + 8 ? 0.3 : 0;
        var left = Outline(Edge(360, 360, 340), side: 720, more: Square).Left;
        Assert.Equal(96 / (2 * Math.PI * 340 / 180), left[22], 0.1);

        // 202 of these pixels lie in a sector of the band of 34 to either side: 19.2 of light are four times √202·4·0.0845.
        Assert.Equal(0, Outline(Edge(360, 360, 340), 0.089, side: 720, more: Square).Left[22]);
        Assert.Equal(left[22], Outline(Edge(360, 360, 340), 0.080, side: 720, more: Square).Left[22]);
    }

    // ½ ∮ (R + e cos k(θ − θ₀))² dθ = π(R² + e²/2); a sector that lies d outside has ½·(2π/31)·((R + d)² − R²) more.
    [Fact]
    public void The_area_is_that_within_the_outline()
    {
        Assert.Equal(Math.PI * 400, Outline(Edge(48, 48, 20)).Area, 1e-9);
        Assert.Equal(Math.PI * (400 + 2.5), Outline(Waved(Edge(48, 48, 20), 2, 1, 2)).Area, 1e-9);
        Assert.Equal(Math.PI * (400 + 0.5), Outline(Waved(Edge(48, 48, 20), 5, 0, 1)).Area, 1e-9);
        var notched = Outline(Edge(48, 48, 20), 0.002, more: On(9, 0.3));
        Assert.Equal((Math.PI * 400) + (Math.PI / Sectors * (notched.Left[9] * (40 + notched.Left[9]))), notched.Area, 1e-9);
    }

    // On an outline of 20 + 4 cos 2θ a sector that lies d outside adds ½ ∫ (ρ + d)² − ρ² dθ = d·(20·Δ + 2 sin 2θ₂ − 2 sin 2θ₁) + ½ d²·Δ; its own edge is ρ·Δ long.
    [Fact]
    public void A_notch_in_a_long_hole_adds_by_the_radius_where_it_lies()
    {
        var notched = Outline(Waved(Edge(48, 48, 20), 2, 4, 0), 0.002, more: On(27, 0.3));
        var (from, to, more) = (2 * Math.PI * 27 / Sectors, 2 * Math.PI * 28 / Sectors, notched.Left[27]);
        Assert.Equal(0.3 / 0.2 / ((20 + (4 * Math.Cos(from + to))) * (to - from)), more, 0.012);
        Assert.Equal((Math.PI * 408) + (more * ((20 * (to - from)) + (2 * Math.Sin(2 * to)) - (2 * Math.Sin(2 * from)))) + (more * more * (to - from) / 2), notched.Area, 5e-4);
    }

    // Where the scan ends there is nothing to see, and no burr.
    [Fact]
    public void A_border_is_no_burr()
    {
        Assert.All(Outline(Edge(82, 48, 20), 0.002).Left, left => Assert.Equal(0, left));
        Assert.All(Outline(Edge(48, 6, 20), 0.002).Left, left => Assert.Equal(0, left));
    }

    // R + e cos 2(θ − θ₀) is convex for small e and the same from behind: 2(R + e) long and 2(R − e) wide.
    [Theory]
    [InlineData(0)]
    [InlineData(30)]
    [InlineData(90)]
    [InlineData(135)]
    [InlineData(179)]
    public void Widths_are_those_between_parallel_lines(double degrees)
    {
        var twice = 2 * degrees * Math.PI / 180;
        var (least, most) = Outline(Waved(Edge(48, 48, 20), 2, 1.5 * Math.Cos(twice), 1.5 * Math.Sin(twice))).Feret();
        Assert.Equal(43, most, 1e-9);
        Assert.Equal(37, least, 1e-9);
    }

    // Three corners, each opposite a side: R + e cos 3θ is 2R wide from corner to side, and across, where the lines touch (3e)²/2R further out on both sides, 2R + 9e²/R.
    [Fact]
    public void A_hole_of_three_corners_is_nearly_as_wide_all_around()
    {
        var (least, most) = Outline(Waved(Edge(48, 48, 20), 3, 0.6, 0)).Feret();
        Assert.Equal(40, least, 1e-9);
        Assert.Equal(40 + (9 * 0.36 / 20), most, 0.01);
    }

    // 0.3 of light out and 0.3 in are as much of the radius each way.
    [Fact]
    public void Radii_range_from_burr_to_notch()
    {
        Assert.Equal(0, Outline(Edge(48, 48, 20)).RadiusRange(), 1e-9);
        var notched = Outline(Edge(48, 48, 20), 0.002, more: On(4, 0.3));
        Assert.Equal(notched.Left[4], notched.RadiusRange(), 1e-9);
        var both = Outline(Edge(48, 48, 20), 0.002, more: (x, y) => On(4, 0.3)(x, y) + On(13, -0.3)(x, y));
        Assert.Equal(both.Left[4] - both.Left[13], both.RadiusRange(), 1e-9);

        // R + e cos 2θ, seen in the middles of 31 sectors, of which none is farther than 5.8° from where it is longest: e(1 − cos 11.6°) = 0.02 e less at most.
        Assert.InRange(Outline(Waved(Edge(48, 48, 20), 2, 0, 1)).RadiusRange(), 2 - 0.08, 2);

        // A notch where a long hole is long reaches out all the more: in the second sector, 20 + 1.5 cos(3 · 2π/31); the least radii are two degrees beside the short axis, in the eighth.
        var longer = Outline(Waved(Edge(48, 48, 20), 2, 1.5, 0), 0.002, more: On(1, 0.3));
        Assert.Equal(longer.Left[1] + (1.5 * (Math.Cos(6 * Math.PI / 31) - Math.Cos(30 * Math.PI / 31))), longer.RadiusRange(), 1e-9);
    }

    // From the right downwards; a tenth of a turn and six tenths are in sectors 3 and 18.
    [Fact]
    public void Points_follow_the_outline_and_stay_on_the_scan()
    {
        var notched = Outline(Edge(48, 47, 20), 0.002, more: (x, y) => On(3, 0.3)(x, y + 1) + On(18, -0.3)(x, y + 1));
        Assert.True(notched.Left[3] > 0 && notched.Left[18] < 0);
        var points = notched.Points(10);
        Assert.Equal(10, points.Count);
        for (var i = 0; i < 10; i++)
        {
            var radius = 20 + (i == 1 ? notched.Left[3] : i == 6 ? notched.Left[18] : 0);
            Assert.Equal(48 + (radius * Math.Cos(i * Math.PI / 5)), points[i].X, 1e-9);
            Assert.Equal(47 + (radius * Math.Sin(i * Math.PI / 5)), points[i].Y, 1e-9);
        }

        var cut = Outline(Edge(8, 5, 20)).Points(4);
        Assert.Equal([(28.0, 5.0), (8.0, 25.0), (0.0, 5.0), (8.0, 0.0)], cut.Select(point => (Math.Round(point.X, 9), Math.Round(point.Y, 9))));
    }
}
