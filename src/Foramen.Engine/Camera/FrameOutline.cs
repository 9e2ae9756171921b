namespace Foramen.Engine.Camera;

/// <summary>The sheet's edge as it lies over the photograph, and how much of the sheet the photograph does not reach. Immutable.</summary>
public sealed class FrameOutline
{
    private const int Cells = 24;

    private FrameOutline(IReadOnlyList<(double X, double Y)> points, double left, double right, double top, double bottom, double missing)
        => (Points, MissingLeft, MissingRight, MissingTop, MissingBottom, Missing) = (points, left, right, top, bottom, missing);

    /// <summary>
    /// Corners and points between them, once about from the top left, in fractions of the photograph from its left and top; outside 0 to 1 where the
    /// photograph does not reach. Empty where part of the edge looks out behind the photograph's plane.
    /// </summary>
    public IReadOnlyList<(double X, double Y)> Points { get; }

    /// <summary>Part of the sheet's area that the photograph does not reach, 0 to 1.</summary>
    public double Missing { get; }

    /// <summary>Part of the left edge that the photograph does not reach, 0 to 1.</summary>
    public double MissingLeft { get; }

    /// <summary>Part of the right edge that the photograph does not reach, 0 to 1.</summary>
    public double MissingRight { get; }

    /// <summary>Part of the top edge that the photograph does not reach, 0 to 1.</summary>
    public double MissingTop { get; }

    /// <summary>Part of the bottom edge that the photograph does not reach, 0 to 1.</summary>
    public double MissingBottom { get; }

    /// <summary>The outline of a projection.</summary>
    public static FrameOutline Of(SheetProjection projection)
    {
        var (width, height) = (projection.PictureSize.Width.Millimetres, projection.PictureSize.Height.Millimetres);
        var points = new List<(double X, double Y)>(4 * Cells);
        var behind = false;
        var sides = new double[4];
        for (var side = 0; side < 4; side++)
        {
            for (var i = 0; i < Cells; i++)
            {
                var along = (double)i / Cells;
                var (x, y) = side switch
                {
                    0 => (along - 0.5, 0.5),
                    1 => (0.5, 0.5 - along),
                    2 => (0.5 - along, -0.5),
                    _ => (-0.5, along - 0.5),
                };
                if (!projection.Locate(x * width, y * height, out var px, out var py))
                {
                    behind = true;
                    sides[side]++;
                    continue;
                }

                points.Add((px, py));
                sides[side] += IsIn(px, py) ? 0 : 1;
            }
        }

        var missing = 0;
        for (var row = 0; row < Cells; row++)
        {
            for (var column = 0; column < Cells; column++)
            {
                var found = projection.Locate(Middle(column) * width, Middle(row) * height, out var px, out var py);
                missing += found && IsIn(px, py) ? 0 : 1;
            }
        }

        return new FrameOutline(
            behind ? [] : points, sides[3] / Cells, sides[1] / Cells, sides[0] / Cells, sides[2] / Cells, missing / (double)(Cells * Cells));
    }

    private static double Middle(int cell) => ((cell + 0.5) / Cells) - 0.5;

    private static bool IsIn(double x, double y) => x is >= 0 and <= 1 && y is >= 0 and <= 1;
}
