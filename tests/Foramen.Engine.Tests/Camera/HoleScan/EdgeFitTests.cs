using CsCheck;
using Foramen.Engine.Camera;
using Foramen.Engine.Light;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Camera;

/// <summary>The fitted edge and its outline against holes drawn from their definition.</summary>
public sealed class EdgeFitTests
{
    private static readonly RenderedHole Clear = new() { LongAxis = 20, ShortAxis = 20, Noise = 0, Inside = 0.75, Outside = 0.1, Encoding = ScanEncoding.Linear };

    private static readonly ScanScale TenToAMillimetre = ScanScale.FromDotsPerInch(254, 0);

    private static EdgeFit Fitted(RenderedHole hole)
        => EdgeFit.Of(hole.Draw(), new HoleCandidate(hole.X + 0.4, hole.Y - 0.3, Math.PI * hole.LongAxis * hole.ShortAxis * 1.05, hole.LongAxis, hole.ShortAxis, hole.Direction, hole.Inside > hole.Outside, false));

    // What was drawn comes back: place, radius, levels and blur (a pixel adds its own twelfth to the blur's square).
    [Fact]
    public void The_fit_finds_what_was_drawn() => Gen.Select(Gen.Double[9, 25], Gen.Double[0.6, 2], Gen.Double[44, 52], Gen.Double[44, 52], Gen.Bool).Sample((radius, blur, x, y, dark) =>
    {
        var fit = Fitted(Clear with { LongAxis = radius, ShortAxis = radius, Blur = blur, X = x, Y = y, Inside = dark ? 0.1 : 0.75, Outside = dark ? 0.75 : 0.1 });
        Assert.Equal(x, fit.Model.X, 0.02);
        Assert.Equal(y, fit.Model.Y, 0.02);
        Assert.Equal(radius, fit.Model.MeanRadius, 0.03);
        Assert.Equal(dark ? -0.65 : 0.65, fit.Model.Contrast, 0.005);
        Assert.Equal(Math.Sqrt((blur * blur) + (1 / 12.0)), fit.Model.Sigma, 0.05);
        Assert.True(fit.RadiusSd is > 0 and < 0.01);
    }, iter: Samples.Of(8));

    // The information an edge holds (Cramér and Rao): pixels of noise s tell a straight edge of length L, step C and Gaussian blur σ to s²·2σ√π/(C²·L). That the levels
    // are not known beforehand adds some hundredths.
    [Fact]
    public void Noise_and_its_spread_are_those_of_the_scan() => Gen.Select(Gen.Double[0.01, 0.04], Gen.Int[1, 10_000]).Sample((noise, seed) =>
    {
        var fit = Fitted(Clear with { Noise = noise, Seed = seed });
        Assert.Equal(noise, fit.Noise, 0.12 * noise);
        var sigma = Math.Sqrt(1 + (1 / 12.0));
        var expected = Math.Sqrt(noise * noise * 2 * sigma * Math.Sqrt(Math.PI) / (0.65 * 0.65 * 2 * Math.PI * 20));
        Assert.InRange(fit.RadiusSd / expected, 0.85, 1.35);
        Assert.Equal(20, fit.Model.MeanRadius, 5 * expected);
    }, iter: Samples.Of(8));

    // A light that rises to the right by half of itself does not move the edge.
    [Fact]
    public void Uneven_light_does_not_move_the_edge()
    {
        var fit = Fitted(Clear with { Slope = 0.5, Outside = 0.3 });
        Assert.Equal(20, fit.Model.MeanRadius, 0.05);
        Assert.Equal(48, fit.Model.X, 0.1);
    }

    [Fact]
    public void Noise_without_an_edge_is_refused() => Gen.Int[0, 1000].Sample(seed => Assert.Contains(
        "cannot be told from blur and noise", Assert.Throws<RefusalException>(() => Fitted(Clear with { Inside = 0.5, Outside = 0.5, Noise = 0.1, Seed = seed })).Message, StringComparison.Ordinal), iter: Samples.Of(3));

    [Fact]
    public void A_blur_as_wide_as_the_hole_is_refused()
        => Assert.Throws<RefusalException>(() => Fitted(Clear with { LongAxis = 6, ShortAxis = 6, Blur = 5 }));

