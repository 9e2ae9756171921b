using Foramen.Engine.Camera;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using static Foramen.Engine.Tests.Print.Motion.SmallSheet;

namespace Foramen.Engine.Tests.Print.Motion;

public class RegionOnSheetTests
{
    // Between pixels an even slope is read as it is, and a little beyond the region too.
    [Theory]
    [InlineData(20, 15, 60, 45)]
    [InlineData(5, 5, 75, 55)]
    [InlineData(60, 40, 66, 46)]
    public void It_reads_the_light_at_a_place(double left, double top, double right, double bottom)
    {
        var region = Region(Image(Slope), Place(left, top, right, bottom));
        foreach (var (u, v) in Around())
        {
            Assert.Equal(Slope(left - 0.5 + (u * (right - left)), top - 0.5 + (v * (bottom - top))), region.At(u, v), 0.02);
        }
    }

    // Half a pixel beyond the outermost one, the sheet ends.
    [Theory]
    [InlineData(-10, -8, 20, 16)]
    [InlineData(60, 44, 90, 68)]
    public void Beside_the_sheet_there_is_nothing_to_read(double left, double top, double right, double bottom)
    {
        var region = Region(Image(Slope), Place(left, top, right, bottom));
        foreach (var (u, v) in Around())
        {
            var (x, y) = (left - 0.5 + (u * (right - left)), top - 0.5 + (v * (bottom - top)));
            if (IsTie(x) || IsTie(y))
            {
                continue;
            }

            var read = region.At(u, v);
            var isOn = x > -0.5 && y > -0.5 && x < Columns - 0.5 && y < Rows - 0.5;
            Assert.Equal(isOn, !float.IsNaN(read));
            if (isOn)
            {
                Assert.Equal(Slope(Math.Clamp(x, 0, Columns - 1), Math.Clamp(y, 0, Rows - 1)), read, 0.02);
            }
        }
    }

    // Of a narrow photograph the sheet's columns 8 to 71 and rows 6 to 53 are known; on the others lies no light that may be read.
    [Theory]
    [InlineData(8, 6, 40, 30)]
    [InlineData(40, 30, 72, 54)]
    public void Where_the_photograph_does_not_reach_there_is_nothing_to_read(double left, double top, double right, double bottom)
    {
        static bool IsKnown(double column, double row) => column is >= 8 and <= 71 && row is >= 6 and <= 53;
        var region = Region(Image((column, row) => IsKnown(column, row) ? 5 : double.NaN, Narrow), Place(left, top, right, bottom, Narrow));
        foreach (var (u, v) in Around())
        {
            var (x, y) = (left - 0.5 + (u * (right - left)), top - 0.5 + (v * (bottom - top)));
            if (!IsTie(x) && !IsTie(y))
            {
                var read = region.At(u, v);
                Assert.Equal(IsKnown(Math.Round(x), Math.Round(y)), !float.IsNaN(read));

                // Even light is as bright at its edge.
                Assert.True(float.IsNaN(read) || Math.Abs(read - 5) < 0.01, $"{read} at {x}, {y}");
            }
        }
    }

