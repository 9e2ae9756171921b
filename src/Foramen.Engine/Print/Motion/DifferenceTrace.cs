namespace Foramen.Engine.Print;

/// <summary>Gathers how much densities differ from those of a background, standing and moved.</summary>
internal sealed class DifferenceTrace(Func<double, double> density)
{
    private double still;
    private double moved;
    private double densities;
    private int count;

    /// <summary>One place: the lights of its background alone, with the thing standing there, and with it moving.</summary>
    public void Add(double background, double standing, double moving)
    {
        if (double.IsNaN(background + standing + moving))
        {
            return;
        }

        var (bare, with) = (density(background), density(moving));
        still += Math.Abs(density(standing) - bare);
        moved += Math.Abs(with - bare);
        densities += with;
        count++;
    }

    /// <summary>Of all places.</summary>
    public RegionTrace Result() => count == 0 ? RegionTrace.Of(0, 0, 0) : RegionTrace.Of(still / count, moved / count, densities / count);
}
