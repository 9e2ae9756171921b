using Foramen.Engine.Camera;
using Foramen.Engine.Quantities;
using Foramen.Journal.Kit;

namespace Foramen.Journal.Tests.Kit;

public class CameraReadingTests
{
    private static readonly CameraDefinition Box = new()
    {
        Name = "Box A", HoleDiameterMillimetres = 0.35, FocalDistanceMillimetres = 63, SheetWidthMillimetres = 127, SheetHeightMillimetres = 102,
    };

    [Fact]
    public void What_is_written_down_is_what_is_computed_with()
    {
        var camera = (Box with
        {
            HoleDiameterRelativeSd = 0.02,
            HoleThicknessMillimetres = 0.1,
            FocalDistanceRelativeSd = 0.01,
            HoleOffsetXMillimetres = 3,
            HoleOffsetYMillimetres = -4,
        }).ToCamera();
        Assert.Equal("Box A", camera.Name);
        Assert.Equal(
            (0.35, 0.02, 0.1), (camera.Hole.Diameter.Millimetres, camera.Hole.DiameterRelativeSd, camera.Hole.EdgeThickness.Millimetres));
        Assert.Equal((63, 0.01), (camera.FocalDistance.Millimetres, camera.FocalDistanceRelativeSd));
        Assert.Equal(SheetSize.FromMillimetres(127, 102), camera.Sheet);
        Assert.Equal(SheetPoint.FromMillimetres(3, -4), camera.HoleOffset);
        Assert.Equal(PaperShape.Flat, camera.Shape);
    }

    [Fact]
    public void What_is_missing_is_assumed()
    {
        var camera = Box.ToCamera();
        Assert.Equal(
            (Hole.AssumedRelativeSd, Hole.AssumedEdgeMillimetres, 0.0),
            (camera.Hole.DiameterRelativeSd, camera.Hole.EdgeThickness.Millimetres, camera.FocalDistanceRelativeSd));
        Assert.Equal(SheetPoint.FromMillimetres(0, 0), camera.HoleOffset);
    }

    [Fact]
    public void Paper_is_flat_or_curved_along_a_wall()
    {
        Assert.Equal(PaperShape.Flat, (Box with { PaperShape = "flat", WallRadiusMillimetres = 60 }).ToCamera().Shape);
        Assert.Equal(60, (Box with { PaperShape = "curved", WallRadiusMillimetres = 60 }).ToCamera().Shape.WallRadius!.Value.Millimetres);
        Refused("The paper is curved but the radius of the wall it lies on is missing; give wallRadiusMm.", Box with { PaperShape = "curved" });
        Refused("The paper's shape is \"folded\"; it should be flat or curved.", Box with { PaperShape = "folded" });
    }

    private static void Refused(string sentence, CameraDefinition definition)
        => Assert.Equal(sentence, Assert.Throws<RefusalException>(definition.ToCamera).Message);
}
