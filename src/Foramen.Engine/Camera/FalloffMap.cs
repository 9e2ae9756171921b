using Foramen.Engine.Quantities;

namespace Foramen.Engine.Camera;

/// <summary>How the light falls off over the sheet, and whether the hole's edge still lets it through into the corners. Immutable.</summary>
public sealed record FalloffMap
{
    private FalloffMap(IReadOnlyList<IReadOnlyList<Stops>> rows, double cornerOpen, Length? thickestEdge)
        => (Rows, CornerOpenPart, ThickestEdge) = (rows, cornerOpen, thickestEdge);

    /// <summary>Light against that on the axis, row by row from the top of the finished picture; each value stands for the middle of its cell.</summary>
    public IReadOnlyList<IReadOnlyList<Stops>> Rows { get; }

    /// <summary>Part of the hole's opening that the edge's thickness leaves in the worst corner, 0 to 1.</summary>
    public double CornerOpenPart { get; }

    /// <summary>
    /// The thickest edge that leaves half of the opening in that corner; null where a corner looks out square aside. Half of a circle's overlap: q = 0.404 of the
    /// diameter, from <see cref="Hole.OpenPart"/>.
    /// </summary>
    public Length? ThickestEdge { get; }

    /// <summary>Whether the hole covers the corners: at least half of its opening is seen from each.</summary>
    public bool CoversCorners => CornerOpenPart >= 0.5;

    /// <summary>The map of a camera.</summary>
    /// <param name="camera">The camera.</param>
    /// <param name="columns">2 to 200.</param>
    /// <param name="rows">2 to 200.</param>
    /// <exception cref="RefusalException">Outside the ranges.</exception>
    public static FalloffMap Of(PinholeCamera camera, int columns = 7, int rows = 5)
    {
        Guard.Within(columns, 2, 200, "the columns of the falloff map");
        Guard.Within(rows, 2, 200, "the rows of the falloff map");
        var (width, height) = (camera.Sheet.Width.Millimetres, camera.Sheet.Height.Millimetres);
        var map = Enumerable.Range(0, rows)
            .Select(row => (IReadOnlyList<Stops>)[.. Enumerable.Range(0, columns)
                .Select(column => camera.FalloffStops(SheetPoint.FromMillimetres((((column + 0.5) / columns) - 0.5) * width, (0.5 - ((row + 0.5) / rows)) * height)))])
            .ToList();
        var steepest = 0.0;
        foreach (var (x, y) in new[] { (-0.5, -0.5), (0.5, -0.5), (-0.5, 0.5), (0.5, 0.5) })
        {
            var direction = camera.DirectionOf(SheetPoint.FromMillimetres(x * width, y * height));
            steepest = Math.Max(steepest, direction.Z > 0 ? double.Hypot(direction.X, direction.Y) / direction.Z : double.PositiveInfinity);
        }

        // Where two circles overlap by half, their middles are 0.404 diameters apart.
        const double HalfOverlap = 0.40397;
        return double.IsFinite(steepest)
            ? new FalloffMap(map, camera.Hole.OpenPart(steepest), steepest > 0 ? Length.FromMillimetres(Math.Min(1e6, HalfOverlap * camera.Hole.Diameter.Millimetres / steepest)) : null)
            : new FalloffMap(map, 0, null);
    }
}
