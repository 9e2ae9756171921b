using Foramen.Engine.Camera;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Print;

/// <summary>The template of a mask at true scale: the shape to cut, the sheet's outline where it lies, and the hole's axis to place it by.</summary>
public static class MaskTemplate
{
    private const double Cross = 4;

    /// <summary>The template.</summary>
    /// <param name="mask">The mask.</param>
    /// <param name="camera">The camera it is for.</param>
    /// <param name="paper">The kind of paper.</param>
    /// <param name="onItsSide">Whether the camera is turned a quarter to the left for the picture.</param>
    /// <exception cref="RefusalException">It does not fit on a page, or as for <see cref="PrintMask.ToCut"/>.</exception>
    public static Template Of(PrintMask mask, PinholeCamera camera, PaperKind paper, bool onItsSide = false)
    {
        var scale = mask.Place.ScaleIn(camera);
        var flip = mask.Place.IsBeforeHole ? (X: -1, Y: 1) : (X: 1, Y: -1);
        var (halfWidth, halfHeight) = (camera.Sheet.Width.Millimetres / 2, camera.Sheet.Height.Millimetres / 2);
        (double X, double Y) Corner(double x, double y) => (
            flip.X * ((x * halfWidth) - camera.HoleOffset.XMillimetres) * scale,
            flip.Y * ((y * halfHeight) - camera.HoleOffset.YMillimetres) * scale);
        IReadOnlyList<(double X, double Y)> sheet = [Corner(-1, -1), Corner(1, -1), Corner(1, 1), Corner(-1, 1), Corner(-1, -1)];
        var rings = mask.ToCut(camera, paper, onItsSide);
        var all = rings.SelectMany(ring => ring).Concat(sheet).Append((0, 0)).ToList();
        var (left, right) = (all.Min(place => place.Item1), all.Max(place => place.Item1));
        var (low, high) = (all.Min(place => place.Item2), all.Max(place => place.Item2));
        var (originX, originY) = ((Template.WidthMillimetres / 2) - ((left + right) / 2), Template.RoomTop + 8 + high);
        (double X, double Y) OnPage((double X, double Y) place) => (originX + place.X, originY - place.Y);
        var drawn = rings.Select(ring => (IReadOnlyList<(double X, double Y)>)ring.Select(OnPage).ToList()).ToList();
        var parts = new List<TemplatePart>();

        // Outlined first and filled over, so that strokes that overlap show one cut line about them all.
        parts.AddRange(drawn.Select(ring => new TemplateLine([.. ring, ring[0]], 0.3)));
        parts.Add(new TemplateFill(drawn, 0.8));
        parts.Add(new TemplateLine([.. sheet.Select(OnPage)], 0.15, 0.5));
        parts.Add(new TemplateLine([OnPage((-Cross, 0)), OnPage((Cross, 0))], 0.2));
        parts.Add(new TemplateLine([OnPage((0, -Cross)), OnPage((0, Cross))], 0.2));
        return Template.Create(
            $"Mask for {camera.Name}, {(paper == PaperKind.DirectPositive ? "direct positive" : "negative")}",
            Lines(mask, camera, onItsSide),
            parts,
            Length.FromMillimetres(right - left),
            Length.FromMillimetres(high - low + 8));
    }

    private static List<string> Lines(PrintMask mask, PinholeCamera camera, bool onItsSide)
    {
        var seen = mask.Place.IsBeforeHole
            ? FormattableString.Invariant($"Fix {mask.Place.Distance.Millimetres:0.##} mm before the hole, outside, this side to the subject, the cross before the hole.")
            : FormattableString.Invariant($"Lay in the tray {mask.Place.Distance.Millimetres:0.##} mm before the paper, this side to the hole, the cross on the hole's axis.");
        return
        [
            seen + (onItsSide ? " Top of the page: the box's own top, as it stands level." : " Top of the page is the top of the box."),
            mask.Sense == MaskSense.Blocks
                ? "The grey shape holds light back: cut it out of black card and stick it on clear film."
                : "Cut the grey shape out of black card; the card around it holds light back.",
            FormattableString.Invariant(
                $"On the print {mask.Width.Millimetres:0.#} × {mask.Height.Millimetres:0.#} mm, edges soft over {mask.Place.PenumbraIn(camera).Millimetres:0.00} mm. The thin frame is the sheet as seen from the hole."),
        ];
    }
}
