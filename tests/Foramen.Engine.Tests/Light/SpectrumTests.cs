using Foramen.Engine.Light;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Light;

public class SpectrumTests
{
    [Fact]
    public void The_grid_is_every_ten_nanometres_from_300_to_830()
    {
        var wavelengths = Spectrum.FromFunction("wavelength", nanometres => nanometres);
        Assert.Equal(54, wavelengths.Values.Length);
        Assert.Equal((300, 310, 830), (wavelengths.Values[0], wavelengths.Values[1], wavelengths.Values[^1]));
    }

    // 54 samples of 10 nm each.
    [Fact]
    public void The_integral_of_one_is_its_width() => Assert.Equal(540, Spectrum.FromFunction("one", _ => 1).Integral(), 1e-9);

    [Fact]
    public void A_light_through_a_sensitivity_is_their_product()
    {
        var product = Spectrum.Multiply(Spectrum.FromFunction("light", nanometres => nanometres), Spectrum.FromFunction("paper", nanometres => 2 * nanometres));
        Assert.Equal(2.0 * 450 * 450, product.Values[15], 1e-6);
        Assert.Equal("light × paper", product.Name);
    }

    [Theory]
    [InlineData(-1e-9)]
    [InlineData(1.1e12)]
    [InlineData(double.NaN)]
    public void What_no_light_has_is_refused(double value) => Assert.Throws<RefusalException>(() => Spectrum.FromFunction("odd", _ => value));

    // A sample stands for the 10 nm around it.
    [Theory]
    [InlineData(400, 410, new[] { 0, 0.5, 0.5, 0 })]
    [InlineData(395, 415, new[] { 0, 1.0, 1, 0 })]
    [InlineData(397, 408, new[] { 0, 0.8, 0.3, 0 })]
    public void A_paper_sees_the_share_of_a_sample_that_lies_in_its_box(double from, double to, double[] shares)
    {
        var values = PaperSensitivity.FromBox("box", from, to).Sensitivity.Values;
        for (var i = 0; i < shares.Length; i++)
        {
            Assert.Equal(shares[i], values[9 + i], 1e-12);
        }

        Assert.Equal(to - from, PaperSensitivity.FromBox("box", from, to).Sensitivity.Integral(), 1e-9);
    }

    [Fact]
    public void Boxes_to_the_edges_are_taken_and_beyond_are_refused()
    {
        Assert.Equal(520, PaperSensitivity.FromBox("all", 305, 825).Sensitivity.Integral(), 1e-9);
        Assert.NotNull(PaperSensitivity.FromBox("first", 300, 310));
        Assert.NotNull(PaperSensitivity.FromBox("last", 820, 830));
        Assert.Throws<RefusalException>(() => PaperSensitivity.FromBox("low", 299, 400));
        Assert.Throws<RefusalException>(() => PaperSensitivity.FromBox("high", 821, 831));
        Assert.Throws<RefusalException>(() => PaperSensitivity.FromBox("high", 400, 831));
        Assert.Throws<RefusalException>(() => PaperSensitivity.FromBox("narrow", 400, 409));
    }

    [Fact]
    public void A_table_reads_zero_where_it_has_no_row()
    {
        var table = SpectralTable.Read("cie_daylight_components.csv");
        Assert.Equal(780, table.LastNanometres);
        Assert.Equal(0, table.At(781, 0));
        Assert.Equal(100, table.At(560, 0));
    }

    [Fact]
    public void A_table_that_is_not_there_is_a_fault_of_the_build()
        => Assert.Contains("none.csv", Assert.Throws<InvalidOperationException>(() => TableLines.Read("none.csv")).Message, StringComparison.Ordinal);

    [Fact]
    public void The_edges_of_the_bands_belong_to_the_band_below()
    {
        PaperSight Of(double nanometres) => PaperSight.Of(PaperSensitivity.FromBox("line", nanometres - 5, nanometres + 5), Spectrum.FromFunction("even", _ => 1));
        Assert.Equal((0, 0, 1), (Of(500).Red, Of(500).Green, Of(500).Blue));
        Assert.Equal((0, 1, 0), (Of(510).Red, Of(510).Green, Of(510).Blue));
        Assert.Equal((0, 1, 0), (Of(590).Red, Of(590).Green, Of(590).Blue));
        Assert.Equal((1, 0, 0), (Of(600).Red, Of(600).Green, Of(600).Blue));
    }

    // By hand: 400 to 500 nm are 11 samples, 510 to 590 nm are 9, 600 to 690 nm are 10.
    [Fact]
    public void A_paper_that_sees_all_weighs_three_bands()
    {
        var sight = PaperSight.Of(PaperSensitivity.FromBox("all", 395, 695), Spectrum.FromFunction("even", _ => 1));
        Assert.Equal(10 / 30.0, sight.Red, 1e-12);
        Assert.Equal(9 / 30.0, sight.Green, 1e-12);
        Assert.Equal(11 / 30.0, sight.Blue, 1e-12);
    }

    // IEC 61966-2-1.
    [Fact]
    [Source("iec-61966-2-1", Basis.Memory)]
    public void The_eye_weighs_as_srgb_does() => Assert.Equal((0.2126, 0.7152, 0.0722), (PaperSight.Eye.Red, PaperSight.Eye.Green, PaperSight.Eye.Blue));
}
