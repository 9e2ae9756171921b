using CsCheck;
using Foramen.Engine.Print;
using Foramen.Engine.Quantities;
using MathNet.Numerics.LinearRegression;

namespace Foramen.Engine.Tests.Print.Scan;

public class ReflectanceScaleTests
{
    [Fact]
    public void Flare_and_gain_come_out_of_patches_that_have_them() => Gen.Select(Gen.Double[0, 0.1], Gen.Double[0.3, 1], Gen.Double[0.05, 2].Array[2, 6], Gen.Double[0, 1.9]).Sample((flare, gain, densities, sought) =>
    {
        double Light(double density) => flare + (gain * Math.Pow(10, -density));
        var scale = ReflectanceScale.Through([(Light(0), Density.FromValue(0)), .. densities.Select(one => (Light(one), Density.FromValue(one)))]);
        Assert.Equal(densities.Distinct().Count() + 1, scale.Densities);
        Assert.Equal(sought, scale.DensityOf(Light(sought)).Value, 1e-6);
        Assert.Equal(Math.Pow(10, -sought), scale.ReflectanceOf(Light(sought)), 1e-6);
    });

    // Each patch in proportion to itself, by MathNet's weighted regression of light on reflectance.
    [Fact]
    public void Patches_that_do_not_agree_are_met_by_least_squares_of_their_parts() => Gen.Double[-0.1, 0.1].Array[4].Sample(off =>
    {
        double[] densities = [0.05, 0.4, 0.9, 1.5];
        double[] lights = [.. densities.Select((one, i) => (0.02 + (0.8 * Math.Pow(10, -one))) * (1 + off[i]))];
        double[][] rows = [.. densities.Select(one => new[] { 1, Math.Pow(10, -one) })];
        var line = WeightedRegression.Weighted(rows, lights, [.. lights.Select(one => 1 / (one * one))]);
        var scale = ReflectanceScale.Through([.. densities.Select((one, i) => (lights[i], Density.FromValue(one)))]);
        Assert.Equal((0.3 - line[0]) / line[1], scale.ReflectanceOf(0.3), 1e-6);
        Assert.Equal((0.05 - line[0]) / line[1], scale.ReflectanceOf(0.05), 1e-6);
    });

    // Nearly black patches would otherwise weigh beyond all measure: light below 0.005 counts as that.
    [Fact]
    public void A_patch_without_light_weighs_no_more_than_one_of_half_a_hundredth()
    {
        double[] densities = [0, 1, 3];
        double[] lights = [0.8, 0.1, 0.0];
        var line = WeightedRegression.Weighted([.. densities.Select(one => new[] { 1, Math.Pow(10, -one) })], lights, [.. lights.Select(one => Math.Pow(Math.Max(one, 0.005), -2))]);
        var scale = ReflectanceScale.Through([.. densities.Select((one, i) => (lights[i], Density.FromValue(one)))]);
        Assert.Equal((0.3 - line[0]) / line[1], scale.ReflectanceOf(0.3), 1e-9);
    }

    [Fact]
    public void A_single_patch_gives_the_gain_alone() => Gen.Select(Gen.Double[0.05, 1], Gen.Double[0, 1], Gen.Double[0, 0.9]).Sample((light, density, darker) =>
    {
        var scale = ReflectanceScale.Through([(light, Density.FromValue(density))]);
        Assert.Equal(1, scale.Densities);
        Assert.Equal(density + darker, scale.DensityOf(light * Math.Pow(10, -darker)).Value, 1e-9);
    });

    // White named in two places is one density known twice: no slope can be drawn through it, so it is read as a single patch is.
    [Fact]
    public void Patches_of_one_density_give_the_gain_alone() => Gen.Select(Gen.Double[0.3, 1], Gen.Double[0, 1], Gen.Int[2, 5], Gen.Double[0, 0.02]).Sample((light, density, count, off) =>
    {
        var scale = ReflectanceScale.Through([.. Enumerable.Range(0, count).Select(i => (light * (i % 2 == 0 ? 1 - off : 1 + off), Density.FromValue(density)))]);
        Assert.Equal(1, scale.Densities);
        Assert.Equal(density + 0.5, scale.DensityOf(light * Math.Pow(10, -0.5)).Value, 0.012);
    });

    [Fact]
    public void Light_at_or_below_the_flare_is_the_largest_density_and_light_above_white_none()
    {
        var scale = ReflectanceScale.Through([(0.85, Density.FromValue(0)), (0.05 + 0.008, Density.FromValue(2))]);
        Assert.Equal(4, scale.DensityOf(0.05).Value, 1e-6);
        Assert.Equal(4, scale.DensityOf(0).Value);
        Assert.Equal(0, scale.DensityOf(0.99).Value);
        Assert.True(scale.ReflectanceOf(0) < 0);
        Assert.True(scale.ReflectanceOf(0.99) > 1);
    }

    [Theory]
    [InlineData(0.2, 0.8)]
    [InlineData(0.5, 0.5)]
    [InlineData(0.5, 0.485)]
    [InlineData(0.9, 0.0)]
    public void Patches_whose_light_does_not_follow_their_densities_are_refused(double light, double dark)
        => Assert.Contains(
            "darker",
            Assert.Throws<RefusalException>(() => ReflectanceScale.Through([(light, Density.FromValue(0.1)), (dark, Density.FromValue(0.4))])).Message,
            StringComparison.Ordinal);

    [Theory]
    [InlineData(0)]
    [InlineData(101)]
    public void None_or_too_many_are_refused(int count)
        => Assert.Throws<RefusalException>(() => ReflectanceScale.Through([.. Enumerable.Range(0, count).Select(i => (1 - (i / 200.0), Density.FromValue(i / 100.0)))]));
}
