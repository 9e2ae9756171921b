using CsCheck;
using Foramen.Engine.Camera;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using static Foramen.Engine.Tests.Camera.CameraExamples;

namespace Foramen.Engine.Tests.Camera;

public sealed class SheetGridTests
{
    private static readonly PhotographField Wide = PhotographField.FromHorizontalAngle(2000, 1500, Angle.FromDegrees(90));

    private static readonly Gen<(SheetGrid Grid, double Width, double Height)> AnyGrid = Gen.Select(Gen.Double[20, 200], Gen.Double[20, 200], Gen.Int[16, 900])
        .Select((width, height, pixels) => (SheetGrid.WithLongSide(SheetProjection.Of(Flat(0.2, 100, width, height), Wide), pixels), width, height));

    [Fact]
    public void Pixels_are_square_and_cover_the_picture_from_edge_to_edge() => AnyGrid.Sample(of =>
    {
        var (grid, width, height) = of;
        Assert.Equal(Math.Max(width, height), Math.Max(grid.Width, grid.Height) * grid.PitchMillimetres, 1e-9);
        Assert.InRange(Math.Min(grid.Width, grid.Height) * grid.PitchMillimetres, Math.Min(width, height) - (0.501 * grid.PitchMillimetres), Math.Min(width, height) + (0.501 * grid.PitchMillimetres));
        Assert.Equal(-grid.XMillimetres(-0.5), grid.XMillimetres(grid.Width - 0.5), 1e-9);
        Assert.Equal(-grid.YMillimetres(-0.5), grid.YMillimetres(grid.Height - 0.5), 1e-9);
        Assert.Equal(grid.PitchMillimetres, grid.XMillimetres(4) - grid.XMillimetres(3), 1e-9);
        Assert.Equal(grid.PitchMillimetres, grid.YMillimetres(3) - grid.YMillimetres(4), 1e-9);
    });

    [Fact]
    public void A_place_is_found_again_by_its_column_and_row() => Gen.Select(AnyGrid, Gen.Double[-100, 100], Gen.Double[-100, 100]).Sample((of, x, y) =>
    {
        Assert.Equal(x, of.Grid.XMillimetres(of.Grid.ColumnAt(x)), 1e-9);
        Assert.Equal(y, of.Grid.YMillimetres(of.Grid.RowAt(y)), 1e-9);
    });

    [Fact]
    public void A_coarser_grid_covers_the_finer_about_the_same_middle() => Gen.Select(AnyGrid, Gen.Int[1, 9]).Sample((of, factor) =>
    {
        var coarse = of.Grid.Coarser(factor);
        Assert.Equal(factor * of.Grid.PitchMillimetres, coarse.PitchMillimetres, 1e-12);
        Assert.InRange((coarse.Width * factor) - of.Grid.Width, 0, factor - 1);
        Assert.InRange((coarse.Height * factor) - of.Grid.Height, 0, factor - 1);
        Assert.Equal(0, coarse.XMillimetres((coarse.Width / 2.0) - 0.5), 1e-9);
    });

    // A strip of 200 × 2 mm in 16 pixels along: not a sixth of a pixel high, and one all the same.
    [Theory]
    [InlineData(200, 2)]
    [InlineData(2, 200)]
    public void A_narrow_strip_has_a_pixel_at_least(double width, double height)
        => Assert.Equal(1, Math.Min(StripGrid(width, height).Width, StripGrid(width, height).Height));

    private static SheetGrid StripGrid(double width, double height) => SheetGrid.WithLongSide(SheetProjection.Of(Flat(0.2, 100, width, height), Wide), 16);
}
