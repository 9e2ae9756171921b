using Foramen.Engine.Camera;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Print;

/// <summary>
/// How the light lies over a scan or a photograph, out of ground of one tone: a surface of the second degree through the ln of its light. Smooth falling off follows it; dust,
/// creases and what is not ground are left out by Tukey's weights. Immutable.
/// </summary>
/// <remarks>Limits: a hard shadow or a reflection on the print itself cannot be seen in the ground around it.</remarks>
public sealed class LightField
{
    private const int Terms = 6;
    private const int Steps = 8;

    // Half a code of a mid grey, where a scan has 256. Evenly lit ground holds only a few codes; with less than this all but the commonest would count as no ground.
    private const double LeastSpread = 0.004;

    private readonly double[] terms;
    private readonly double width;
    private readonly double height;

    private LightField(double[] terms, double width, double height, double spread)
        => (this.terms, this.width, this.height, Spread) = (terms, width, height, spread);

    /// <summary>How much the ground's ln differs from the surface, as a standard deviation that outliers do not move.</summary>
    public double Spread { get; }

    /// <summary>The light over the plain ground around a sheet.</summary>
    /// <param name="scan">The scan.</param>
    /// <param name="corners">The sheet on it.</param>
    /// <exception cref="RefusalException">Hardly any ground is to be seen, or it is nearly black.</exception>
    public static LightField Around(ScanImage scan, PrintCorners corners)
    {
        const int Cells = 72;
        var small = ReducedScan.Of(scan, Cells);
        var points = new List<(double X, double Y, double Ln)>();
        var outline = Widened(corners, 1.03);
        for (var row = 0; row < small.Height; row++)
        {
            for (var column = 0; column < small.Width; column++)
            {
                var (x, y) = ((column + 0.5) * small.Step, (row + 0.5) * small.Step);
                if (!Holds(outline, x, y))
                {
                    points.Add((x, y, small.LnAt(column, row)));
                }
            }
        }

        if (points.Count < 12 * Terms)
        {
            throw new RefusalException("Hardly any ground is to be seen around the print; leave a finger's breadth of plain ground on every side.");
        }

        var field = Fit(points, scan.Width, scan.Height);
        return field.LnInTheMiddle > Math.Log(0.01)
            ? field
            : throw new RefusalException("The ground around the print is nearly black, so it does not say how the light lies; use ground that is grey or white.");
    }

    /// <summary>Light of the ground at a place, as its ln.</summary>
    /// <param name="x">Pixels from the left.</param>
    /// <param name="y">Pixels from the top.</param>
    public double LnAt(double x, double y)
    {
        var (u, v) = ((2 * x / width) - 1, (2 * y / height) - 1);
        return terms[0] + (u * (terms[1] + (u * terms[3]) + (v * terms[4]))) + (v * (terms[2] + (v * terms[5])));
    }

    /// <summary>Light of the ground in the middle of the scan, as its ln.</summary>
    public double LnInTheMiddle => terms[0];

    internal static LightField Fit(IReadOnlyList<(double X, double Y, double Ln)> points, double width, double height)
    {
        // Begun at the middle tone, so that what is not ground cannot bend the first surface towards itself.
        double[] tones = [.. points.Select(point => point.Ln).Order()];
        var field = new LightField([tones[tones.Length / 2], 0, 0, 0, 0, 0], width, height, 0);
        var weights = new double[points.Count];
        var off = new double[points.Count];
        for (var step = 0; step < Steps; step++)
        {
            field = step == 0 ? field : field.Solved(points, weights);
            for (var i = 0; i < off.Length; i++)
            {
                off[i] = Math.Abs(points[i].Ln - field.LnAt(points[i].X, points[i].Y));
            }

            // 1.4826: from a median of distances to a standard deviation, for normal errors; 4.685: Tukey's usual width.
            double[] sorted = [.. off.Order()];
            var spread = Math.Max(LeastSpread, 1.4826 * sorted[sorted.Length / 2]);
            for (var i = 0; i < off.Length; i++)
            {
                var part = off[i] / (4.685 * spread);
                weights[i] = part >= 1 ? 0 : (1 - (part * part)) * (1 - (part * part));
            }

            field = new LightField(field.terms, width, height, spread);
        }

        return field;
    }

    private static PixelPlace[] Widened(PrintCorners corners, double by)
    {
        PixelPoint[] all = [corners.TopLeft, corners.TopRight, corners.BottomRight, corners.BottomLeft];
        var (x, y) = (all.Average(one => one.X), all.Average(one => one.Y));
        return [.. all.Select(one => new PixelPlace(x + ((one.X - x) * by), y + ((one.Y - y) * by)))];
    }

    // On one side of all four edges.
    private static bool Holds(PixelPlace[] outline, double x, double y)
    {
        for (var i = 0; i < 4; i++)
        {
            var (a, b) = (outline[i], outline[(i + 1) % 4]);
            if (((b.X - a.X) * (y - a.Y)) - ((b.Y - a.Y) * (x - a.X)) < 0)
            {
                return false;
            }
        }

        return true;
    }

    private void Row(double x, double y, Span<double> row)
    {
        var (u, v) = ((2 * x / width) - 1, (2 * y / height) - 1);
        (row[0], row[1], row[2], row[3], row[4], row[5]) = (1, u, v, u * u, u * v, v * v);
    }

    private LightField Solved(IReadOnlyList<(double X, double Y, double Ln)> points, double[] weights)
    {
        var (matrix, right, row) = (new double[Terms, Terms], new double[Terms], new double[Terms]);
        for (var k = 0; k < points.Count; k++)
        {
            Row(points[k].X, points[k].Y, row);
            for (var i = 0; i < Terms; i++)
            {
                right[i] += weights[k] * row[i] * points[k].Ln;
                for (var j = 0; j <= i; j++)
                {
                    matrix[i, j] += weights[k] * row[i] * row[j];
                }
            }
        }

        var lower = SymmetricMatrix.Factor(matrix, 1e-12)
            ?? throw new RefusalException("The ground around the print shows too little of it to say how the light lies; leave plain ground on every side.");
        return new LightField(SymmetricMatrix.Solve(lower, right), width, height, Spread);
    }
}
