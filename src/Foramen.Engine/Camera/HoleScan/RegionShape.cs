namespace Foramen.Engine.Camera;

/// <summary>The shape of what stood out in a part of a scan, from its own pixels; every few of them where it is large.</summary>
internal static class RegionShape
{
    private const int MostSamples = 240;

    /// <summary>The largest region beyond the threshold within some bounds and a little around them; null if there is none.</summary>
    public static HoleCandidate? Of(ScanImage scan, ConnectedCells bounds, byte threshold, bool bright)
    {
        var (left, top) = (Math.Max(0, bounds.Left - 2), Math.Max(0, bounds.Top - 2));
        var (right, bottom) = (Math.Min(scan.Width - 1, bounds.Right + 2), Math.Min(scan.Height - 1, bounds.Bottom + 2));
        var step = Math.Max(1, (Math.Max(right - left, bottom - top) + 1) / MostSamples);
        var (columns, rows) = (((right - left) / step) + 1, ((bottom - top) / step) + 1);
        var flags = new bool[columns * rows];
        for (var y = 0; y < rows; y++)
        {
            var codes = scan.Row(top + (y * step));
            for (var x = 0; x < columns; x++)
            {
                var code = codes[left + (x * step)];
                flags[(y * columns) + x] = bright ? code > threshold : code < threshold;
            }
        }

        Moments? largest = null;
        var stack = new Stack<int>();
        for (var start = 0; start < flags.Length; start++)
        {
            if (!flags[start])
            {
                continue;
            }

            var moments = new Moments();
            ConnectedCells.Flood(flags, columns, rows, start, stack, moments.Add);
            largest = largest is null || moments.Count > largest.Count ? moments : largest;
        }

        return largest?.Candidate(scan, left, top, step, bright);
    }

    private sealed class Moments
    {
        private double sumX, sumY, sumXX, sumXY, sumYY;
        private int leastX = int.MaxValue, leastY = int.MaxValue, mostX, mostY;

        public int Count { get; private set; }

        public void Add(int x, int y)
        {
            Count++;
            (sumX, sumY) = (sumX + x, sumY + y);
            (sumXX, sumXY, sumYY) = (sumXX + ((double)x * x), sumXY + ((double)x * y), sumYY + ((double)y * y));
            (leastX, leastY, mostX, mostY) = (Math.Min(leastX, x), Math.Min(leastY, y), Math.Max(mostX, x), Math.Max(mostY, y));
        }

        public HoleCandidate Candidate(ScanImage scan, int left, int top, int step, bool bright)
        {
            var (meanX, meanY) = (sumX / Count, sumY / Count);

            // A pixel is a square and not a point: each adds its own 1/12.
            var (xx, xy, yy) = ((sumXX / Count) - (meanX * meanX) + (1 / 12.0), (sumXY / Count) - (meanX * meanY), (sumYY / Count) - (meanY * meanY) + (1 / 12.0));
            var (middle, spread) = ((xx + yy) / 2, double.Hypot((xx - yy) / 2, xy));
            var touches = left + (leastX * step) == 0 || top + (leastY * step) == 0
                || left + (mostX * step) + step >= scan.Width || top + (mostY * step) + step >= scan.Height;
            return new HoleCandidate(
                left + ((meanX + 0.5) * step),
                top + ((meanY + 0.5) * step),
                Count * (double)step * step,
                2 * Math.Sqrt(middle + spread) * step,
                2 * Math.Sqrt(Math.Max(1 / 12.0, middle - spread)) * step,
                Math.Atan2(2 * xy, xx - yy) / 2,
                bright,
                touches);
        }
    }
}
