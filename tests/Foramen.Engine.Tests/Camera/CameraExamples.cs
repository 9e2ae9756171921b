using CsCheck;
using Foramen.Engine.Camera;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Camera;

internal static class CameraExamples
{
    public static Length Mm(double millimetres) => Length.FromMillimetres(millimetres);

    /// <summary>The invented Box A: 0.35 mm, 63 mm, 127 × 102 mm flat paper.</summary>
    public static PinholeCamera BoxA => Flat(0.35, 63, 127, 102);

    public static SheetPoint At(double x, double y) => SheetPoint.FromMillimetres(x, y);

    public static PinholeCamera Flat(double hole, double focal, double width, double height, double edge = 0, double footX = 0, double footY = 0)
        => PinholeCamera.Create(
            "box", Hole.FromDiameter(Mm(hole), edgeThickness: Mm(edge)), Mm(focal), SheetSize.FromMillimetres(width, height), holeOffset: At(footX, footY));

    public static PinholeCamera Curved(double hole, double focal, double wall, double width, double height, double edge = 0, double footX = 0)
        => PinholeCamera.Create(
            "tin",
            Hole.FromDiameter(Mm(hole), edgeThickness: Mm(edge)),
            Mm(focal),
            SheetSize.FromMillimetres(width, height),
            PaperShape.Curved(Mm(wall)),
            At(footX, 0));

    /// <summary>Flat boxes and tins of sensible sizes, holes in the middle or not.</summary>
    public static Gen<PinholeCamera> AnyCamera { get; } = Gen.OneOf(
        Gen.Select(Gen.Double[0.1, 0.8], Gen.Double[30, 300], Gen.Double[20, 200], Gen.Double[20, 200], Gen.Double[0, 0.2], Gen.Double[-10, 10], Gen.Double[-10, 10])
            .Select((hole, focal, width, height, edge, x, y) => Flat(hole, focal, width, height, edge, x, y)),
        Gen.Select(Gen.Double[0.1, 0.5], Gen.Double[1, 2], Gen.Double[30, 80], Gen.Double[0.5, 2.5], Gen.Double[20, 100], Gen.Double[-5, 5])
            .Select((hole, ratio, wall, arc, height, x) => Curved(hole, ratio * wall, wall, arc * wall, height, 0.05, x)));

    /// <summary>A camera and a point of its sheet.</summary>
    public static Gen<(PinholeCamera Camera, SheetPoint Point)> AnyPoint { get; } = Gen.Select(AnyCamera, Gen.Double[-0.5, 0.5], Gen.Double[-0.5, 0.5])
        .Select((camera, x, y) => (camera, At(x * camera.Sheet.Width.Millimetres, y * camera.Sheet.Height.Millimetres)));
}
