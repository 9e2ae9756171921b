using CsCheck;
using Foramen.Engine.Camera;
using Foramen.Engine.Light;
using Foramen.Engine.Quantities;
using static Foramen.Engine.Tests.Camera.CameraExamples;

namespace Foramen.Engine.Tests.Camera;

/// <summary>Laws of scale and of mixture that any spot by Fresnel's approximation obeys.</summary>
public sealed class PointSpreadLawsTests
{
    private static readonly PaperLight Noon = PaperLight.Of(LightColour.Noon.ToSpectrum(), PaperSensitivity.BlueSensitive);

    private static readonly Gen<(double Hole, double Distance, double Nanometres, double? Subject)> AnySetting = Gen.Select(
        Gen.Double[0.2, 1], Gen.Double[30, 200], Gen.Double[400, 600], Gen.Double[50, 3000], Gen.Bool)
        .Select((hole, distance, nanometres, subject, isNear) => (hole, distance, nanometres, isNear ? subject : (double?)null));

    private static PointSpread Spot(double hole, double distance, double nanometres, double? subject)
        => PointSpread.Of(Mm(hole), Mm(distance), PaperLight.Monochromatic(nanometres), subject is { } s ? Mm(s) : null);

    // Holes twice as wide at four times the distances have as many zones: the same picture, twice as large.
    [Fact]
    public void Scaled_zone_for_zone_the_spot_is_the_same() => Gen.Select(AnySetting, Gen.Double[0.2, 0.9], Gen.Double[0.5, 2]).Sample((setting, part, times) =>
    {
        var one = Spot(setting.Hole, setting.Distance, setting.Nanometres, setting.Subject);
        var other = Spot(times * setting.Hole, times * times * setting.Distance, setting.Nanometres, times * times * setting.Subject);
        Assert.Equal(times, other.DiameterHolding(part).Millimetres / one.DiameterHolding(part).Millimetres, 1e-4);
        Assert.Equal(times, other.ComputedRadius.Millimetres / one.ComputedRadius.Millimetres, 1e-2 * times);
        Assert.Equal(times * times, one.DensityAt(0) / other.DensityAt(0), 1e-4);
        Assert.Equal(one.ContrastAt(2), other.ContrastAt(2 / times), 1e-6);
        Assert.Equal(times, one.LinePairsPerMillimetreAt(0.3) / other.LinePairsPerMillimetreAt(0.3), 1e-4);
    }, iter: Samples.Of(15));

    // What colours do adds up, each by its part of the picture.
    [Fact]
    public void A_mixture_is_the_mean_of_its_colours()
    {
        var (density, energy, contrast, parts) = (0.0, 0.0, 0.0, 0.0);
        foreach (var (nanometres, part) in Noon.Lines)
        {
            var one = Spot(0.35, 63, nanometres, null);
            density += part * one.DensityAt(0.11);
            energy += part * one.EnergyWithin(Mm(0.11));
            contrast += part * one.ContrastAt(2.5);
            parts += part;
        }

        var all = PointSpread.Of(Mm(0.35), Mm(63), Noon);
        Assert.Equal(1, parts, 1e-4);
        Assert.Equal(density, all.DensityAt(0.11), 1e-4 * density);
        Assert.Equal(energy, all.EnergyWithin(Mm(0.11)), 1e-5);
        Assert.Equal(contrast, all.ContrastAt(2.5), 1e-9);
    }

    // Hopkins' overlap by another road: the opening's phase front on a grid, times itself shifted by σ, summed over the part both have in common.
    [Theory]
    [InlineData(0.3, 1)]
    [InlineData(0.3, 3)]
    [InlineData(0.6, 1.5)]
    [InlineData(0.6, 4)]
    public void Contrast_is_the_overlap_of_the_opening_with_itself(double hole, double linePairs)
    {
        const int Cells = 800;
        var (radius, distance, wave) = (hole / 2, 63.0, 500e-6);
        var shift = wave * distance * linePairs;
        double Front(double x, double y) => Math.PI * ((x * x) + (y * y)) / (wave * distance);
        var (overlap, area) = (0.0, 0.0);
        for (var i = 0; i < Cells * Cells; i++)
        {
            var (x, y) = (((((i % Cells) + 0.5) / Cells) - 0.5) * hole, ((((i / Cells) + 0.5) / Cells) - 0.5) * hole);
            area += double.Hypot(x, y) < radius ? 1 : 0;
            overlap += double.Hypot(x, y) < radius && double.Hypot(x + shift, y) < radius ? Math.Cos(Front(x + shift, y) - Front(x, y)) : 0;
        }

        Assert.Equal(overlap / area, Spot(hole, distance, 500, null).ContrastAt(linePairs), 0.002);
    }

