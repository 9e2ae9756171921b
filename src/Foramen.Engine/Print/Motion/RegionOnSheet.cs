using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;

namespace Foramen.Engine.Print;

/// <summary>A region of the photograph where it lies on the sheet: the light of its pixels without falloff, read by place in the region (u to the right, v downwards, 0 to 1 each).</summary>
/// <remarks>On curved paper the region's edges count as straight between its corners.</remarks>
internal sealed class RegionOnSheet
{
    // Beyond the region's edges, so that its surroundings can be read.
    private const double Margin = 0.06;

    private readonly Homography map;
    private readonly MapReader reads;
    private readonly int left;
    private readonly int top;
    private readonly int columns;
    private readonly int rows;
    private readonly int stride;
    private readonly float[] light;
    private readonly float[] falloff;
    // 1 where the light is known, else 0.
    private readonly float[] known;
    private readonly bool isWhole = true;

    private RegionOnSheet(SheetImage image, Homography map, (int Left, int Top, int Right, int Bottom) box)
    {
        this.map = map;
        (left, top) = (box.Left, box.Top);
        (columns, rows) = (box.Right - box.Left, box.Bottom - box.Top);
        (stride, PitchMillimetres) = (image.Grid.Width, image.Grid.PitchMillimetres);
        reads = new MapReader(columns, rows);
        light = new float[columns * rows];
        falloff = new float[columns * rows];
        known = new float[columns * rows];
        var line = new float[image.Grid.Width];
        for (var row = 0; row < rows; row++)
        {
            image.ReadFalloff(top + row, line);
            line.AsSpan(left, columns).CopyTo(falloff.AsSpan(row * columns));
            for (var column = 0; column < columns; column++)
            {
                var from = ((top + row) * stride) + left + column;
                var here = (row * columns) + column;
                var isKnown = (image.Known.IsEmpty || image.Known[from] != 0) && falloff[here] > 1e-9f;
                (known[here], light[here]) = isKnown ? (1, image.Lux[from] / falloff[here]) : (0, 0);
                isWhole &= isKnown;
            }
        }
    }

    /// <summary>From pixel to pixel, mm.</summary>
    public double PitchMillimetres { get; }

    /// <summary>Width and height on the sheet, pixels, across the middle.</summary>
    public (double Width, double Height) Size
    {
        get
        {
            var ((leftX, leftY), (rightX, rightY)) = (map.Map(0, 0.5), map.Map(1, 0.5));
            var ((upX, upY), (downX, downY)) = (map.Map(0.5, 0), map.Map(0.5, 1));
            return (Math.Max(1, double.Hypot(rightX - leftX, rightY - leftY)), Math.Max(1, double.Hypot(downX - upX, downY - upY)));
        }
    }

    /// <summary>The region on the sheet.</summary>
    /// <exception cref="RefusalException">It lies outside the frame.</exception>
    public static RegionOnSheet Of(SheetImage image, MovingRegion region)
    {
        var (a, b) = (region.Place.TopLeft, region.Place.BottomRight);
        (double X, double Y)?[] corners = [Pixel(image, a.X, a.Y), Pixel(image, b.X, a.Y), Pixel(image, b.X, b.Y), Pixel(image, a.X, b.Y)];
        if (corners is not [{ } topLeft, { } topRight, { } bottomRight, { } bottomLeft])
        {
            throw Outside(region);
        }

        (double X, double Y)[] all = [topLeft, topRight, bottomRight, bottomLeft];
        var (width, height) = (image.Grid.Width, image.Grid.Height);
        if (all.Max(p => p.X) < 0 || all.Min(p => p.X) > width - 1 || all.Max(p => p.Y) < 0 || all.Min(p => p.Y) > height - 1)
        {
            throw Outside(region);
        }

        int Room(Func<(double X, double Y), double> way) => (int)Math.Ceiling(Margin * (all.Max(way) - all.Min(way))) + 2;
        int Low(Func<(double X, double Y), double> way) => Math.Max(0, (int)all.Min(way) - Room(way));
        int High(Func<(double X, double Y), double> way, int size) => Math.Min(size, (int)Math.Ceiling(all.Max(way)) + Room(way));
        return new RegionOnSheet(image, Homography.Through(all), (Low(p => p.X), Low(p => p.Y), High(p => p.X, width), High(p => p.Y, height)));
    }

    /// <summary>Light at a place; not a number where it is unknown or beside the sheet.</summary>
    public float At(double u, double v)
    {
        var (x, y) = map.Map(u, v);
        (x, y) = (x - left, y - top);
        if (!(x > -0.5 && y > -0.5 && x < columns - 0.5 && y < rows - 0.5) || known[((int)(y + 0.5) * columns) + (int)(x + 0.5)] == 0)
        {
            return float.NaN;
        }

        // What is unknown beside it takes no light from it.
        var value = reads.Sample(light, (float)x, (float)y);
        return isWhole ? value : value / reads.Sample(known, (float)x, (float)y);
    }

    /// <summary>The falloff in the middle; that of the nearest place on the sheet where the middle is beside it.</summary>
    public float FalloffInTheMiddle
    {
        get
        {
            var (x, y) = map.Map(0.5, 0.5);
            return reads.Sample(falloff, (float)(x - left), (float)(y - top));
        }
    }

    /// <summary>The known pixels of which there is any part.</summary>
    /// <param name="part">How much of the motion there is at a place, 0 to 1.</param>
    public RegionPixels Pixels(Func<double, double, double> part)
    {
        var pixels = new RegionPixels();
        for (var row = 0; row < rows; row++)
        {
            var (ux, u1, vx, v1, wx, w1) = map.PlacesAlong(top + row);
            for (var column = 0; column < columns; column++)
            {
                var here = (row * columns) + column;
                var x = left + column;
                var w = (wx * x) + w1;
                var (u, v) = (((ux * x) + u1) / w, ((vx * x) + v1) / w);
                if (known[here] != 0 && u >= 0 && v >= 0 && u <= 1 && v <= 1 && part(u, v) is var share && share > 0)
                {
                    pixels.Add(((top + row) * stride) + x, (float)u, (float)v, falloff[here], (float)share);
                }
            }
        }

        return pixels;
    }

    private static RefusalException Outside(MovingRegion region)
        => new($"The moving region \"{region.Name}\" lies outside the frame; move the frame, or mark the region where the sheet sees it.");

    private static (double X, double Y)? Pixel(SheetImage image, double x, double y)
        => image.Projection.PicturePlaceOf(PhotographPosition.FromFractions(x, y)) is { } place
            ? (image.Grid.ColumnAt(place.XMillimetres), image.Grid.RowAt(place.YMillimetres))
            : null;
}
