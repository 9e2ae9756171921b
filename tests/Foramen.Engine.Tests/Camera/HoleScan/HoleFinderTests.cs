using CsCheck;
using Foramen.Engine.Camera;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Camera;

public sealed class HoleFinderTests
{
    // Discs of a code on a plate of a code, drawn pixel by pixel: a pixel belongs to a disc if its middle does.
    private static ScanImage Scan(byte plate, params (double X, double Y, double Radius, byte Code)[] discs)
    {
        const int Side = 200;
        var codes = new byte[Side * Side];
        for (var i = 0; i < codes.Length; i++)
        {
            codes[i] = plate;
            foreach (var disc in discs)
            {
                codes[i] = double.Hypot((i % Side) + 0.5 - disc.X, (i / Side) + 0.5 - disc.Y) < disc.Radius ? disc.Code : codes[i];
            }
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

    [Fact]
    public void An_even_scan_holds_no_hole() => Gen.Byte.Sample(code => Assert.Contains("There is no hole", Refusal(Scan(code)), StringComparison.Ordinal), iter: Samples.Of(20));
}
