using CsCheck;
using Foramen.Engine.Camera;
using Foramen.Engine.Quantities;
using static Foramen.Engine.Tests.Camera.CameraExamples;

namespace Foramen.Engine.Tests.Camera;

public sealed class ChamberTests
{
    // The camera's own projection is another road: marks put in its view are seen where it draws them, and from there the distance must come back.
    [Fact]
    public void The_distance_comes_back_from_where_marks_are_drawn() => Gen.Select(Gen.Double[30, 300], Gen.Double[0.5, 10], Gen.Double[0.05, 0.4]).Sample((focal, away, share) =>
    {
        var camera = Flat(0.2, focal, 5 * focal, focal);
        var apart = 2 * away * share;
        var (left, right) = (camera.PointOf(CameraDirection.FromVector(-apart / 2, 0, away))!.Value, camera.PointOf(CameraDirection.FromVector(apart / 2, 0, away))!.Value);
        var measured = ChamberMeasurement.Of(Length.FromMetres(apart), Length.FromMetres(away), Mm(right.XMillimetres - left.XMillimetres));
        Assert.Equal(focal, measured.FocalDistance.Millimetres, 1e-6);
    });

    // cos⁴ law by hand: a sheet of 120 × 120 mm 60 mm behind the hole. The map's corner cell of 5 × 5 is at 48, 48 mm: cos² = 3600/(3600 + 4608), cos⁴ is -2.378 stops.
    [Fact]
    public void The_map_is_the_cos4_law_on_flat_paper()
    {
        var map = FalloffMap.Of(Flat(0.3, 60, 120, 120), 5, 5);
        Assert.Equal(2 * Math.Log2(3600 / 8208.0), map.Rows[0][0].Value, 1e-9);
        Assert.Equal(0, map.Rows[2][2].Value, 1e-9);
    }

    // Plane geometry by hand: two circles of diameter d, their middles 0.404·d apart, overlap by half. Here the corner's tangent is √2, so an edge of 0.404·0.3/√2.
    [Fact]
    public void The_thickest_edge_leaves_half_of_the_hole_in_the_corner()
    {
        var map = FalloffMap.Of(Flat(0.3, 60, 120, 120));
        Assert.Equal(0.404 * 0.3 / Math.Sqrt(2), map.ThickestEdge!.Value.Millimetres, 1e-4);
        Assert.Equal(0.5, FalloffMap.Of(Flat(0.3, 60, 120, 120, map.ThickestEdge.Value.Millimetres)).CornerOpenPart, 1e-4);
        Assert.False(FalloffMap.Of(Flat(0.3, 60, 120, 120, 0.15)).CoversCorners);
    }
}