    // On flat paper a rectangle of a straight-lined photograph is a four-sided figure, however the camera points; each pixel's place is found by its own ray.
    [Theory]
    [InlineData(0, 0)]
    [InlineData(14, 0)]
    [InlineData(-9, 8)]
    public void Its_pixels_are_those_that_see_it(double pan, double tilt)
    {
        var image = Image((_, _) => 1, Wide, SheetAim.FromAngles(Angle.FromDegrees(pan), Angle.FromDegrees(tilt)));
        var place = RectangleInPhotograph.FromFractions(0.41, 0.37, 0.26, 0.31);
        var pixels = Region(image, place).Pixels((u, v) => u < 0.5 ? 0 : 1);
        var (falloff, at) = (new float[Columns], 0);
        for (var row = 0; row < Rows; row++)
        {
            image.ReadFalloff(row, falloff);
            for (var column = 0; column < Columns; column++)
            {
                var point = SheetPoint.FromMillimetres(image.Grid.XMillimetres(column), image.Grid.YMillimetres(row));
                if (image.Projection.PositionOf(image.Projection.SheetPointAt(point)) is not { } seen)
                {
                    continue;
                }

                var (u, v) = ((seen.X - 0.41) / 0.26, (seen.Y - 0.37) / 0.31);
                if (u is < 0.5 or > 1 || v is < 0 or > 1)
                {
                    continue;
                }

                Assert.Equal((row * Columns) + column, pixels.Index[at]);
                Assert.Equal(u, pixels.U[at], 1e-4);
                Assert.Equal(v, pixels.V[at], 1e-4);
                Assert.Equal(falloff[column], pixels.Falloff[at]);
                Assert.Equal(1, pixels.Part[at]);
                at++;
            }
        }

        Assert.Equal(at, pixels.Count);
        Assert.True(at > 100);
    }

    // The fourth power of the cosine of the ray's angle, any textbook of photography.
    [Theory]
    [InlineData(60, 40, 76, 56)]
    [InlineData(20, 15, 60, 45)]
    public void Falloff_is_told_for_its_middle(double left, double top, double right, double bottom)
    {
        var (x, y) = ((((left + right) / 2) - 40) * 1.25, (((top + bottom) / 2) - 30) * 1.25);
        var cosine = 100 / Math.Sqrt((100 * 100) + (x * x) + (y * y));
        Assert.Equal(Math.Pow(cosine, 4), Region(Image((_, _) => 1), Place(left, top, right, bottom)).FalloffInTheMiddle, 2e-3);
    }

    [Theory]
    [InlineData(-15, 20, -2, 30)]
    [InlineData(81, 20, 95, 30)]
    [InlineData(30, -12, 50, -3)]
    [InlineData(30, 61, 50, 72)]
    public void Beside_the_sheet_on_any_side_it_is_refused(double left, double top, double right, double bottom)
        => Assert.Throws<RefusalException>(() => Region(Image((_, _) => 1), Place(left, top, right, bottom)));

    [Theory]
    [InlineData(-15, 20, 4, 30)]
    [InlineData(76, 20, 95, 30)]
    [InlineData(30, -12, 50, 4)]
    [InlineData(30, 56, 50, 72)]
    public void Partly_on_the_sheet_it_is_taken_as_far_as_it_is_seen(double left, double top, double right, double bottom)
    {
        var (width, height) = (Math.Min(Columns, right) - Math.Max(0, left), Math.Min(Rows, bottom) - Math.Max(0, top));
        Assert.Equal(width * height, Region(Image((_, _) => 1), Place(left, top, right, bottom)).Pixels((_, _) => 1).Count);
    }

    [Fact]
    public void Lists_of_pixels_are_made_once_for_every_exposure_reads_them()
    {
        var pixels = Region(Image((_, _) => 1), Place(30, 20, 50, 40)).Pixels((_, _) => 1);
        Assert.Same(pixels.Index, pixels.Index);
        Assert.Same(pixels.U, pixels.U);
        Assert.Same(pixels.V, pixels.V);
        Assert.Same(pixels.Falloff, pixels.Falloff);
        Assert.Same(pixels.Part, pixels.Part);
    }

    // Places in the region and as far beyond it as its surroundings are read.
    private static IEnumerable<(double U, double V)> Around()
        => from row in Enumerable.Range(0, 81)
           from column in Enumerable.Range(0, 81)
           select (-0.06 + (1.12 * column / 80), -0.06 + (1.12 * row / 80));

    private static double Slope(int column, int row) => Slope((double)column, row);

    private static double Slope(double x, double y) => 100 + (3 * x) + (7 * y);

    private static bool IsTie(double place) => Math.Abs(place - Math.Floor(place) - 0.5) < 1e-6;
}
