using Foramen.Engine.Camera;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Print;

/// <summary>A mask described by what it should leave on the finished print: a shape of some size at some place, read the right way round. Immutable.</summary>
/// <remarks>
/// What mirrors. Light crosses in the hole, so the sheet carries the subject turned by half a circle; but the coating faces the hole, and whoever looks at it looks
/// towards where the paper was, not towards the subject. A direct positive is therefore its own finished print and shows the subject mirrored, left for right. A
/// negative is printed coating to coating, or its scan is inverted and flipped, which mirrors again: the finished print shows the subject as it was. A shape that
/// should read right therefore lies in the tray, seen from the hole, turned by half a circle for a direct positive, and besides mirrored for a negative. Before the hole
/// it is, seen from the subject, upright and reading right for a direct positive, and mirrored for a negative.
/// </remarks>
public sealed record PrintMask
{
    private PrintMask(MaskOutline outline, Length width, SheetPoint middle, Angle turn, MaskSense sense, MaskPlace place)
        => (Outline, Width, Middle, Turn, Sense, Place) = (outline, width, middle, turn, sense, place);

    /// <summary>The shape.</summary>
    public MaskOutline Outline { get; }

    /// <summary>Its width on the finished print, before it is turned.</summary>
    public Length Width { get; }

    /// <summary>Where its middle is on the finished print, as that is looked at.</summary>
    public SheetPoint Middle { get; }

    /// <summary>How far it is turned to the left on the finished print.</summary>
    public Angle Turn { get; }

    /// <summary>What it does to the light.</summary>
    public MaskSense Sense { get; }

    /// <summary>Where it lies.</summary>
    public MaskPlace Place { get; }

    /// <summary>Its height on the finished print, before it is turned.</summary>
    public Length Height => Length.FromMillimetres(Width.Millimetres * Outline.Height / Outline.Width);

    /// <summary>A mask.</summary>
    /// <param name="outline">The shape.</param>
    /// <param name="width">Width on the finished print, 0.5 mm to 2 m.</param>
    /// <param name="place">Where it lies.</param>
    /// <param name="sense">What it does to the light.</param>
    /// <param name="middle">Where its middle is on the finished print; the print's middle where missing.</param>
    /// <param name="turn">To the left.</param>
    /// <exception cref="RefusalException">Outside the ranges.</exception>
    public static PrintMask Create(MaskOutline outline, Length width, MaskPlace place, MaskSense sense = MaskSense.Blocks, SheetPoint middle = default, Angle turn = default)
    {
        Guard.Within(width.Millimetres, 0.5, 2000, "the mask's width on the print", "mm");
        return new PrintMask(outline, width, middle, turn, sense, place);
    }

    /// <summary>Whether a finished print shows the subject mirrored, left for right.</summary>
    public static bool IsMirrored(PaperKind paper) => paper == PaperKind.DirectPositive;

    /// <summary>The shape's rings on the finished print, mm to the right of its middle and above it.</summary>
    public IReadOnlyList<IReadOnlyList<(double X, double Y)>> OnPrint()
    {
        var scale = Width.Millimetres / Outline.Width;
        var (cos, sin) = (Math.Cos(Turn.Radians) * scale, Math.Sin(Turn.Radians) * scale);
        return Each(Outline.Rings, place => (
            (place.X * cos) - (place.Y * sin) + Middle.XMillimetres,
            (place.X * sin) + (place.Y * cos) + Middle.YMillimetres));
    }

    /// <summary>
    /// The shape's rings to be cut, mm to the right of the hole's axis and above it, with the sheet level in the camera: as seen from the hole for a tray, as seen from the
    /// subject before the hole.
    /// </summary>
    /// <param name="camera">The camera.</param>
    /// <param name="paper">The kind of paper.</param>
    /// <param name="onItsSide">Whether the camera is turned a quarter to the left for the picture.</param>
    /// <exception cref="RefusalException">As for <see cref="MaskPlace.ScaleIn"/>.</exception>
    public IReadOnlyList<IReadOnlyList<(double X, double Y)>> ToCut(PinholeCamera camera, PaperKind paper, bool onItsSide = false)
    {
        var scale = Place.ScaleIn(camera);
        return Each(OnPrint(), place =>
        {
            var pictureX = IsMirrored(paper) ? -place.X : place.X;
            var (sheetX, sheetY) = onItsSide ? (place.Y, -pictureX) : (pictureX, place.Y);
            var (x, y) = ((sheetX - camera.HoleOffset.XMillimetres) * scale, (sheetY - camera.HoleOffset.YMillimetres) * scale);
            return Place.IsBeforeHole ? (-x, y) : (x, -y);
        });
    }

    private static List<IReadOnlyList<(double X, double Y)>> Each(
        IReadOnlyList<IReadOnlyList<(double X, double Y)>> rings, Func<(double X, double Y), (double X, double Y)> change)
        => [.. rings.Select(ring => ring.Select(change).ToList())];
}
