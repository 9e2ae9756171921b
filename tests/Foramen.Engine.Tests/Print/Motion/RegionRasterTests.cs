using CsCheck;
using Foramen.Engine.Print;
using static Foramen.Engine.Tests.Print.Motion.SmallSheet;

namespace Foramen.Engine.Tests.Print.Motion;

public class RegionRasterTests
{
    [Theory]
    [InlineData(640)]
    [InlineData(8)]
    public void It_holds_the_regions_light_by_place(int most)
    {
        var raster = RegionRaster.Of(Region(Image((column, row) => 100 + (3 * column) + (7 * row)), Place(20, 15, 60, 45)), most);
        Assert.True(raster.Columns <= most && raster.Rows <= most);
        var turned = raster.Turned();

        // Within its outermost cells' middles.
        Gen.Select(Gen.Double[0.07, 0.93], Gen.Double[0.07, 0.93]).Sample((u, v) =>
        {
            Assert.Equal(100 + (3 * (19.5 + (40 * u))) + (7 * (14.5 + (30 * v))), raster.At(u, v), 0.05);
            Assert.Equal(raster.At(u, v), turned.At(v, u), 1e-3);
        });
    }

    [Fact]
    public void What_the_sheet_does_not_see_of_a_row_counts_as_the_rest_of_it()
    {
        var raster = RegionRaster.Of(Region(Image((_, row) => 5 + row), Place(-10, 15, 30, 45)), 640);
        Gen.Select(Gen.Double[0, 1], Gen.Double[0.02, 0.98]).Sample((u, v) => Assert.Equal(5 + 14.5 + (30 * v), raster.At(u, v), 0.05));
    }
}
