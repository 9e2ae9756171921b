using Foramen.Engine.Quantities;

namespace Foramen.Engine.Camera;

/// <summary>
/// The spot that a point of the subject leaves on the paper: Fresnel diffraction of the round hole, summed over the wavelengths the paper
/// sees, each with unit volume. Immutable.
/// </summary>
/// <remarks>
/// Limits: scalar theory, a thin perfectly round hole, and the spot of the axis used for the whole sheet (towards the corners a real one grows
/// longer, by about 1/cos θ). Beyond a hundred and fifty Fresnel zones the geometrical shadow is used: an even disc, whose fringes are then narrower than an
/// eighth of its radius.
/// </remarks>
public sealed class PointSpread
{
    private const double LargestFresnelNumber = 150;
    private const double TailOfV = 60;

    private readonly double step;
    private readonly double[] intensity;
    private readonly double[] energy;
    private readonly PointSpreadContrast contrast;

    private PointSpread(Length diameter, Length distance, double step, double[] intensity, double[] energy, PointSpreadContrast contrast)
    {
        Diameter = diameter;
        Distance = distance;
        this.step = step;
        this.intensity = intensity;
        this.energy = energy;
        this.contrast = contrast;
    }

    /// <summary>Diameter of the hole.</summary>
    public Length Diameter { get; }

    /// <summary>From the hole to the paper.</summary>
    public Length Distance { get; }

    /// <summary>Radius to which the spot was computed; beyond it energy is extrapolated as the edge wave's, which falls as 1/r.</summary>
    public Length ComputedRadius => Length.FromMillimetres(step * (intensity.Length - 1));

    /// <summary>The spot of a camera on its axis.</summary>
    /// <param name="camera">The camera.</param>
    /// <param name="light">The wavelengths that make the picture.</param>
    /// <param name="subjectDistance">From the hole to the subject; far away where missing.</param>
    public static PointSpread Of(PinholeCamera camera, PaperLight light, Length? subjectDistance = null)
        => Of(camera.Hole.Diameter, camera.FocalDistance, light, subjectDistance);

    /// <summary>The spot of a hole.</summary>
    /// <param name="diameter">0.01 to 100 mm.</param>
    /// <param name="distance">From the hole to the paper: 1 mm to 100 m, and at least as long as the hole is wide.</param>
    /// <param name="light">The wavelengths that make the picture.</param>
    /// <param name="subjectDistance">From the hole to the subject, at least the hole's diameter; far away where missing.</param>
    /// <exception cref="RefusalException">Outside the ranges.</exception>
    public static PointSpread Of(Length diameter, Length distance, PaperLight light, Length? subjectDistance = null)
    {
        var hole = HoleWaves.Of(diameter, distance, subjectDistance);
        var contrast = new PointSpreadContrast(hole, light);
        if (hole.FresnelNumber(light.MeanNanometres) > LargestFresnelNumber)
        {
            var (discStep, disc, held) = Shadow(hole.ShadowRadiusMillimetres);
            return new PointSpread(diameter, distance, discStep, disc, held, contrast);
        }

        var lines = light.Lines;
        var largestU = hole.U(lines[0].Nanometres);

        // The shadow's rim lies at v = u; the grid goes on from there until little is left.
        var integral = new FresnelIntegral(largestU, largestU + TailOfV);
        var step = FresnelIntegral.Step / hole.VPerMillimetre(lines[0].Nanometres);
        var intensity = new double[integral.Count];
        var energy = new double[integral.Count];
        foreach (var (nanometres, part) in lines)
        {
            var perMillimetre = hole.VPerMillimetre(nanometres);
            var one = integral.Intensity(hole.U(nanometres));
            var within = FresnelIntegral.EnergyWithin(one);
            var scale = step * perMillimetre / FresnelIntegral.Step;
            var density = part * perMillimetre * perMillimetre / Math.PI;
            for (var j = 0; j < intensity.Length; j++)
            {
                intensity[j] += density * Cubic.At(one, j * scale);
                energy[j] += part * Cubic.At(within, j * scale);
            }
        }

        return new PointSpread(diameter, distance, step, intensity, energy, contrast);
    }

    /// <summary>Part of the spot's energy within a radius, 0 to 1.</summary>
    public double EnergyWithin(Length radius)
    {
        var place = radius.Millimetres / step;
        return place < energy.Length - 1
            ? Math.Clamp(Cubic.At(energy, place), 0, 1)
            : 1 - ((1 - energy[^1]) * (energy.Length - 1) / Math.Max(place, energy.Length - 1));
    }

    /// <summary>Diameter of the circle that holds a part of the energy.</summary>
    /// <param name="part">0.05 to 0.995.</param>
    /// <exception cref="RefusalException">Outside the range.</exception>
    public Length DiameterHolding(double part)
    {
        Guard.Within(part, 0.05, 0.995, "the part of the energy to hold");
        if (part >= energy[^1])
        {
            return Length.FromMillimetres(2 * step * (energy.Length - 1) * (1 - energy[^1]) / (1 - part));
        }

        var (low, high) = (0.0, step * (energy.Length - 1));
        while (high - low > 1e-7 * high)
        {
            var middle = (low + high) / 2;
            (low, high) = EnergyWithin(Length.FromMillimetres(middle)) < part ? (middle, high) : (low, middle);
        }

        return Length.FromMillimetres(low + high);
    }

    /// <summary>
    /// Contrast that an even pattern of lines keeps (the modulation transfer function); negative where dark and bright change places.
    /// </summary>
    /// <param name="linePairsPerMillimetre">On the paper, 0 to 10 000.</param>
    /// <exception cref="RefusalException">Outside the range.</exception>
    public double ContrastAt(double linePairsPerMillimetre) => contrast.At(linePairsPerMillimetre);

    /// <summary>Line pairs per millimetre up to which the contrast stays at or above a stated one.</summary>
    /// <param name="leastContrast">0.02 to 0.95.</param>
    /// <exception cref="RefusalException">Outside the range.</exception>
    public double LinePairsPerMillimetreAt(double leastContrast) => contrast.LinePairsPerMillimetreAt(leastContrast);

    /// <summary>Part of the spot's energy that falls on a square millimetre at a distance from its middle, 1/mm²; zero beyond the computed radius.</summary>
    internal double DensityAt(double radiusMillimetres)
    {
        var place = radiusMillimetres / step;
        return place > intensity.Length - 1 ? 0 : Math.Max(0, Cubic.At(intensity, place));
    }

    private static (double Step, double[] Intensity, double[] Energy) Shadow(double radius)
    {
        const int Samples = 1024;
        var step = radius / (Samples - 2);
        var intensity = new double[Samples];
        var energy = new double[Samples];
        for (var j = 0; j < Samples; j++)
        {
            var part = j / (double)(Samples - 2);
            intensity[j] = part < 1 ? 1 / (Math.PI * radius * radius) : part > 1 ? 0 : 0.5 / (Math.PI * radius * radius);
            energy[j] = Math.Min(1, part * part);
        }

        return (step, intensity, energy);
    }
}
