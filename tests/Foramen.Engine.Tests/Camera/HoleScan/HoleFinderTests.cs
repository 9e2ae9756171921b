using CsCheck;
using Foramen.Engine.Camera;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Camera;

public sealed class HoleFinderTests
{
    // Discs of a code on a plate of a code, drawn pixel by pixel: a pixel belongs to a disc if its middle does.
    private static ScanImage Scan(byte plate, params (double X, double Y, double Radius, byte Code)[] discs) => Drawn((x, y) =>
    {
        var code = plate;
        foreach (var disc in discs)
        {
            code = double.Hypot(x + 0.5 - disc.X, y + 0.5 - disc.Y) < disc.Radius ? disc.Code : code;
        }

        return code;
    });

    private static ScanImage Drawn(Func<int, int, byte> code)
    {
        const int Side = 200;
        var codes = new byte[Side * Side];
        for (var i = 0; i < codes.Length; i++)
        {
            codes[i] = code(i % Side, i / Side);
        }

        return ScanImage.FromGrey(Side, Side, codes);
    }

    private static string Refusal(ScanImage scan) => Assert.Throws<RefusalException>(() => HoleFinder.Find(scan)).Message;

    [Fact]
    public void A_disc_is_found_where_it_is_whether_bright_or_dark() => Gen.Select(Gen.Double[5, 60], Gen.Double[70, 130], Gen.Double[70, 130], Gen.Byte, Gen.Byte).Sample((radius, x, y, plate, code) =>
    {
        if (Math.Abs(plate - code) < 24)
        {
            return;
        }

        var found = HoleFinder.Find(Scan(plate, (x, y, radius, code)));
        Assert.Equal(x, found.Hole.X, 0.3);
        Assert.Equal(y, found.Hole.Y, 0.3);
        Assert.Equal(1, found.Hole.Diameter / (2 * radius), 0.5 / radius);
        Assert.Equal(code > plate, found.Hole.IsBright);
        Assert.Equal((0, null), (found.Others, found.Rival));
    });

    // 24 codes are the least that stands out.
    [Theory]
    [InlineData(124, true)]
    [InlineData(123, false)]
    [InlineData(76, true)]
    [InlineData(77, false)]
    public void What_hardly_differs_is_no_hole(int code, bool found)
    {
        var scan = Scan(100, (100, 100, 20, (byte)code));
        if (found)
        {
            Assert.Equal(40, HoleFinder.Find(scan).Hole.Diameter, 0.5);
        }
        else
        {
            Assert.Contains("There is no hole", Refusal(scan), StringComparison.Ordinal);
        }
    }

    // A glint far brighter than the hole, one pixel wide: half-way to it the hole is plate, nearer to the plate it is found.
    [Theory]
    [InlineData(110)]
    [InlineData(70)]
    public void A_glint_does_not_hide_a_dim_hole(int code)
    {
        var found = HoleFinder.Find(Scan(20, (100, 100, 20, (byte)code), (30, 30, 2.5, 255)));
        Assert.Equal(40, found.Hole.Diameter, 0.5);
        Assert.Equal(0, found.Others); // five pixels are too few for dust that counts
    }

    // Three spots of ten pixels are told, one of six is not; none of them is half as large as the hole.
    [Fact]
    public void Dust_is_counted_from_eight_pixels_on()
    {
        var found = HoleFinder.Find(Scan(20, (100, 100, 20, 200), (30, 30, 5, 200), (30, 160, 5, 200), (160, 30, 5, 220), (160, 160, 3, 200)));
        Assert.Equal(100, found.Hole.X, 0.1);
        Assert.Equal((3, null), (found.Others, found.Rival));
    }

    // Half the area is 0.7071 of the diameter.
    [Theory]
    [InlineData(22.5, true)]
    [InlineData(20, false)]
    public void A_rival_is_half_as_large_or_larger(double radius, bool rivals)
    {
        var found = HoleFinder.Find(Scan(20, (60, 60, 30, 200), (140, 150, radius, 200)));
        Assert.Equal((60, 1), (Math.Round(found.Hole.X), found.Others));
        Assert.Equal(rivals, found.Rival is not null);
        if (found.Rival is { } rival)
        {
            Assert.Equal(140, rival.X, 0.2);
        }
    }

    [Fact]
    public void Of_two_holes_it_is_the_larger_wherever_it_lies()
    {
        Assert.Equal(140, HoleFinder.Find(Scan(20, (60, 60, 20, 200), (140, 150, 25, 200))).Hole.X, 0.2);
        Assert.Equal(60, HoleFinder.Find(Scan(200, (60, 60, 25, 20), (140, 150, 20, 20))).Hole.X, 0.2);
    }

    // A dark plate, round itself, on a bright lid: the hole in it is looked for, not the plate.
    [Fact]
    public void The_hole_is_looked_for_in_the_plate()
    {
        var found = HoleFinder.Find(Scan(230, (100, 100, 60, 20), (110, 95, 12, 225)));
        Assert.Equal(110, found.Hole.X, 0.2);
        Assert.True(found.Hole.IsBright);
        Assert.Equal(0, found.Others);
    }

