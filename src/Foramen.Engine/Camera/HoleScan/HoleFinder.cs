using Foramen.Engine.Quantities;

namespace Foramen.Engine.Camera;

/// <summary>
/// Finds the hole in a scan: bright in a dark plate or dark in a bright one, among dust. First on blocks of which darkest and brightest code are known, then on the pixels
/// of what stood out.
/// </summary>
internal static class HoleFinder
{
    /// <summary>Fewest pixels across that a hole can be measured with.</summary>
    public const double LeastDiameter = 8;

    private const int LeastContrast = 24;
    private const int MostExamined = 64;

    // Half-way to the most extreme code first; glints on the plate can be far brighter than the hole, so then nearer to the plate.
    private static readonly double[] Thresholds = [0.5, 0.3, 0.15];

    /// <summary>What was found: the hole, and how many other spots were as large as dust.</summary>
    /// <param name="Hole">The hole.</param>
    /// <param name="Others">Other spots of the smallest size that counts, or larger.</param>
    /// <param name="Rival">Another round one at least half as large in area, if any.</param>
    public readonly record struct Finding(HoleCandidate Hole, int Others, HoleCandidate? Rival);

    /// <summary>Finds the hole.</summary>
    /// <exception cref="RefusalException">There is none, it is too small, cut by the border, or nothing round.</exception>
    public static Finding Find(ScanImage scan)
    {
        var blocks = BlockExtremes.Of(scan);
        var all = new List<HoleCandidate>();
        foreach (var part in Thresholds)
        {
            all.Clear();
            all.AddRange(Candidates(scan, blocks, part, true));
            all.AddRange(Candidates(scan, blocks, part, false));
            var inside = all.Where(one => !one.TouchesBorder && one.Diameter >= LeastDiameter).ToList();
            var round = inside.Where(one => one.IsRound && !inside.Any(other => other.IsRound && one.Holds(other))).OrderByDescending(one => one.Area).ToList();
            if (round.Count > 0)
            {
                var hole = round[0];
                var others = inside.Count(one => one != hole && !one.Holds(hole));
                return new Finding(hole, others, round.Count > 1 && round[1].Area >= hole.Area / 2 ? round[1] : null);
            }
        }

        throw Refusal(scan, all);
    }

    /// <summary>The refusal of a hole of too few pixels.</summary>
    public static RefusalException TooSmall(double diameter) => new(FormattableString.Invariant(
        $"The largest spot in the scan is {diameter:0.0} pixels across; a hole needs {LeastDiameter:0} at least and 20 to be measured well, so scan at a higher resolution."));

    private static RefusalException Refusal(ScanImage scan, List<HoleCandidate> all)
    {
        var pixels = scan.Width * (double)scan.Height;
        var isCut = all.Exists(one => one.TouchesBorder && one.Area < pixels / 4 && one.Diameter >= LeastDiameter);
        var inside = all.Where(one => !one.TouchesBorder).OrderByDescending(one => one.Area).ToList();
        if (inside.Count > 0 && inside[0].Diameter >= LeastDiameter)
        {
            return new RefusalException(FormattableString.Invariant(
                $"Nothing round stands out in the scan; the largest spot, {inside[0].Diameter:0} pixels wide at {inside[0].X:0},{inside[0].Y:0}, is {inside[0].LongAxis / inside[0].ShortAxis:0.0} times as long as wide or ragged, as dust is; clean the plate and scan it again."));
        }

        if (isCut)
        {
            return new RefusalException("The hole touches the border of the scan; scan it again with some of the plate on every side.");
        }

        return inside.Count > 0
            ? TooSmall(inside[0].Diameter)
            : new RefusalException("There is no hole in the scan: nothing stands out from the plate; scan it against the light or over black.");
    }

    private static IEnumerable<HoleCandidate> Candidates(ScanImage scan, BlockExtremes blocks, double part, bool towardsBright)
    {
        var extreme = towardsBright ? blocks.Brightest.Max() : blocks.Darkest.Min();
        if (Math.Abs(extreme - blocks.Median) < LeastContrast)
        {
            return [];
        }

        // What is beyond the threshold, and what lies enclosed on this side of it: a hole in a plate that is itself small on the scanner's lid.
        var threshold = (byte)Math.Round(blocks.Median + (part * (extreme - blocks.Median)));
        return Regions(scan, blocks, threshold, true).Concat(Regions(scan, blocks, threshold, false));
    }

    private static IEnumerable<HoleCandidate> Regions(ScanImage scan, BlockExtremes blocks, byte threshold, bool bright)
    {
        var flags = bright
            ? Array.ConvertAll(blocks.Brightest, code => code > threshold)
            : Array.ConvertAll(blocks.Darkest, code => code < threshold);

        // The plate, or what lies about it: no hole, and by far the most to look at.
        bool IsGround(ConnectedCells box) => box.Count > blocks.Columns * blocks.Rows / 3
            && (box.Left == 0 || box.Top == 0 || box.Right == blocks.Columns - 1 || box.Bottom == blocks.Rows - 1);
        return ConnectedCells.Of(flags, blocks.Columns, blocks.Rows)
            .Where(box => !IsGround(box))
            .OrderByDescending(box => box.Count)
            .Take(MostExamined)
            .Select(box => RegionShape.Of(scan, box.Scaled(blocks.Side), threshold, bright))
            .OfType<HoleCandidate>();
    }
}
