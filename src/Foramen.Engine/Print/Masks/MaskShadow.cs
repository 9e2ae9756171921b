using Foramen.Engine.Camera;
using Foramen.Engine.Scene;

namespace Foramen.Engine.Print;

/// <summary>How much of the light a mask leaves at each pixel of a picture, with the soft edge that the hole's disc draws.</summary>
internal static class MaskShadow
{
    private const int RowSamples = 4;
    private const int ChordSamples = 8;

    /// <summary>The part of the light left, 0 to 1, row by row from the top of the picture as the subject was.</summary>
    public static float[] Of(PrintMask mask, SheetGrid grid, PinholeCamera camera, bool mirrored)
    {
        var cover = Cover(mask, grid, mirrored);
        var soft = Softened(cover, grid, mask.Place.PenumbraIn(camera).Millimetres / 2 / grid.PitchMillimetres);
        for (var i = 0; i < soft.Length; i++)
        {
            var inside = Math.Clamp(soft[i], 0, 1);
            soft[i] = mask.Sense == MaskSense.Blocks ? 1 - inside : inside;
        }

        return soft;
    }

    /// <summary>How much of each pixel lies inside the shape: exact along rows, four rows to a pixel.</summary>
    private static float[] Cover(PrintMask mask, SheetGrid grid, bool mirrored)
    {
        var rings = mask.OnPrint().Select(ring => ring.Select(place => (
            X: ((mirrored ? -place.X : place.X) / grid.PitchMillimetres) + (grid.Width / 2.0),
            Y: (grid.Height / 2.0) - (place.Y / grid.PitchMillimetres))).ToArray()).ToList();
        var cover = new float[grid.Width * grid.Height];
        var crossings = new List<(double X, int Turn)>();
        for (var line = 0; line < grid.Height * RowSamples; line++)
        {
            var y = (line + 0.5) / RowSamples;
            crossings.Clear();
            foreach (var ring in rings)
            {
                for (var i = 0; i < ring.Length; i++)
                {
                    var (from, to) = (ring[i], ring[(i + 1) % ring.Length]);
                    if (from.Y <= y != to.Y <= y)
                    {
                        crossings.Add((from.X + ((y - from.Y) / (to.Y - from.Y) * (to.X - from.X)), from.Y <= y ? 1 : -1));
                    }
                }
            }

            crossings.Sort((a, b) => a.X.CompareTo(b.X));
            var winding = 0;
            for (var i = 0; i + 1 < crossings.Count; i++)
            {
                winding += crossings[i].Turn;
                if (winding != 0)
                {
                    AddSpan(cover.AsSpan(line / RowSamples * grid.Width, grid.Width), crossings[i].X, crossings[i + 1].X);
                }
            }
        }

        return cover;
    }

    private static void AddSpan(Span<float> row, double from, double to)
    {
        (from, to) = (Math.Clamp(from, 0, row.Length), Math.Clamp(to, 0, row.Length));
        for (var column = (int)from; column < to; column++)
        {
            row[column] += (float)((Math.Min(to, column + 1) - Math.Max(from, column)) / RowSamples);
        }
    }

    /// <summary>The mean over a disc, by sums along rows; beyond the picture the shape goes on as at its rim.</summary>
    private static float[] Softened(float[] cover, SheetGrid grid, double radius)
    {
        if (radius < 0.2)
        {
            return cover;
        }

        var (width, height, reach) = (grid.Width, grid.Height, (int)Math.Ceiling(radius));
        var chords = Enumerable.Range(-reach, (2 * reach) + 1).Select(row => HalfChord(radius, row)).ToArray();
        var area = 2 * chords.Sum();

        var sums = new double[height * (width + 1)];
        for (var row = 0; row < height; row++)
        {
            for (var column = 0; column < width; column++)
            {
                sums[(row * (width + 1)) + column + 1] = sums[(row * (width + 1)) + column] + cover[(row * width) + column];
            }
        }

        var soft = new float[cover.Length];
        RowWork.Run(
            height,
            16,
            (first, end) =>
            {
                for (var row = first; row < end; row++)
                {
                    for (var i = -reach; i <= reach; i++)
                    {
                        var start = Math.Clamp(row + i, 0, height - 1) * (width + 1);
                        AddDiscRow(sums.AsSpan(start, width + 1), soft.AsSpan(row * width, width), chords[i + reach], area);
                    }
                }
            },
            null,
            CancellationToken.None);
        return soft;
    }

    /// <summary>Half of the disc's width, averaged over a row of pixels.</summary>
    private static double HalfChord(double radius, int row)
        => Enumerable.Range(0, ChordSamples).Average(i => Math.Sqrt(Math.Max(0, (radius * radius) - Math.Pow(row - 0.5 + ((i + 0.5) / ChordSamples), 2))));

    private static void AddDiscRow(ReadOnlySpan<double> sums, Span<float> into, double half, double area)
    {
        if (half <= 0)
        {
            return;
        }

        var width = into.Length;
        var (first, last) = (sums[1], sums[width] - sums[width - 1]);
        for (var column = 0; column < width; column++)
        {
            into[column] += (float)((SumTo(sums, column + 0.5 + half, width, first, last) - SumTo(sums, column + 0.5 - half, width, first, last)) / area);
        }
    }

    // The sum up to a place between pixels; beyond the rim its pixel goes on.
    private static double SumTo(ReadOnlySpan<double> sums, double place, int width, double first, double last)
    {
        if (place <= 0)
        {
            return place * first;
        }

        if (place >= width)
        {
            return sums[width] + ((place - width) * last);
        }

        var whole = (int)place;
        return sums[whole] + ((place - whole) * (sums[whole + 1] - sums[whole]));
    }
}
