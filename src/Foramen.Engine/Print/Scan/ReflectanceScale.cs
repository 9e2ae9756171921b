using Foramen.Engine.Quantities;

namespace Foramen.Engine.Print;

/// <summary>
/// From light on a scan to reflectance: light = a + b·R, with a the flare that lies over everything. Patches of known density give both, by least squares of their
/// light (each in proportion to itself); a single one, or several of one density, give b, with a taken as nothing, and then deep blacks read too light.
/// </summary>
public sealed class ReflectanceScale
{
    private readonly double flare;
    private readonly double gain;

    private ReflectanceScale(double flare, double gain, int densities) => (this.flare, this.gain, Densities) = (flare, gain, densities);

    /// <summary>How many known densities it stands on; patches of the same density count as one.</summary>
    public int Densities { get; }

    /// <summary>The scale through patches of known density.</summary>
    /// <exception cref="RefusalException">None, or their light does not follow their densities.</exception>
    public static ReflectanceScale Through(IReadOnlyList<(double Light, Density Density)> known)
    {
        Guard.Within(known.Count, 1, 100, "the number of known patches");
        var densities = known.Select(one => one.Density).Distinct().Count();
        if (densities == 1)
        {
            return new ReflectanceScale(0, known.Average(one => one.Light) / Math.Pow(10, -known[0].Density.Value), 1);
        }

        // Weighted normal equations of two unknowns.
        double w = 0, wr = 0, wrr = 0, wv = 0, wrv = 0;
        foreach (var (light, density) in known)
        {
            var (r, weight) = (Math.Pow(10, -density.Value), 1 / Math.Pow(Math.Max(0.005, light), 2));
            (w, wr, wrr, wv, wrv) = (w + weight, wr + (weight * r), wrr + (weight * r * r), wv + (weight * light), wrv + (weight * r * light));
        }

        var determinant = (w * wrr) - (wr * wr);
        var gain = determinant > 0 ? ((w * wrv) - (wr * wv)) / determinant : 0;
        var flare = (wv - (gain * wr)) / w;
        return gain > 0.05 && flare > -0.05
            ? new ReflectanceScale(flare, gain, densities)
            : throw new RefusalException("The known patches do not get darker with their density, so they are not where they were said to be, or the scan was corrected by its software.");
    }

    /// <summary>The density of light on the scan; the largest that can be told where the light is at or below the flare.</summary>
    public Density DensityOf(double light)
        => Density.FromValue(Math.Clamp(-Math.Log10(Math.Max(1e-4, ReflectanceOf(light))), 0, 4));

    /// <summary>The reflectance of light on the scan; below zero or above one where noise or flare is larger than it.</summary>
    internal double ReflectanceOf(double light) => (light - flare) / gain;
}
