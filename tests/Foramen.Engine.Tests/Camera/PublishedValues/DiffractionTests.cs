using Foramen.Engine.Camera;
using static Foramen.Engine.Tests.Camera.CameraExamples;

namespace Foramen.Engine.Tests.Camera.PublishedValues;

/// <summary>
/// Diffraction at a round opening. Airy's pattern and its energy: Born and Wolf, Principles of Optics, 8.5 (table 8.2); the axis behind an opening: any
/// textbook's zone construction; the transfer function of a round pupil: Goodman, Introduction to Fourier Optics, 6.3; Rayleigh: Phil. Mag. 31, 87 (1891).
/// </summary>
public class DiffractionTests
{
    private static readonly PaperLight Green = PaperLight.Monochromatic(500);

    // Far field: a thousandth of a zone. λz/d is 50 mm here.
    private static readonly PointSpread Far = PointSpread.Of(Mm(0.1), Mm(10_000), Green);

    // Dark rings at 1.220, 2.233 and 3.238 λz/d; the energy within them 83.8, 91.0 and 93.8 %.
    [Theory]
    [InlineData(1.220, 0.838)]
    [InlineData(2.233, 0.910)]
    [InlineData(3.238, 0.938)]
    [Source("born-wolf", "8.5, table 8.2")]
    public void Airys_dark_rings(double ring, double energy)
    {
        double Density(double r) => Far.DensityAt(50 * r);
        var (darkest, least) = (0.0, double.MaxValue);
        for (var r = ring - 0.05; r < ring + 0.05; r += 0.0005)
        {
            if (Density(r) < least)
            {
                (darkest, least) = (r, Density(r));
            }
        }

        Assert.Equal(ring, darkest, 0.002);
        Assert.True(least < 1e-4 * Density(0));
        Assert.Equal(energy, Far.EnergyWithin(Mm(50 * ring)), 0.0006);
    }

    // Bright rings: 1.75 % of the middle at 1.635, 0.42 % at 2.679.
    [Theory]
    [InlineData(1.635, 0.0175)]
    [InlineData(2.679, 0.0042)]
    [Source("born-wolf", "8.5, table 8.2")]
    public void Airys_bright_rings(double ring, double part)
        => Assert.Equal(part, Far.DensityAt(50 * ring) / Far.DensityAt(0), 0.00005);

    // I/I₀ = 4 sin²(πN_F/2) on the axis: 2 for half a zone, 4 for one, 0 for two, 4 for three.
    [Theory]
    [InlineData(0.5, 2)]
    [InlineData(1, 4)]
    [InlineData(1.5, 2)]
    [InlineData(2, 0)]
    [InlineData(3, 4)]
    [Source("born-wolf", "zone construction", Basis.Worked)]
    public void The_axis_behind_a_hole(double zones, double brightness)
    {
        // a² = N_F·λ·z with λ 500 nm and z 100 mm.
        var radius = Math.Sqrt(zones * 500e-6 * 100);
        var spread = PointSpread.Of(Mm(2 * radius), Mm(100), Green);
        Assert.Equal(brightness, spread.DensityAt(0) * Math.PI * radius * radius, 1e-5);
    }

    // The same for a subject as near as the paper: 1/z + 1/s doubles the zones, and the free wave has spread to four times the area.
    [Theory]
    [InlineData(0.5, 4)]
    [InlineData(1, 0)]
    [Source("born-wolf", "zone construction", Basis.Worked)]
    public void The_axis_with_a_near_subject(double zonesWithoutIt, double brightness)
    {
        var radius = Math.Sqrt(zonesWithoutIt * 500e-6 * 100);
        var spread = PointSpread.Of(Mm(2 * radius), Mm(100), Green, Mm(100));
        Assert.Equal(brightness, spread.DensityAt(0) * Math.PI * radius * radius * 4, 1e-5);
    }

    // Far field: 1, 0.6850, 0.3910, 0.1443, 0 at 0, ¼, ½, ¾ and 1 of the cut-off d/(λz).
    [Theory]
    [InlineData(0, 1)]
    [InlineData(0.25, 0.6850)]
    [InlineData(0.5, 0.3910)]
    [InlineData(0.75, 0.1443)]
    [InlineData(1, 0)]
    [Source("goodman", "6.3")]
    public void Contrast_in_the_far_field(double partOfCutOff, double contrast)
        => Assert.Equal(contrast, Far.ContrastAt(partOfCutOff * 0.1 / (500e-6 * 10_000)), 0.0002);

    // Rayleigh found 1.9 by looking at fine gratings. The best is flat, so a computed factor within a tenth of his is agreement.
    [Fact]
    [Source("rayleigh-1891")]
    public void Rayleighs_optimum()
    {
        var rayleigh = BestDiameter.Classical(BestDiameter.RayleighFactor, Mm(100), 550);
        Assert.Equal(0.4456, rayleigh.Millimetres, 0.00005); // 1.9·√(0.00055·100)
        var light = PaperLight.Monochromatic(550);
        Assert.Equal(1, BestDiameter.Compute(Mm(100), light, SharpnessCriterion.Usual).Millimetres / rayleigh.Millimetres, 0.1);
        Assert.Equal(1, BestDiameter.Compute(Mm(100), light, SharpnessCriterion.SmallestSpot(0.8)).Millimetres / rayleigh.Millimetres, 0.1);
    }
}
