using Foramen.Engine.Camera;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Print;

/// <summary>
/// Finds a sheet of paper that lies on plain ground: what differs from a smooth surface through the ground is the sheet, the largest four-sided figure in its hull gives coarse
/// corners, and straight lines through where its edges cross half their step give them to a part of a pixel.
/// </summary>
/// <remarks>Limits: the ground must be of one tone that differs from the sheet's rim, and the lens must draw straight lines straight.</remarks>
public static class SheetFinder
{
    private const int Cells = 360;
    private const double LeastStep = 0.12;
    private const double LeastPart = 0.05;
    private const double LeastFill = 0.92;
    private const string CannotBeTold = "The print cannot be told from the ground it lies on; lay it flat on plain ground that is clearly darker or lighter than its rim, or give its corners yourself.";

    /// <summary>The corners of the sheet, named as it lies.</summary>
    /// <exception cref="RefusalException">No sheet is found, it reaches the border, or it is not four-sided.</exception>
    public static PrintCorners Find(ScanImage scan)
    {
        Guard.Within(Math.Min(scan.Width, scan.Height), 100, ushort.MaxValue, "the scan's shorter side", "pixels");
        var small = ReducedScan.Of(scan, Cells);
        var sheet = Largest(Differing(small), small.Width, small.Height);
        if (sheet.Count < LeastPart * small.Width * small.Height)
        {
            throw new RefusalException(CannotBeTold);
        }

        if (sheet.Any(cell => cell % small.Width == 0 || cell % small.Width == small.Width - 1 || cell < small.Width || cell >= small.Width * (small.Height - 1)))
        {
            throw new RefusalException("The print reaches the border of the picture; leave a finger's breadth of plain ground on every side.");
        }

        var hull = ConvexHull.Of(EndsOfRows(sheet, small.Width));
        var four = hull.LargestFour();
        if (ConvexHull.AreaOf(four) < LeastFill * ConvexHull.AreaOf(hull.Places))
        {
            throw new RefusalException("What lies on the ground is not four-sided; lay the print down whole and flat with nothing over its edges, or give its corners yourself.");
        }

        return SheetEdges.Refine(scan, Named(four, small.Step), 4.0 * small.Step);
    }

    // From the corner nearest to the upper left, clockwise as it is looked at.
    private static PixelPlace[] Named(PixelPlace[] four, int step)
    {
        var first = Array.IndexOf(four, four.MinBy(place => place.X + place.Y));
        return [.. Enumerable.Range(0, 4).Select(i => four[(first + i) % 4]).Select(place => new PixelPlace(place.X * step, place.Y * step))];
    }

    // The first and the last cell of each row: no other can be a corner of the hull.
    private static PixelPlace[] EndsOfRows(List<int> cells, int width)
    {
        var ends = new SortedDictionary<int, (int First, int Last)>();
        foreach (var cell in cells)
        {
            var (row, column) = (cell / width, cell % width);
            ends[row] = ends.TryGetValue(row, out var known) ? (Math.Min(known.First, column), Math.Max(known.Last, column)) : (column, column);
        }

        return [.. ends.SelectMany(pair => new[] { new PixelPlace(pair.Value.First + 0.5, pair.Key + 0.5), new PixelPlace(pair.Value.Last + 0.5, pair.Key + 0.5) }).Distinct()];
    }

    private static bool[] Differing(ReducedScan small)
    {
        var rim = Math.Max(2, Math.Max(small.Width, small.Height) / 60);
        var points = new List<(double X, double Y, double Ln)>();
        for (var row = 0; row < small.Height; row++)
        {
            for (var column = 0; column < small.Width; column++)
            {
                if (row < rim || column < rim || row >= small.Height - rim || column >= small.Width - rim)
                {
                    points.Add((column + 0.5, row + 0.5, small.LnAt(column, row)));
                }
            }
        }

        var ground = LightField.Fit(points, small.Width, small.Height);
        var least = Math.Max(LeastStep, 6 * ground.Spread);
        var differing = new bool[small.Width * small.Height];
        for (var i = 0; i < differing.Length; i++)
        {
            var (column, row) = (i % small.Width, i / small.Width);
            differing[i] = Math.Abs(small.LnAt(column, row) - ground.LnAt(column + 0.5, row + 0.5)) > least;
        }

        return differing;
    }

    // The largest of the areas that hang together by their sides.
    private static List<int> Largest(bool[] differing, int width, int height)
    {
        var seen = new bool[differing.Length];
        List<int> largest = [];
        var next = new Stack<int>();
        for (var start = 0; start < differing.Length; start++)
        {
            if (!differing[start] || seen[start])
            {
                continue;
            }

            var found = new List<int>();
            seen[start] = true;
            next.Push(start);
            while (next.TryPop(out var cell))
            {
                found.Add(cell);
                var (column, row) = (cell % width, cell / width);
                Visit(column > 0, cell - 1);
                Visit(column < width - 1, cell + 1);
                Visit(row > 0, cell - width);
                Visit(row < height - 1, cell + width);
            }

            largest = found.Count > largest.Count ? found : largest;
        }

        return largest;

        void Visit(bool inside, int cell)
        {
            if (inside && differing[cell] && !seen[cell])
            {
                seen[cell] = true;
                next.Push(cell);
            }
        }
    }
}