    // An ellipse by its definition: area πab, widths 2a and 2b, radii from b to a; its outline is a polygon of that area and lies on it.
    [Fact]
    public void The_outline_of_an_ellipse_is_the_ellipse() => Gen.Select(Gen.Double[0.85, 1], Gen.Double[-1.5, 1.5]).Sample((ratio, direction) =>
    {
        var hole = Clear with { LongAxis = 24, ShortAxis = 24 * ratio, Direction = direction };
        var outline = HoleOutline.Of(Fitted(hole));
        Assert.Equal(1, outline.Area / (Math.PI * 24 * 24 * ratio), 0.003);
        var (least, most) = outline.Feret();
        Assert.Equal(48, most, 0.15);
        Assert.Equal(48 * ratio, least, 0.15);
        Assert.Equal(24 * (1 - ratio), outline.RadiusRange(), 0.15);

        var points = outline.Points(360);
        var twice = 0.0;
        for (var i = 0; i < 360; i++)
        {
            var (here, next) = (points[i], points[(i + 1) % 360]);
            twice += (here.X * next.Y) - (next.X * here.Y);
            var (u, v) = (((here.X - 48) * Math.Cos(direction)) + ((here.Y - 48) * Math.Sin(direction)), ((here.Y - 48) * Math.Cos(direction)) - ((here.X - 48) * Math.Sin(direction)));
            Assert.Equal(1, Math.Sqrt((u * u / (24 * 24)) + (v * v / (24 * 24 * ratio * ratio))), 0.01);
        }

        Assert.Equal(1, twice / 2 / outline.Area, 0.002);
        Assert.True(points[0].X > 48 + 19 && points[90].Y > 48 + 19);
    }, iter: Samples.Of(5));

    // A needle across the edge, above or below, left or right: it is seen in that direction and there only, and its area is lost (or won, where it reaches out).
    [Theory]
    [InlineData(0)]
    [InlineData(90)]
    [InlineData(180)]
    [InlineData(270)]
    public void Burrs_and_notches_are_seen_where_they_are(double degrees)
    {
        var (cos, sin) = (Math.Cos(degrees * Math.PI / 180), Math.Sin(degrees * Math.PI / 180));
        bool Needle(double x, double y, double from, double to)
        {
            var (along, across) = (((x - 48) * cos) + ((y - 48) * sin), ((y - 48) * cos) - ((x - 48) * sin));
            return along > from && along < to && Math.Abs(across) < 1.5;
        }

        var burr = HoleOutline.Of(Fitted(Clear with { Burr = (x, y) => Needle(x, y, 13, 21) }));
        var notch = HoleOutline.Of(Fitted(Clear with { More = (x, y) => Needle(x, y, 19, 27) }));
        var sector = (int)Math.Round(degrees / 360 * burr.Left.Count) % burr.Left.Count;
        Assert.True(burr.Left[sector] + burr.Left[(sector + burr.Left.Count - 1) % burr.Left.Count] < -2);
        Assert.True(notch.Left[sector] + notch.Left[(sector + notch.Left.Count - 1) % notch.Left.Count] > 2);
        Assert.InRange((Math.PI * 400) - burr.Area, 14, 30); // 3 × 7 pixels
        Assert.InRange(notch.Area - (Math.PI * 400), 14, 30);
        Assert.True(burr.RadiusRange() > 2 && notch.RadiusRange() > 2);
    }

    // Two doubts that have nothing to do with each other add as squares.
    [Fact]
    public void The_doubt_in_the_resolution_adds_as_squares() => Gen.Double[0.001, 0.1].Sample(doubt =>
    {
        var scan = Clear.Draw();
        var (sure, unsure) = (HoleMeter.Measure(scan, TenToAMillimetre), HoleMeter.Measure(scan, ScanScale.FromDotsPerInch(254, doubt)));
        Assert.Equal(Math.Sqrt((sure.RelativeSd * sure.RelativeSd) + (doubt * doubt)), unsure.RelativeSd, 1e-9);
        Assert.True(2 * 0.02 / 40 <= sure.RelativeSd); // no better than 0.02 pixel on the radius
    }, iter: Samples.Of(5));

