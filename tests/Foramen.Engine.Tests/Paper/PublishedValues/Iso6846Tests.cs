using Foramen.Engine.Paper;
using static Foramen.Engine.Tests.Paper.PaperExamples;

namespace Foramen.Engine.Tests.Paper.PublishedValues;

/// <summary>
/// ISO 6846:1992, definitions of Ht, Hm, Hs, P and R (criteria as restated by R. W. Lambrecht, "From Exposure to Print", Focal Encyclopedia of
/// Photography, 4th ed., 2007, p. 679), applied by hand to logistic curves with round parameters. Tolerance: half the last digit printed.
/// </summary>
[Source("iso-6846", "definitions", Basis.Worked)]
[Source("lambrecht-2007", "criteria")]
public class Iso6846Tests
{
    [Fact]
    public void Points_lie_where_the_standard_puts_them_on_a_known_curve()
    {
        var measures = IsoPaperMeasures.Of(Negative);
        Assert.Equal(0.5637, measures.LightestTone.LuxSeconds, 0.00006);
        Assert.Equal(2.000, measures.SpeedPoint.LuxSeconds, 0.0005);
        Assert.Equal(7.096, measures.DarkestTone.LuxSeconds, 0.0006);
        Assert.Equal(500, measures.Speed!.Value, 0.2);
        Assert.Equal(110.0, measures.Range, 0.05);
        Assert.Equal(3.654, measures.RangeInStops.Value, 0.0006);
    }

    [Theory]
    [InlineData(60, 10.148, 5.074)]
    [InlineData(90, 6.766, 3.383)]
    [InlineData(110, 5.535, 2.768)]
    [InlineData(150, 4.059, 2.030)]
    public void Range_fixes_the_steepness_for_a_net_density_of_two(double range, double steepness, double maximumSlope)
    {
        var curve = LogisticCurve.FromRange(PaperKind.NegativeWorking, D(0.06), D(2.06), range, D(0.66), H(2));
        Assert.Equal(steepness, curve.Steepness, 0.0011);
        Assert.Equal(maximumSlope, curve.SlopeAtLg(curve.MidLgExposure), 0.0006);
    }

    [Theory]
    [InlineData(0.5, 167.5, 2.131)]
    [InlineData(1.0, 110.0, 2.768)]
    [InlineData(2.0, 85.3, 3.280)]
    public void Unequal_toe_and_shoulder_change_range_and_slope(double asymmetry, double range, double maximumSlope)
    {
        var curve = LogisticCurve.Create(PaperKind.NegativeWorking, D(0.06), D(2.06), 5.5356, 0, asymmetry);
        Assert.Equal(range, IsoPaperMeasures.Of(curve).Range, 0.06);
        Assert.Equal(maximumSlope, curve.SlopeAtLg(Math.Log(asymmetry) / 5.5356), 0.0006);
    }

    [Theory]
    [InlineData(0.2, 0.063)]
    [InlineData(0.5, 0.090)]
    [InlineData(1, 0.210)]
    [InlineData(2, 0.660)]
    [InlineData(4, 1.448)]
    [InlineData(8, 1.906)]
    [InlineData(16, 2.029)]
    public void Densities_of_the_known_negative_curve(double luxSeconds, double density)
        => Assert.Equal(density, Negative.DensityAt(H(luxSeconds)).Value, 0.0006);

    [Theory]
    [InlineData(0.00, 1.952)]
    [InlineData(0.30, 1.773)]
    [InlineData(0.60, 1.030)]
    [InlineData(0.90, 0.287)]
    [InlineData(1.20, 0.108)]
    public void Densities_of_the_known_positive_curve(double lgExposure, double density)
        => Assert.Equal(density, Positive.DensityAt(H(Math.Pow(10, lgExposure))).Value, 0.0006);

    [Fact]
    public void A_positive_has_the_mirrored_range_and_no_speed()
    {
        var measures = IsoPaperMeasures.Of(Positive);
        Assert.Equal(1.932, measures.DarkestTone.LuxSeconds, 0.0006);
        Assert.Equal(14.076, measures.LightestTone.LuxSeconds, 0.006);
        Assert.Equal(86.2, measures.Range, 0.06);
        Assert.Null(measures.Speed);
    }

    // Rounding to the one-third-stop series and to tens: from memory of the standard.
    [Theory]
    [InlineData(100, 100)]
    [InlineData(112, 100)]
    [InlineData(113, 125)]
    [InlineData(450.9, 500)]
    [InlineData(281, 250)]
    [InlineData(283, 320)]
    [Source("iso-6846", "rounding", Basis.Memory)]
    public void Speed_is_rounded_to_the_series(double speed, double rounded)
        => Assert.Equal(rounded, IsoPaperMeasures.RoundSpeed(speed), 1e-9);
}