    [Fact]
    public void A_hole_cut_by_the_border_is_not_taken_for_one()
    {
        Assert.Contains("touches the border", Refusal(Scan(20, (5, 100, 20, 200))), StringComparison.Ordinal);
        var beside = HoleFinder.Find(Scan(20, (5, 100, 20, 200), (120, 100, 12, 200)));
        Assert.Equal(120, beside.Hole.X, 0.2);
    }

    [Fact]
    public void Too_small_a_spot_says_how_small() // π·3² = 28.3 pixels have the area of a circle of 6.0
        => Assert.Matches("largest spot in the scan is [56]\\.[0-9] pixels across; a hole needs 8", Refusal(Scan(20, (100, 100, 3, 200))));

    // Discs side by side, run into each other, 72 × 30 pixels: a slot and no hole.
    [Fact]
    public void What_is_not_round_is_named_with_its_place()
    {
        var message = Refusal(Scan(20, (80, 100, 15, 200), (94, 100, 15, 200), (108, 100, 15, 200), (122, 100, 15, 200), (30, 30, 3, 200)));
        Assert.StartsWith("Nothing round stands out in the scan; the largest spot, ", message, StringComparison.Ordinal);
        Assert.Contains("at 101,100", message, StringComparison.Ordinal);
        Assert.Matches("is 2\\.[2-5] times as long as wide", message);
    }

    // Half-way to a scratch of 255 only the scratch stands out; nearer to the plate the hole does too, and the scratch is still one.
    [Fact]
    public void A_scratch_met_twice_is_counted_once()
    {
        var found = HoleFinder.Find(Drawn((x, y) => (byte)(y is >= 20 and < 26 && x is >= 40 and < 160 ? 255 : double.Hypot(x - 99.5, y - 119.5) < 20 ? 110 : 20)));
        Assert.Equal(40, found.Hole.Diameter, 0.5);
        Assert.Equal(1, found.Others);
    }

    // Squares and nearly squares are round enough (of their ellipse they fill 3/π): 18 × 25 is half of 30 × 30.
    [Theory]
    [InlineData(25, true)]
    [InlineData(24, false)]
    public void Just_half_as_large_is_a_rival(int height, bool rivals)
    {
        var found = HoleFinder.Find(Drawn((x, y) => (byte)((x is >= 30 and < 60 && y is >= 30 and < 60) || (x is >= 120 and < 138 && y >= 100 && y < 100 + height) ? 200 : 20)));
        Assert.Equal((900.0, rivals), (found.Hole.Area, found.Rival is not null));
    }

    // What lies along the border and takes a quarter of the scan or more is no hole that was cut, but a plate's edge; nor is a speck of a few pixels one.
    [Theory]
    [InlineData(30, "touches the border")]
    [InlineData(49, "touches the border")]
    [InlineData(50, "There is no hole")]
    [InlineData(60, "There is no hole")]
    [InlineData(80, "There is no hole")]
    public void A_quarter_of_the_scan_along_the_border_is_no_hole(int columns, string says)
    {
        Assert.Contains(says, Refusal(Drawn((x, _) => (byte)(x < columns ? 200 : 20))), StringComparison.Ordinal);
        Assert.Contains(says, Refusal(Drawn((_, y) => (byte)(y >= 200 - columns ? 20 : 200))), StringComparison.Ordinal);
    }

    [Fact]
    public void A_speck_on_the_border_is_no_hole() => Assert.Contains("There is no hole", Refusal(Scan(20, (1, 100, 3, 200))), StringComparison.Ordinal);

    // Half across 90 pixels of a scan of 200 it takes two thirds of it, and is still amid the plate.
    [Theory]
    [InlineData(20, 200)]
    [InlineData(200, 20)]
    public void A_hole_that_fills_most_of_the_scan_is_found(byte plate, byte code)
    {
        var found = HoleFinder.Find(Scan(plate, (100, 100, 90, code)));
        Assert.Equal(180, found.Hole.Diameter, 0.5);
        Assert.Equal(code > plate, found.Hole.IsBright);
    }

    // A hundred specks of four pixels about the hole, of which none counts as dust.
    [Fact]
    public void Many_specks_do_not_hide_the_hole()
    {
        var found = HoleFinder.Find(Drawn((x, y) => (byte)(double.Hypot(x - 99.5, y - 99.5) < 20 || (double.Hypot(x - 99.5, y - 99.5) > 30 && x % 18 is 4 or 5 && y % 18 is 4 or 5) ? 200 : 20)));
        Assert.Equal(40, found.Hole.Diameter, 0.5);
        Assert.Equal(0, found.Others);
    }

    [Fact]
    public void An_even_scan_holds_no_hole() => Gen.Byte.Sample(code => Assert.Contains("There is no hole", Refusal(Scan(code)), StringComparison.Ordinal), iter: Samples.Of(20));
}
