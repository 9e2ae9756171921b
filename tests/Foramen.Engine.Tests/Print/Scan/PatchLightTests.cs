using CsCheck;
using Foramen.Engine.Print;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Print.Scan;

public class PatchLightTests
{
    // Whatever share of dust is lighter or darker, up to a fifth each, the light is the patch's.
    [Fact]
    public void Dust_does_not_count_up_to_a_fifth_lighter_and_a_fifth_darker() => Gen.Select(Gen.Int[0, 7], Gen.Int[0, 7]).Sample((dark, light) =>
    {
        var scan = ScanPictures.Draw(40, 40, (column, _) => column < dark ? 0.02 : column >= 40 - light ? 0.98 : 0.5);
        var seen = PatchLight.Of(scan, ScanPictures.Whole(scan).ToMap(), new PatchArea(0, 0, 1, 1));
        Assert.Equal(0.5, seen.Mean, 0.002);
        Assert.Equal((0, 0), (seen.ClippedLight, seen.ClippedDark));
    });

    // Light that rises evenly: the middle three fifths have the mean of all of it; the ends by themselves would not.
    [Fact]
    public void It_is_the_mean_of_the_middle()
    {
        var scan = ScanPictures.Draw(40, 40, (column, _) => column < 20 ? 0.2 + (0.01 * column) : 0.6 + (0.005 * column));

        // Columns 8 to 31: twelve of 0.28 to 0.39, twelve of 0.70 to 0.755.
        Assert.Equal((0.335 + 0.7275) / 2, PatchLight.Of(scan, ScanPictures.Whole(scan).ToMap(), new PatchArea(0, 0, 1, 1)).Mean, 0.002);
    }

    [Fact]
    public void It_is_that_of_its_own_area_and_of_no_other()
    {
        var scan = ScanPictures.Draw(80, 40, (column, row) => column is >= 20 and < 40 && row is >= 10 and < 30 ? 0.6 : 0.2);
        var map = ScanPictures.Whole(scan).ToMap();
        Assert.Equal(0.6, PatchLight.Of(scan, map, new PatchArea(0.25, 0.25, 0.5, 0.75)).Mean, 0.002);
        Assert.Equal(0.2, PatchLight.Of(scan, map, new PatchArea(0.5, 0.25, 0.75, 0.75)).Mean, 0.002);
        Assert.Equal(0.2, PatchLight.Of(scan, map, new PatchArea(0.25, 0.75, 0.5, 1)).Mean, 0.002);
    }

    [Fact]
    public void What_is_clipped_is_counted()
    {
        var scan = ScanPictures.Draw(40, 40, (column, _) => column < 4 ? 0 : column < 14 ? 1 : 0.5);
        var seen = PatchLight.Of(scan, ScanPictures.Whole(scan).ToMap(), new PatchArea(0, 0, 1, 1));
        Assert.Equal(0.25, seen.ClippedLight, 1e-9);
        Assert.Equal(0.1, seen.ClippedDark, 1e-9);
    }

    [Theory]
    [InlineData(-0.05, 0, 1, 1)]
    [InlineData(0, -0.05, 1, 1)]
    [InlineData(0, 0, 1.05, 1)]
    [InlineData(0, 0, 1, 1.05)]
    public void An_area_beyond_a_border_is_refused(double left, double top, double right, double bottom)
    {
        var scan = ScanPictures.Draw(40, 40, (_, _) => 0.5);
        Assert.Contains(
            "border",
            Assert.Throws<RefusalException>(() => PatchLight.Of(scan, ScanPictures.Whole(scan).ToMap(), new PatchArea(left, top, right, bottom))).Message,
            StringComparison.Ordinal);
    }

    [Fact]
    public void An_area_shrinks_towards_its_middle_and_lies_about_its_place()
    {
        Assert.Equal(new PatchArea(0.25, 0.5, 0.75, 1.5), new PatchArea(0, 0, 1, 2).Inside(0.25));
        Assert.Equal(new PatchArea(0.25, 0.5, 0.75, 0.75), PatchArea.Around((0.5, 0.625), 0.5, 0.25));
    }
}