    // Ten pixels to a millimetre: 48 by 43.2 pixels are 4.8 by 4.32 mm.
    [Fact]
    public void Widths_are_in_millimetres_and_places_in_pixels()
    {
        var measured = HoleMeter.Measure((Clear with { LongAxis = 24, ShortAxis = 21.6 }).Draw(), TenToAMillimetre);
        Assert.Equal(4.8, measured.MostWidth.Millimetres, 0.02);
        Assert.Equal(4.32, measured.LeastWidth.Millimetres, 0.02);
        Assert.Equal(0.24, measured.RoundnessDeviation.Millimetres, 0.02);
        Assert.Equal(2 * Math.Sqrt(2.4 * 2.16), measured.Diameter.Millimetres, 0.01);
        Assert.Equal((48.0, 48.0), (Math.Round(measured.Middle.X, 1), Math.Round(measured.Middle.Y, 1)));
        Assert.Equal(180, measured.Outline.Count);
        Assert.Equal((0.0, 0.0), (measured.Burr.Millimetres, measured.Notch.Millimetres));
        Assert.Null(measured.Offset);
        Assert.Empty(measured.Doubts);
        var hole = measured.ToHole(Length.FromMillimetres(0.1));
        Assert.Equal((measured.Diameter, measured.RelativeSd, 0.1), (hole.Diameter, hole.DiameterRelativeSd, hole.EdgeThickness.Millimetres));
    }

    [Fact]
    public void Few_pixels_and_much_dust_are_doubted()
    {
        var small = HoleMeter.Measure((Clear with { LongAxis = 7, ShortAxis = 7 }).Draw(), TenToAMillimetre);
        Assert.Matches("^The hole is only 1[34]\\.[0-9] pixels across; 20 or more", Assert.Single(small.Doubts));
        var dusty = HoleMeter.Measure((Clear with { More = (x, y) => double.Hypot(x - 12, y - 12) < 5 || double.Hypot(x - 84, y - 12) < 5 }).Draw(), TenToAMillimetre);
        Assert.Equal("2 smaller or ragged spots were taken for dust.", Assert.Single(dusty.Doubts));
        var tiny = Assert.Throws<RefusalException>(() => HoleMeter.Measure((Clear with { LongAxis = 3, ShortAxis = 3 }).Draw(), TenToAMillimetre));
        Assert.Contains("higher resolution", tiny.Message, StringComparison.Ordinal);
    }

    // A needle of 3 × 7 pixels into a hole, and one out of it: a few tenths of a millimetre at ten pixels to one.
    [Fact]
    public void Burr_and_notch_are_told_apart()
    {
        var burr = HoleMeter.Measure((Clear with { Burr = (x, y) => x > 61 && Math.Abs(y - 48) < 1.5 }).Draw(), TenToAMillimetre);
        var notch = HoleMeter.Measure((Clear with { More = (x, y) => x is > 66 and < 75 && Math.Abs(y - 48) < 1.5 }).Draw(), TenToAMillimetre);
        Assert.InRange(burr.Burr.Millimetres, 0.2, 0.8);
        Assert.InRange(notch.Notch.Millimetres, 0.2, 0.8);
        Assert.True(burr.Burr > burr.Notch && notch.Notch > notch.Burr);
    }

    // By hand: twice the diameter is four times the light, two stops, four times it four; a spread of a tenth of it 2·lg2 1.1 = 0.275 stop; 60 mm over 0.4 mm is f/150.
    [Fact]
    public void What_another_hole_does_in_a_camera()
    {
        var camera = CameraExamples.Flat(0.2, 60, 100, 80);
        var light = PaperLight.Of(LightColour.Noon.ToSpectrum(), PaperSensitivity.BlueSensitive);
        var one = HoleConsequence.Of(camera, Hole.FromDiameter(Length.FromMillimetres(0.4), 0.1), light);
        Assert.Equal(2, one.Light.Value, 1e-9);
        Assert.Equal(0.275, one.LightSd.Value, 5e-4);
        Assert.Equal(150, one.FNumber.Value, 1e-9);
        Assert.Equal(4, HoleConsequence.Of(camera, Hole.FromDiameter(Length.FromMillimetres(0.8)), light).Light.Value, 1e-9);
        Assert.True(one.FinestLines < one.FinestLinesAtBest);
        Assert.Equal(0.1, PointSpread.Of(Length.FromMillimetres(0.4), Length.FromMillimetres(60), light).ContrastAt(one.FinestLines), 1e-5);
        Assert.Equal(0.1, PointSpread.Of(one.BestDiameter, Length.FromMillimetres(60), light).ContrastAt(one.FinestLinesAtBest), 1e-5);
        Assert.Equal(one.FinestLinesAtBest, HoleConsequence.Of(camera, Hole.FromDiameter(one.BestDiameter), light).FinestLines, 1e-9);
        Assert.Throws<RefusalException>(() => HoleConsequence.Of(camera, Hole.FromDiameter(Length.FromMillimetres(8)), light));
    }
}