    // All light at rest: at no lines at all nothing is lost, beyond d/(λz) nothing is left.
    [Fact]
    public void Contrast_goes_from_one_to_none() => AnySetting.Sample(setting =>
    {
        var spot = Spot(setting.Hole, setting.Distance, setting.Nanometres, setting.Subject);
        var cutOff = setting.Hole / (setting.Nanometres * 1e-6 * setting.Distance);
        Assert.Equal(1, spot.ContrastAt(0), 1e-9);
        Assert.Equal(0, spot.ContrastAt(1.0001 * cutOff));
        Assert.NotEqual(0, spot.ContrastAt(0.97 * cutOff));

        // It is the first frequency: up to it no contrast is less.
        var finest = spot.LinePairsPerMillimetreAt(0.2);
        for (var share = 0.01; share < 1; share += 0.01)
        {
            Assert.True(spot.ContrastAt(share * finest) >= 0.2 - 1e-6);
        }
    }, iter: Samples.Of(15));

    // The far rings: of a round hole's light 1 − energy within r falls as 1/r (Born and Wolf 8.5 by the asymptotes of J0 and J1), so the diameter that holds all but a
    // thousandth is twice as wide as that of all but two.
    [Fact]
    public void Beyond_what_is_computed_light_falls_off_as_the_edge_wave()
    {
        var spot = Spot(0.2, 200, 500, null);
        var edge = spot.ComputedRadius.Millimetres;
        var missing = 1 - spot.EnergyWithin(Mm(edge));
        Assert.Equal(missing / 2, 1 - spot.EnergyWithin(Mm(2 * edge)), 1e-9);
        Assert.Equal(missing / 10, 1 - spot.EnergyWithin(Mm(10 * edge)), 1e-9);
        Assert.Equal(missing, 1 - spot.EnergyWithin(Mm(0.999 * edge)), 0.02 * missing);
        Assert.Equal(2 * 1.5 * edge, spot.DiameterHolding(1 - (missing / 1.5)).Millimetres, 1e-6 * edge);
        Assert.Equal(0, spot.DensityAt(1.001 * edge));
        Assert.True(spot.DensityAt(0.99 * edge) > 0);
    }

    // A hole of 6 mm at 63 mm has 300 zones; its shadow is even, 1/(πR²), and ends at R.
    [Fact]
    public void A_shadow_is_an_even_disc()
    {
        var spot = Spot(6, 63, 475, null);
        Assert.Equal(1 / (9 * Math.PI), spot.DensityAt(0), 1e-9);
        Assert.Equal(1 / (9 * Math.PI), spot.DensityAt(2.98), 1e-9);
        Assert.Equal(0, spot.DensityAt(3.01));
        Assert.Equal(0.25, spot.EnergyWithin(Mm(1.5)), 1e-5);
        Assert.Equal(1, spot.EnergyWithin(Mm(3.2)), 1e-9);
        Assert.Equal(6 * Math.Sqrt(0.64), spot.DiameterHolding(0.64).Millimetres, 1e-3);
        Assert.Equal(12 * Math.Sqrt(0.64), Spot(6, 63, 475, 63).DiameterHolding(0.64).Millimetres, 1e-3);
    }

    // Half of it at the rim, where it goes from all to nothing, and nothing a thousandth farther out.
    [Fact]
    public void A_shadow_ends_at_its_rim()
    {
        var spot = Spot(6, 63, 475, null);
        Assert.Equal(0.5 / (9 * Math.PI), spot.DensityAt(3), 0.01 / (9 * Math.PI));
        Assert.Equal(0, spot.DensityAt(3.0029), 0.05 / (9 * Math.PI));
        Assert.Equal(0, spot.DensityAt(3.004));
    }

    // Rings of many colours leave no dark between them.
    [Fact]
    public void There_is_light_up_to_the_computed_radius_and_none_beyond()
    {
        var spot = PointSpread.Of(Mm(0.35), Mm(63), Noon);
        Assert.True(spot.DensityAt(0.9999 * spot.ComputedRadius.Millimetres) > 0);
        Assert.Equal(0, spot.DensityAt(1.0001 * spot.ComputedRadius.Millimetres));
    }

    [Fact]
    public void Light_of_one_colour_is_that_colour()
    {
        Assert.Equal(500, PaperLight.Monochromatic(500).MeanNanometres);
        Assert.Equal([(500.0, 1.0)], PaperLight.Monochromatic(500).Lines.ToArray());
    }

    // A box from 380 to 500 nm under an even light: its middle, 440 nm, and no line outside.
    [Fact]
    public void A_paper_sees_its_own_part_of_a_light()
    {
        var even = PaperLight.Of(Spectrum.FromFunction("even", _ => 3), PaperSensitivity.BlueSensitive);
        Assert.Equal(440, even.MeanNanometres, 5.0);
        Assert.Equal(1, even.Lines.ToArray().Sum(line => line.Part), 1e-9);
        Assert.InRange(even.Lines[0].Nanometres, 370, 390);
        Assert.InRange(even.Lines[^1].Nanometres, 490, 510);
        var red = Spectrum.FromFunction("red lamp", nanometres => nanometres > 600 ? 1 : 0);
        Assert.Equal(
            "The blue-sensitive paper sees nothing of the light \"red lamp\".",
            Assert.Throws<RefusalException>(() => PaperLight.Of(red, PaperSensitivity.BlueSensitive)).Message);
    }

