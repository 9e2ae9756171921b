using Foramen.Engine.Paper;
using static Foramen.Engine.Tests.Paper.PaperExamples;

namespace Foramen.Engine.Tests.Paper.PublishedValues;

/// <summary>
/// Pre-exposure adds exposure: A. Adams, The Negative (1981), pre-exposure section (from memory). Gains worked by hand from that law and the
/// criterion of 0.04 above the flashed base; the closed form for the toe is (1 + φ^n)^(1/n) − φ.
/// </summary>
[Source("adams-1981", "pre-exposure", Basis.Worked)]
public class FlashTests
{
    [Theory]
    [InlineData(0.25, 0.386)]
    [InlineData(0.50, 0.792)]
    [InlineData(0.80, 1.256)]
    [InlineData(1.00, 1.532)]
    public void Visible_gain_on_a_negative(double fraction, double stops)
        => Assert.Equal(stops, FlashEffect.Of(Negative, fraction).VisibleGain.Value, 0.0011);

    [Theory]
    [InlineData(0.50, 0.889)]
    [InlineData(0.80, 1.514)]
    [InlineData(1.00, 1.915)]
    public void Visible_gain_on_a_positive(double fraction, double stops)
        => Assert.Equal(stops, FlashEffect.Of(Positive, fraction).VisibleGain.Value, 0.0011);

    [Theory]
    [InlineData(0.50, 0.068)]
    [InlineData(0.80, 0.084)]
    [InlineData(1.00, 0.100)]
    public void A_flash_tints_a_negative(double fraction, double density)
        => Assert.Equal(density, FlashEffect.Of(Negative, fraction).BaseDensity.Value, 0.0006);

    [Theory]
    [InlineData(0.50, 1.975)]
    [InlineData(0.80, 1.959)]
    [InlineData(1.00, 1.940)]
    public void A_flash_costs_a_positive_its_black(double fraction, double density)
        => Assert.Equal(density, FlashEffect.Of(Positive, fraction).BaseDensity.Value, 0.0011);

    [Theory]
    [InlineData(0, 4.77)]
    [InlineData(0.5, 5.16)]
    [InlineData(0.8, 5.39)]
    [InlineData(1.0, 5.53)]
    public void Textured_range_grows_by_less_than_the_threshold_formula_says(double fraction, double stops)
        => Assert.Equal(stops, FlashEffect.TexturedRange(Negative, fraction).Value, 0.02);

    // The pre-exposure table in units that double from zone to zone: 4 units of flash lift 1, 2, 4, 8 and 128 units by these stops.
    [Theory]
    [InlineData(1, 2.32)]
    [InlineData(2, 1.585)]
    [InlineData(4, 1.000)]
    [InlineData(8, 0.585)]
    [InlineData(128, 0.044)]
    [Source("adams-1981", "pre-exposure", Basis.Memory)]
    public void Exposures_add(double units, double stops)
        => Assert.Equal(stops, Math.Log2((H(units) + H(4)).LuxSeconds / units), 0.0021);
}
