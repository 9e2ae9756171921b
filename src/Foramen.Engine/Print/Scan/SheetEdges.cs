using Foramen.Engine.Camera;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Print;

/// <summary>Corners to a part of a pixel: along each side the places where the light crosses half its step, a straight line through them, and where the lines meet.</summary>
internal static class SheetEdges
{
    private const int Profiles = 120;
    private const double SideMargin = 0.06;
    private const double LeastStepInLight = 0.04;

    /// <summary>Refines coarse corners.</summary>
    /// <param name="scan">The scan.</param>
    /// <param name="coarse">Upper left, upper right, lower right, lower left.</param>
    /// <param name="reach">How far from a coarse side its edge may be, pixels.</param>
    public static PrintCorners Refine(ScanImage scan, PixelPlace[] coarse, double reach)
    {
        var sides = new (PixelPlace At, PixelPlace Along)[4];
        for (var side = 0; side < 4; side++)
        {
            sides[side] = Side(scan, coarse[side], coarse[(side + 1) % 4], reach);
        }

        PixelPoint Corner(int index)
        {
            var met = Meet(sides[(index + 3) % 4], sides[index]);
            var place = Math.Abs(met.X - coarse[index].X) + Math.Abs(met.Y - coarse[index].Y) < 3 * reach ? met : coarse[index];
            return PixelPoint.At(Math.Clamp(place.X, 0, scan.Width), Math.Clamp(place.Y, 0, scan.Height));
        }

        return new PrintCorners(Corner(0), Corner(1), Corner(2), Corner(3));
    }

    // A side keeps its coarse line where too few places on it show a step.
    private static (PixelPlace At, PixelPlace Along) Side(ScanImage scan, PixelPlace from, PixelPlace to, double reach)
    {
        var length = double.Hypot(to.X - from.X, to.Y - from.Y);
        var along = new PixelPlace((to.X - from.X) / length, (to.Y - from.Y) / length);
        var outwards = new PixelPlace(along.Y, -along.X);
        var found = new List<(double T, double Off)>();
        for (var i = 0; i < Profiles; i++)
        {
            var t = length * (SideMargin + ((1 - (2 * SideMargin)) * (i + 0.5) / Profiles));
            if (Crossing(scan, new PixelPlace(from.X + (along.X * t), from.Y + (along.Y * t)), along, outwards, reach) is { } off)
            {
                found.Add((t, off));
            }
        }

        if (found.Count < Profiles / 4)
        {
            return (from, along);
        }

        var (offset, slope) = Line(found);
        return (
            new PixelPlace(from.X + (outwards.X * offset), from.Y + (outwards.Y * offset)),
            new PixelPlace(along.X + (outwards.X * slope), along.Y + (outwards.Y * slope)));
    }

    // How far outwards the light is half way between ground and rim; from the outside in, because the sheet has tones of its own.
    private static double? Crossing(ScanImage scan, PixelPlace middle, PixelPlace along, PixelPlace outwards, double reach)
    {
        var count = (2 * (int)Math.Ceiling(reach)) + 1;
        var profile = new double[count];
        for (var i = 0; i < count; i++)
        {
            var sum = 0.0;
            for (var k = -1; k <= 1; k++)
            {
                var far = i - (count / 2);
                var (x, y) = (middle.X + (outwards.X * far) + (along.X * k), middle.Y + (outwards.Y * far) + (along.Y * k));
                if (x < 0.5 || y < 0.5 || x > scan.Width - 0.5 || y > scan.Height - 0.5)
                {
                    return null;
                }

                sum += Between(scan, x - 0.5, y - 0.5);
            }

            profile[i] = sum / 3;
        }

        var outside = Median(profile.AsSpan(count * 3 / 4));

        // The rim: the level of the first quarter of the profile that lies inwards of the largest step.
        var edge = LargestStep(profile);
        var rim = Median(profile.AsSpan(Math.Max(0, edge - Math.Max(3, count / 6)), Math.Min(edge, Math.Max(3, count / 6))));
        if (edge < 4 || Math.Abs(rim - outside) < LeastStepInLight * Math.Max(rim, outside))
        {
            return null;
        }

        var half = (rim + outside) / 2;
        for (var i = count - 2; i >= 0; i--)
        {
            if ((profile[i] - half) * (profile[i + 1] - half) <= 0 && profile[i] != profile[i + 1])
            {
                return i + ((half - profile[i]) / (profile[i + 1] - profile[i])) - (count / 2);
            }
        }

        return null;
    }

    // Over two pixels, and the outermost that is at least half as large as the largest: the rim meets the ground before the picture meets the rim.
    private static int LargestStep(double[] profile)
    {
        var largest = 0.0;
        for (var i = 1; i < profile.Length - 1; i++)
        {
            largest = Math.Max(largest, Math.Abs(profile[i + 1] - profile[i - 1]));
        }

        for (var i = profile.Length - 2; i > 0; i--)
        {
            if (Math.Abs(profile[i + 1] - profile[i - 1]) >= largest / 2)
            {
                return i;
            }
        }

        return 0;
    }

    private static double Median(Span<double> values)
    {
        if (values.IsEmpty)
        {
            return 0;
        }

        var sorted = values.ToArray();
        Array.Sort(sorted);
        return sorted[sorted.Length / 2];
    }

    private static double Between(ScanImage scan, double x, double y)
    {
        var (column, row) = ((int)x, (int)y);
        var (right, down) = (Math.Min(column + 1, scan.Width - 1), Math.Min(row + 1, scan.Height - 1));
        var (u, v) = (x - column, y - row);
        return ((1 - v) * (((1 - u) * scan.LightAt(column, row)) + (u * scan.LightAt(right, row))))
            + (v * (((1 - u) * scan.LightAt(column, down)) + (u * scan.LightAt(right, down))));
    }

    // Least squares through what lies near the line, again and again: creases and dust are far from it.
    private static (double Offset, double Slope) Line(List<(double T, double Off)> found)
    {
        var kept = found;
        var sorted = found.Select(one => one.Off).Order().ToList();
        var (offset, slope) = (sorted[sorted.Count / 2], 0.0);
        for (var pass = 0; pass < 8; pass++)
        {
            var distances = found.Select(one => Math.Abs(one.Off - offset - (slope * one.T))).Order().ToList();
            var bound = Math.Max(0.5, 2.5 * 1.4826 * distances[distances.Count / 2]);
            kept = [.. found.Where(one => Math.Abs(one.Off - offset - (slope * one.T)) <= bound)];
            var (t, off) = (kept.Average(one => one.T), kept.Average(one => one.Off));
            var spread = kept.Sum(one => (one.T - t) * (one.T - t));
            slope = spread > 0 ? kept.Sum(one => (one.T - t) * (one.Off - off)) / spread : 0;
            offset = off - (slope * t);
        }

        return (offset, slope);
    }

    private static PixelPlace Meet((PixelPlace At, PixelPlace Along) a, (PixelPlace At, PixelPlace Along) b)
    {
        var cross = (a.Along.X * b.Along.Y) - (a.Along.Y * b.Along.X);
        if (Math.Abs(cross) < 1e-6)
        {
            throw new RefusalException("Two sides of the print run alike, so it has no corners; give its corners yourself.");
        }

        var t = (((b.At.X - a.At.X) * b.Along.Y) - ((b.At.Y - a.At.Y) * b.Along.X)) / cross;
        return new PixelPlace(a.At.X + (a.Along.X * t), a.At.Y + (a.Along.Y * t));
    }
}
