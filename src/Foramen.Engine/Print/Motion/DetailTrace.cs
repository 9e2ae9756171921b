namespace Foramen.Engine.Print;

/// <summary>Gathers how much densities differ along lines, standing and moved.</summary>
internal sealed class DetailTrace
{
    private double weights;
    private double still;
    private double moved;
    private double densities;

    /// <summary>One line, with its weight.</summary>
    public void Add(ReadOnlySpan<double> standing, ReadOnlySpan<double> moving, double weight)
    {
        var (_, before) = Moments(standing);
        var (mean, after) = Moments(moving);
        if (double.IsNaN(before + after))
        {
            return;
        }

        weights += weight;
        still += weight * before;
        moved += weight * after;
        densities += weight * mean;
    }

    /// <summary>Of all lines.</summary>
    public RegionTrace Result() => weights <= 0
        ? RegionTrace.Of(0, 0, 0)
        : RegionTrace.Of(2 * Math.Sqrt(still / weights), 2 * Math.Sqrt(moved / weights), densities / weights);

    private static (double Mean, double Variance) Moments(ReadOnlySpan<double> values)
    {
        var (sum, squares) = (0.0, 0.0);
        foreach (var value in values)
        {
            sum += value;
            squares += value * value;
        }

        var mean = sum / values.Length;
        return (mean, Math.Max(0, (squares / values.Length) - (mean * mean)));
    }
}
