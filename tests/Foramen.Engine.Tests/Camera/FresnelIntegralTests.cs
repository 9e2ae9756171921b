using CsCheck;
using Foramen.Engine.Camera;

namespace Foramen.Engine.Tests.Camera;

public sealed class FresnelIntegralTests
{
    private const double End = 60;

    private static readonly FresnelIntegral Integral = new(40, 120);

    // J by its own integral (DLMF 10.9.2), (1/π)∫₀^π cos(nθ − x sin θ) dθ, which the trapezoid rule does to all digits once it has more steps than x.
    private static double J(int order, double x)
    {
        const int Parts = 400;
        var sum = 0.0;
        for (var i = 0; i < Parts; i++)
        {
            var angle = Math.PI * (i + 0.5) / Parts;
            sum += Math.Cos((order * angle) - (x * Math.Sin(angle)));
        }

        return sum / Parts;
    }

    // Between the places of the table, and on both sides of where the expansion for large arguments begins.
    [Fact]
    public void The_table_is_J0() => Gen.OneOf(Gen.Double[0, 250], Gen.Double[24, 27]).Sample(x => Assert.Equal(J(0, x), new BesselTable(x).At(x), 2e-7), iter: Samples.Of(60));

    // No path differences, u = 0: Airy's pattern (J1(v)/v)², and within it 1 − J0² − J1² of the light (Born and Wolf 8.5, equations 14 and 18).
    [Fact]
    public void Without_path_differences_it_is_Airys_pattern()
    {
        var intensity = Integral.Intensity(0);
        var energy = FresnelIntegral.EnergyWithin(intensity);
        Assert.Equal(0.25, intensity[0], 1e-9);
        for (var j = 1; j < End / FresnelIntegral.Step; j++)
        {
            var v = j * FresnelIntegral.Step;
            Assert.Equal(Math.Pow(J(1, v) / v, 2), intensity[j], 1e-7);
            Assert.Equal(1 - Math.Pow(J(0, v), 2) - Math.Pow(J(1, v), 2), energy[j], 2e-5);
        }
    }

    // On the axis (2 sin(u/4)/u)², and on the shadow's rim, v = u, (1 − 2J0(u)cos u + J0(u)²)/4u² (Born and Wolf 8.8, equations 25 and 29).
    [Fact]
    public void Axis_and_rim_are_known_in_closed_form()
    {
        for (var u = FresnelIntegral.Step; u <= 40; u += 13 * FresnelIntegral.Step)
        {
            var intensity = Integral.Intensity(u);
            Assert.Equal(Math.Pow(2 * Math.Sin(u / 4) / u, 2), intensity[0], 1e-9);
            var j = J(0, u);
            Assert.Equal((1 - (2 * j * Math.Cos(u)) + (j * j)) / (4 * u * u), intensity[(int)Math.Round(u / FresnelIntegral.Step)], 1e-7);
        }
    }

    // Parseval: all the light there is goes somewhere.
    [Fact]
    public void Far_out_nearly_all_light_is_within() => Gen.Double[0, 40].Sample(u =>
        Assert.InRange(FresnelIntegral.EnergyWithin(Integral.Intensity(u))[^1], 0.98, 1), iter: Samples.Of(20));

    // Density 2|U|²v of |U|² = 1 is v², to the last sample; of a smooth pattern the last step is no worse than the others.
    [Fact]
    public void Energy_is_the_integral_of_the_density()
    {
        var energy = FresnelIntegral.EnergyWithin([.. Enumerable.Repeat(1.0, 40)]);
        Assert.Equal(40, energy.Length);
        for (var j = 0; j < 39; j++)
        {
            Assert.Equal(Math.Pow(j * FresnelIntegral.Step, 2), energy[j], 1e-12);
        }

        Assert.Equal(Math.Pow(39 * FresnelIntegral.Step, 2), energy[39], 0.002);
    }

    [Fact]
    public void Beyond_its_grid_it_is_not_asked()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Integral.Intensity(40.1));
        Assert.Equal(961, Integral.Count); // 120 in steps of an eighth, and zero
    }

    // A cubic is itself: four samples fix it. About the first sample it is mirrored, so there only what is even is kept; at the last the slope goes on.
    [Fact]
    public void A_cubic_goes_through_cubics() => Gen.Select(Gen.Double[-2, 2].Array[4], Gen.Double[1, 8]).Sample((c, place) =>
    {
        double Value(double x) => c[0] + (x * (c[1] + (x * (c[2] + (x * c[3])))));
        var samples = Enumerable.Range(0, 10).Select(i => Value(i)).ToArray();
        Assert.Equal(Value(place), Cubic.At(samples, place), 1e-9);
    });

    [Fact]
    public void At_its_ends_it_is_mirrored_and_straight() => Gen.Select(Gen.Double[-2, 2], Gen.Double[-2, 2], Gen.Double[0, 1]).Sample((a, b, place) =>
    {
        Assert.Equal(a + (b * place * place), Cubic.At([.. Enumerable.Range(0, 6).Select(i => a + (b * i * i))], place), 1e-12);
        var line = Enumerable.Range(0, 6).Select(i => a + (b * i)).ToArray();
        Assert.Equal(a + (b * (4 + place)), Cubic.At(line, 4 + place), 1e-12);
        Assert.Equal(line[5], Cubic.At(line, 5), 1e-12);
    });

    // A hole of 1 mm, paper at 100 mm, 500 nm: N = 0.25/(500e-6·100) = 5 zones; as near a subject again makes ten, and a shadow twice as wide. v for a millimetre is
    // 2π·0.5/(500e-6·100) = 20π.
    [Fact]
    public void Zones_of_a_hole()
    {
        var (far, near) = (HoleWaves.Of(CameraExamples.Mm(1), CameraExamples.Mm(100), null), HoleWaves.Of(CameraExamples.Mm(1), CameraExamples.Mm(100), CameraExamples.Mm(100)));
        Assert.Equal(5, far.FresnelNumber(500), 1e-9);
        Assert.Equal(10, near.FresnelNumber(500), 1e-9);
        Assert.Equal(10 * Math.PI, far.U(500), 1e-9);
        Assert.Equal(20 * Math.PI, near.VPerMillimetre(500), 1e-9);
        Assert.Equal(0.5, far.ShadowRadiusMillimetres, 1e-12);
        Assert.Equal(1, near.ShadowRadiusMillimetres, 1e-12);
    }
}
