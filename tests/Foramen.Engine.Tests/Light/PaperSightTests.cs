using CsCheck;
using Foramen.Engine.Light;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Light;

public class PaperSightTests
{
    private static readonly Gen<LightColour> GenColour = Gen.Double[1500, 25000].Select(kelvin => LightColour.FromTemperature(ColourTemperature.FromKelvin(kelvin)));

    [Fact]
    public void A_neutral_surface_keeps_its_brightness() => Gen.Select(GenColour, Gen.Double[0, 1]).Sample((colour, grey) =>
    {
        var sight = PaperSight.Of(PaperSensitivity.VariableContrast, colour.ToSpectrum());
        Assert.Equal(grey, grey * (sight.Red + sight.Green + sight.Blue), 1e-12);
    });

    [Fact]
    public void Blue_sensitive_paper_sees_blue_only() => GenColour.Sample(colour =>
    {
        var sight = PaperSight.Of(PaperSensitivity.BlueSensitive, colour.ToSpectrum());
        Assert.Equal((0, 0, 1), (sight.Red, sight.Green, sight.Blue));
    });

    [Fact]
    public void Variable_contrast_paper_sees_some_green_and_more_so_under_a_lamp()
    {
        var lamp = PaperSight.Of(PaperSensitivity.VariableContrast, LightColour.Lamp.ToSpectrum());
        var shade = PaperSight.Of(PaperSensitivity.VariableContrast, LightColour.BlueShade.ToSpectrum());
        Assert.Equal(0, lamp.Red);
        Assert.True(lamp.Green > shade.Green && shade.Green > 0);
    }

    // By hand: equal energy, 380 to 500 nm is 12.5 samples of the grid (half at 380, all of 500), 510 to 560 nm is 5.5 (half at 560).
    [Fact]
    public void Under_equal_energy_the_bands_weigh_as_they_are_wide()
    {
        var sight = PaperSight.Of(PaperSensitivity.VariableContrast, Spectrum.FromFunction("equal energy", _ => 1));
        Assert.Equal(5.5 / 18, sight.Green, 1e-12);
        Assert.Equal(12.5 / 18, sight.Blue, 1e-12);
    }

    [Fact]
    public void Light_the_paper_cannot_see_is_refused()
        => Assert.Throws<RefusalException>(() => PaperSight.Of(PaperSensitivity.BlueSensitive, Spectrum.FromFunction("safelight", nm => nm > 600 ? 1 : 0)));
}
