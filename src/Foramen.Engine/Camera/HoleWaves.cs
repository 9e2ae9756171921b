using Foramen.Engine.Quantities;

namespace Foramen.Engine.Camera;

/// <summary>A hole, its paper and its subject as diffraction sees them, on bare millimetres.</summary>
internal readonly struct HoleWaves
{
    private readonly double radius;
    private readonly double distance;

    // 1/z + 1/s, in 1/mm.
    private readonly double vergence;

    private HoleWaves(double radius, double distance, double vergence)
    {
        this.radius = radius;
        this.distance = distance;
        this.vergence = vergence;
    }

    /// <summary>Radius of the geometrical shadow: a·(1 + z/s).</summary>
    public double ShadowRadiusMillimetres => radius * distance * vergence;

    /// <summary>A hole, checked.</summary>
    public static HoleWaves Of(Length diameter, Length distance, Length? subjectDistance)
    {
        var d = Guard.Within(diameter.Millimetres, 0.01, 100, "the hole's diameter", "mm");
        var z = Guard.Within(distance.Millimetres, 1, 100_000, "the distance from the hole to the paper", "mm");
        Guard.Within(z / d, 1, 1e9, "the distance of the paper over the hole's diameter");
        if (subjectDistance is not { } subject)
        {
            return new HoleWaves(d / 2, z, 1 / z);
        }

        Guard.Within(subject.Millimetres, d, Length.Max * 1e3, "the distance of the subject", "mm");
        return new HoleWaves(d / 2, z, (1 / z) + (1 / subject.Millimetres));
    }

    /// <summary>u = k a² (1/z + 1/s); 2π times the Fresnel number.</summary>
    public double U(double nanometres) => WaveNumber(nanometres) * radius * radius * vergence;

    /// <summary>N_F = a² (1/z + 1/s)/λ.</summary>
    public double FresnelNumber(double nanometres) => U(nanometres) / (2 * Math.PI);

    /// <summary>v for each millimetre on the paper: k a/z.</summary>
    public double VPerMillimetre(double nanometres) => WaveNumber(nanometres) * radius / distance;

    /// <summary>2π/λ in 1/mm.</summary>
    private static double WaveNumber(double nanometres) => 2 * Math.PI / (nanometres * 1e-6);
}
