namespace Foramen.Engine.Print;

/// <summary>
/// A guess at what is behind something: the tones of its surroundings carried in from the four edges (S. A. Coons's bilinearly blended patch, 1967, of the ln of the
/// light, so that no light falls below none). It knows nothing of what is really there.
/// </summary>
internal sealed class EdgeFill
{
    private const double Beyond = 0.03;
    private const int Points = 128;

    // Part of an edge that is averaged, so that a single bright point does not draw a streak.
    private const int Smoothing = 4;

    private readonly double[] top;
    private readonly double[] bottom;
    private readonly double[] left;
    private readonly double[] right;

    private EdgeFill(double[] top, double[] bottom, double[] left, double[] right)
        => (this.top, this.bottom, this.left, this.right) = (top, bottom, left, right);

    /// <summary>From what the sheet sees around a region; null where it sees none of it.</summary>
    public static EdgeFill? Around(RegionOnSheet region)
    {
        var top = Edge(t => region.At(t, -Beyond));
        var bottom = Edge(t => region.At(t, 1 + Beyond));
        var left = Edge(t => region.At(-Beyond, t));
        var right = Edge(t => region.At(1 + Beyond, t));
        double[]?[] found = [top, bottom, left, right];
        if (Array.TrueForAll(found, edge => edge is null))
        {
            return null;
        }

        // An edge beside the sheet is taken to be like the one across from it, or else like the others' mean.
        var mean = found.OfType<double[]>().Average(edge => edge.Average());
        double[] Even() => [.. Enumerable.Repeat(mean, Points)];
        return new EdgeFill(top ?? bottom ?? Even(), bottom ?? top ?? Even(), left ?? right ?? Even(), right ?? left ?? Even());
    }

    /// <summary>The light at a place.</summary>
    public float At(double u, double v)
    {
        var (up, down, before, behind) = (Read(top, u), Read(bottom, u), Read(left, v), Read(right, v));
        double Corner(double[] row, double[] column, bool end, bool low) => (row[end ? ^1 : 0] + column[low ? ^1 : 0]) / 2;
        var corners = ((1 - u) * (1 - v) * Corner(top, left, false, false)) + (u * (1 - v) * Corner(top, right, true, false))
            + ((1 - u) * v * Corner(bottom, left, false, true)) + (u * v * Corner(bottom, right, true, true));
        return (float)Math.Exp(((1 - v) * up) + (v * down) + ((1 - u) * before) + (u * behind) - corners);
    }

    private static double Read(double[] edge, double at)
    {
        var place = Math.Clamp((at * Points) - 0.5, 0, Points - 1);
        var first = Math.Min((int)place, Points - 2);
        return edge[first] + ((place - first) * (edge[first + 1] - edge[first]));
    }

    private static double[]? Edge(Func<double, float> read)
    {
        var line = new float[Points];
        for (var i = 0; i < Points; i++)
        {
            line[i] = read((i + 0.5) / Points);
        }

        if (Array.TrueForAll(line, float.IsNaN))
        {
            return null;
        }

        KnownMean.Fill(line);
        var edge = new double[Points];
        for (var i = 0; i < Points; i++)
        {
            var sum = 0.0;
            for (var k = -Smoothing; k <= Smoothing; k++)
            {
                sum += Math.Log(Math.Max(1e-12, line[Math.Clamp(i + k, 0, Points - 1)]));
            }

            edge[i] = sum / ((2 * Smoothing) + 1);
        }

        return edge;
    }
}