    // Rayleigh's d = c·√(λf) by hand: √(500e-6·80) = 0.2; with the subject as far as the paper f is half of it.
    [Fact]
    public void The_classical_rule()
    {
        Assert.Equal(0.2, BestDiameter.Classical(1, Mm(80), 500).Millimetres, 1e-12);
        Assert.Equal(0.2 / Math.Sqrt(2), BestDiameter.Classical(1, Mm(80), 500, Mm(80)).Millimetres, 1e-12);
        Assert.Equal(0.38, BestDiameter.Classical(1.9, Mm(80), 500).Millimetres, 1e-12);
    }

    // For a near subject the best hole is that of the shorter f, 1/f = 1/z + 1/s: 63 mm and 126 mm make 42 mm. Counted in lines on the paper, which are coarser by 63/42.
    [Fact]
    public void The_best_hole_for_a_near_subject_is_that_of_the_shorter_distance()
    {
        var light = PaperLight.Monochromatic(450);
        foreach (var criterion in new[] { SharpnessCriterion.Usual, SharpnessCriterion.SmallestSpot(0.7) })
        {
            Assert.Equal(1, BestDiameter.Compute(Mm(63), light, criterion, Mm(126)).Millimetres / BestDiameter.Compute(Mm(42), light, criterion).Millimetres, 0.004);
        }
    }

    [Fact]
    public void What_cannot_be_is_refused()
    {
        var spot = Spot(0.3, 63, 500, null);
        Action[] absurd =
        [
            () => spot.DiameterHolding(0.01), () => spot.DiameterHolding(0.999), () => spot.ContrastAt(-1), () => spot.ContrastAt(10_001),
            () => spot.LinePairsPerMillimetreAt(0.01), () => spot.LinePairsPerMillimetreAt(0.99),
            () => SharpnessCriterion.FinestLines(0.99), () => SharpnessCriterion.SmallestSpot(0.2), () => SharpnessCriterion.SmallestSpot(0.96),
            () => BestDiameter.Classical(11, Mm(63), 550), () => BestDiameter.Classical(1, Mm(63), 2100), () => BestDiameter.Classical(1, Mm(0.5), 550),
            () => BestDiameter.Classical(1, Mm(63), 550, Mm(0.5)), () => Spot(0.3, 0.9, 500, null), () => Spot(0.3, 63, 500, 0.2), () => Spot(2, 1.9, 500, null),
            () => HoleImageKernel.Of(spot, 0.1, 0.4), () => HoleImageKernel.WithHalfWidth(spot, 0.1, 65), () => HoleImageKernel.WithHalfWidth(spot, 101, 1),
        ];
        Assert.All(absurd, act => Assert.Throws<RefusalException>(act));
    }

    // Each weight of a kernel is the light on its pixel; by another road, many points thrown evenly over the pixel.
    [Theory]
    [InlineData(0.02, 0, 0)]
    [InlineData(0.1, 1, 0)]
    [InlineData(0.1, 2, 1)]
    [InlineData(0.3, 0, 0)]
    [InlineData(0.3, -1, 1)]
    [InlineData(1.5, 0, 0)]
    public void A_kernels_weight_is_the_light_on_its_pixel(double pitch, int x, int y)
    {
        var spot = Spot(0.35, 63, 450, null);
        var kernel = HoleImageKernel.WithHalfWidth(spot, pitch, 3);
        var sum = 0.0;
        const int Points = 200;
        for (var i = 0; i < Points * Points; i++)
        {
            sum += spot.DensityAt(pitch * double.Hypot(x - 0.5 + (((i % Points) + 0.5) / Points), y - 0.5 + (((i / Points) + 0.5) / Points)));
        }

        var expected = sum / (Points * Points) * pitch * pitch;
        Assert.Equal(expected, kernel.Weights[((y + 3) * 7) + x + 3] * kernel.HeldEnergy, (0.01 * expected) + 0.0005);
    }

    // Zero outside the circle that fits: of 3 × 3 the corners are 1.41 from the middle and the circle has a radius of 1.5; of 7 × 7 they are 4.2 and it has 3.5.
    [Fact]
    public void A_kernel_is_round()
    {
        var spot = Spot(6, 63, 450, null);
        Assert.True(HoleImageKernel.WithHalfWidth(spot, 0.5, 1).Weights[0] > 0);
        var kernel = HoleImageKernel.WithHalfWidth(spot, 0.5, 3);
        for (var i = 0; i < 49; i++)
        {
            Assert.Equal(double.Hypot((i % 7) - 3, (i / 7) - 3) <= 3.5, kernel.Weights[i] > 0);
        }

        // A single weight holds what falls within half a pixel of the middle: (0.5/6)² of an even disc of 3 mm.
        var one = HoleImageKernel.WithHalfWidth(spot, 0.5, 0);
        Assert.Equal((1, 1f), (one.Size, one.Weights[0]));
        Assert.Equal(1 / 144.0, one.HeldEnergy, 1e-5);
    }
}
