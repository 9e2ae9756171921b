using Foramen.Engine.Camera;
using Foramen.Engine.Print;
using Foramen.Engine.Quantities;

namespace Foramen.Journal.Kit;

/// <summary>From a mask as written down to a mask the Engine can compute with.</summary>
public static class MaskReading
{
    /// <summary>The mask.</summary>
    /// <exception cref="RefusalException">A value is missing, unknown or outside its range.</exception>
    public static PrintMask ToMask(this MaskDefinition definition) => PrintMask.Create(
        Outline(definition),
        Length.FromMillimetres(definition.WidthMillimetres),
        Place(definition),
        definition.Sense switch
        {
            null or "blocks" => MaskSense.Blocks,
            "passes" => MaskSense.Passes,
            _ => throw new RefusalException($"What the mask does is \"{definition.Sense}\"; it should be blocks or passes."),
        },
        SheetPoint.FromMillimetres(definition.XMillimetres ?? 0, definition.YMillimetres ?? 0),
        Angle.FromDegrees(definition.TurnDegrees ?? 0));

    private static MaskOutline Outline(MaskDefinition definition) => definition.Shape switch
    {
        "text" => MaskOutline.Text(definition.Text ?? ""),
        "ellipse" => MaskOutline.Ellipse(definition.HeightOverWidth ?? 1),
        "path" => MaskOutline.SvgPath(definition.Path ?? ""),
        _ => throw new RefusalException($"The mask's shape is \"{definition.Shape}\"; it should be text, ellipse or path."),
    };

    private static MaskPlace Place(MaskDefinition definition)
    {
        var distance = Length.FromMillimetres(definition.DistanceMillimetres);
        return definition.Place switch
        {
            null or "tray" => MaskPlace.InTray(distance),
            "beforeHole" => MaskPlace.BeforeHole(distance),
            _ => throw new RefusalException($"The mask's place is \"{definition.Place}\"; it should be tray or beforeHole."),
        };
    }
}
