using Foramen.Engine.Camera;
using Foramen.Engine.Quantities;

namespace Foramen.Journal.Kit;

/// <summary>From a camera as written down to a camera the Engine can compute with.</summary>
public static class CameraReading
{
    /// <summary>The camera, lying level.</summary>
    /// <exception cref="RefusalException">A value is missing, unknown or outside its range.</exception>
    public static PinholeCamera ToCamera(this CameraDefinition definition)
        => PinholeCamera.Create(
            definition.Name,
            Hole.FromDiameter(
                Length.FromMillimetres(definition.HoleDiameterMillimetres),
                definition.HoleDiameterRelativeSd ?? Hole.AssumedRelativeSd,
                definition.HoleThicknessMillimetres is { } thickness ? Length.FromMillimetres(thickness) : null),
            Length.FromMillimetres(definition.FocalDistanceMillimetres),
            SheetSize.FromMillimetres(definition.SheetWidthMillimetres, definition.SheetHeightMillimetres),
            ShapeOf(definition),
            SheetPoint.FromMillimetres(definition.HoleOffsetXMillimetres ?? 0, definition.HoleOffsetYMillimetres ?? 0)).WithFocalDistanceSpread(definition.FocalDistanceRelativeSd ?? 0);

    private static PaperShape ShapeOf(CameraDefinition definition) => (definition.PaperShape, definition.WallRadiusMillimetres) switch
    {
        (null or "flat", _) => PaperShape.Flat,
        ("curved", { } radius) => PaperShape.Curved(Length.FromMillimetres(radius)),
        ("curved", null) => throw new RefusalException("The paper is curved but the radius of the wall it lies on is missing; give wallRadiusMm."),
        _ => throw new RefusalException($"The paper's shape is \"{definition.PaperShape}\"; it should be flat or curved."),
    };
}
