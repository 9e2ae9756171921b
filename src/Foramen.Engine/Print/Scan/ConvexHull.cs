namespace Foramen.Engine.Print;

/// <summary>The convex hull of places (Andrew's monotone chain), clockwise with rows counted downwards.</summary>
internal sealed class ConvexHull
{
    private const int MostCorners = 90;

    private ConvexHull(PixelPlace[] places) => Places = places;

    /// <summary>Its corners.</summary>
    public PixelPlace[] Places { get; }

    public static ConvexHull Of(PixelPlace[] places)
    {
        PixelPlace[] sorted = [.. places.OrderBy(place => place.X).ThenBy(place => place.Y)];
        var hull = new List<PixelPlace>();
        foreach (var pass in new[] { sorted, [.. sorted.Reverse()] })
        {
            var from = hull.Count;
            foreach (var place in pass)
            {
                while (hull.Count - from >= 2 && Turn(hull[^2], hull[^1], place) <= 0)
                {
                    hull.RemoveAt(hull.Count - 1);
                }

                hull.Add(place);
            }

            hull.RemoveAt(hull.Count - 1);
        }

        return new ConvexHull([.. hull]);
    }

    /// <summary>Area of a figure whose corners follow one another, square pixels (the surveyor's formula).</summary>
    public static double AreaOf(IReadOnlyList<PixelPlace> corners)
    {
        var sum = 0.0;
        for (var i = 0; i < corners.Count; i++)
        {
            var (a, b) = (corners[i], corners[(i + 1) % corners.Count]);
            sum += (a.X * b.Y) - (b.X * a.Y);
        }

        return Math.Abs(sum) / 2;
    }

    /// <summary>The four corners that hold the largest area: for each diagonal the corner farthest from it on either side.</summary>
    public PixelPlace[] LargestFour()
    {
        var step = Math.Max(1, (Places.Length + MostCorners - 1) / MostCorners);
        PixelPlace[] some = [.. Places.Where((_, i) => i % step == 0)];
        var best = (Area: -1.0, Corners: new PixelPlace[4]);
        for (var i = 0; i < some.Length; i++)
        {
            for (var j = i + 1; j < some.Length; j++)
            {
                var (left, leftArea) = Farthest(some, i, j, i + 1, j);
                var (right, rightArea) = Farthest(some, i, j, j + 1, i + some.Length);
                if (leftArea + rightArea > best.Area)
                {
                    best = (leftArea + rightArea, [some[i], left, some[j], right]);
                }
            }
        }

        return best.Corners;
    }

    private static (PixelPlace Place, double Area) Farthest(PixelPlace[] places, int i, int j, int from, int to)
    {
        var best = (Place: places[i], Area: 0.0);
        for (var k = from; k < to; k++)
        {
            var area = Math.Abs(Turn(places[i], places[j], places[k % places.Length]));
            best = area > best.Area ? (places[k % places.Length], area) : best;
        }

        return best;
    }

    private static double Turn(PixelPlace a, PixelPlace b, PixelPlace c) => ((b.X - a.X) * (c.Y - a.Y)) - ((b.Y - a.Y) * (c.X - a.X));
}
