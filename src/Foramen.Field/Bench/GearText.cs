using System.Globalization;
using Foramen.Field.Texts;
using Foramen.Field.Units;
using Foramen.Journal.Kit;

namespace Foramen.Field.Bench;

/// <summary>Gear in a line.</summary>
public static class GearText
{
    /// <summary>“0.35 mm at 63 mm · f/180 · 102 × 127 mm, flat”.</summary>
    public static string Of(CameraDefinition camera, UnitSystem units)
    {
        var fNumber = camera.FocalDistanceMillimetres / camera.HoleDiameterMillimetres;
        var shape = camera.PaperShape == "curved" ? Words.Gear.Curved : Words.Gear.Flat;
        return string.Create(
            CultureInfo.CurrentCulture,
            $"{Small(camera.HoleDiameterMillimetres, units)} at {Lengths.Show(camera.FocalDistanceMillimetres, units)} · f/{fNumber:0} · {Lengths.Bare(camera.SheetWidthMillimetres, units)} × {Lengths.Show(camera.SheetHeightMillimetres, units)}, {shape.ToLowerInvariant()}");
    }

    /// <summary>“Direct positive · EI 2.5 at 120 s”.</summary>
    public static string Of(PaperDefinition paper)
    {
        var kind = paper.Kind == "directPositive" ? Words.Gear.Positive : Words.Gear.Negative;
        var speed = paper.Speed switch
        {
            { IsoSpeed: { } iso } => $"P {NumberText.Show(iso)}",
            { ExposureIndex: { } index, AtSeconds: { } at } => $"EI {NumberText.Show(index)} at {NumberText.Show(at)} s",
            { ExposureIndex: { } index } => $"EI {NumberText.Show(index)}",
            _ => "",
        };
        return speed.Length == 0 ? kind : $"{kind} · {speed}";
    }

    // A hole is measured in millimetres everywhere; a drill gauge in thousandths of an inch says the same.
    private static string Small(double millimetres, UnitSystem units) => units == UnitSystem.Metric
        ? $"{NumberText.Show(millimetres)} mm"
        : $"{NumberText.Show(millimetres / 25.4, 4)} in";
}
