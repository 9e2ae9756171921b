using Foramen.Engine.Quantities;

namespace Foramen.Engine.Camera;

/// <summary>
/// Marks on a camera box that show what the sheet sees: on the top and on the right side one front mark at the hole and three rear marks a base behind it, whose
/// lines of sight are the frame's edges and its middle. Immutable.
/// </summary>
/// <remarks>Similar triangles. Lines on the box's skin see from beside the hole: a subject nearer than some metres is shifted by that much (parallax).</remarks>
public sealed record SightingMarks
{
    /// <summary>How well an eye puts one mark over another, at each of them: 0.5 mm (an assumption; pins and thin lines in good light).</summary>
    public const double EyeMillimetres = 0.5;

    /// <summary>The caution that belongs to every sighting aid.</summary>
    public const string Caution = "Never look at the sun along the marks.";

    private SightingMarks(PinholeCamera camera, Length distance, IReadOnlyList<SightLine> lines, Angle tolerance, double widthShare, double heightShare)
    {
        (Camera, Base, Lines) = (camera, distance, lines);
        (Tolerance, WidthShare, HeightShare) = (tolerance, widthShare, heightShare);
    }

    /// <summary>The camera.</summary>
    public PinholeCamera Camera { get; }

    /// <summary>From the front mark to the rear marks, along the hole's axis.</summary>
    public Length Base { get; }

    /// <summary>Three on the top, from the left edge to the right; three on the side, from the lower edge to the upper.</summary>
    public IReadOnlyList<SightLine> Lines { get; }

    /// <summary>How far the aim may be off, one standard deviation: two marks each half a millimetre off, over the base.</summary>
    public Angle Tolerance { get; }

    /// <summary>That tolerance as a part of the sheet's width, in its middle.</summary>
    public double WidthShare { get; }

    /// <summary>That tolerance as a part of the sheet's height.</summary>
    public double HeightShare { get; }

    /// <summary>Marks for a camera.</summary>
    /// <param name="camera">The camera.</param>
    /// <param name="distance">The base: 20 mm to 1 m; the focal distance where nothing is said, and then the rear marks stand as wide as the sheet.</param>
    /// <exception cref="RefusalException">Outside the range, or an edge looks so far aside that no line over the box shows it.</exception>
    public static SightingMarks For(PinholeCamera camera, Length? distance = null)
    {
        var length = distance ?? camera.FocalDistance;
        Guard.Within(length.Millimetres, 20, 1000, "the distance between front and rear marks", "mm");
        var (x, y) = (camera.Sheet.Width.Millimetres / 2, camera.Sheet.Height.Millimetres / 2);
        var lines = new List<SightLine>();
        foreach (var (name, place) in new[] { ("left edge", -x), ("middle", 0), ("right edge", x) })
        {
            var direction = camera.DirectionOf(SheetPoint.FromMillimetres(place, camera.HoleOffset.YMillimetres));
            lines.Add(Line(MarkFace.Top, name, direction.X, direction.Z, length));
        }

        foreach (var (name, place) in new[] { ("lower edge", -y), ("middle", 0), ("upper edge", y) })
        {
            var direction = camera.DirectionOf(SheetPoint.FromMillimetres(camera.HoleOffset.XMillimetres, place));
            lines.Add(Line(MarkFace.RightSide, name, direction.Y, direction.Z, length));
        }

        var off = Math.Sqrt(2) * EyeMillimetres / length.Millimetres;
        var shift = camera.FocalDistance.Millimetres * off;
        return new SightingMarks(
            camera, length, lines, Angle.FromRadians(Math.Atan(off)), shift / camera.Sheet.Width.Millimetres, shift / camera.Sheet.Height.Millimetres);
    }

    private static SightLine Line(MarkFace face, string name, double across, double forward, Length distance)
    {
        const double SteepestTangent = 5.7;
        if (!(forward > 0) || Math.Abs(across) > SteepestTangent * forward)
        {
            throw new RefusalException($"The sheet's {name} looks out more than 80° aside, where no line over the box can show it; mark a smaller sheet.");
        }

        return new SightLine(face, name, Angle.FromRadians(Math.Atan2(across, forward)), -distance.Millimetres * across / forward);
    }
}
