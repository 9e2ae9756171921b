using CsCheck;
using Foramen.Engine.Light;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Light;

public class LightColourTests
{
    private static readonly Gen<PaperSensitivity> GenPaper = Gen.Bool.Select(variable => variable ? PaperSensitivity.VariableContrast : PaperSensitivity.BlueSensitive);

    [Fact]
    public void Every_known_light_is_found_by_its_name_whatever_the_case()
    {
        foreach (var colour in LightColour.Known)
        {
            Assert.Same(colour, LightColour.Find($" {colour.Name.ToUpperInvariant()} "));
        }
    }

    [Fact]
    public void An_unknown_light_is_refused_with_those_that_are_known()
    {
        var refusal = Assert.Throws<RefusalException>(() => LightColour.Find("moonshine"));
        Assert.Contains("moonshine", refusal.Message, StringComparison.Ordinal);
        Assert.All(LightColour.Known, colour => Assert.Contains(colour.Name, refusal.Message, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("5600 K", 5600, LightKind.Daylight)]
    [InlineData("3999K", 3999, LightKind.Radiator)]
    [InlineData("4000 K", 4000, LightKind.Daylight)]
    public void A_temperature_is_a_light_too(string text, double kelvin, LightKind kind)
    {
        var colour = LightColour.Find(text);
        Assert.Equal(kelvin, colour.Temperature.Kelvin);
        Assert.Equal(kind, colour.Kind);
    }

    [Theory]
    [InlineData("")]
    [InlineData(null)]
    [InlineData("5600")]
    [InlineData("NaN K")]
    [InlineData("-5 K")]
    [InlineData("900 K")]
    [InlineData("30000 K")]
    [InlineData("K")]
    public void Nonsense_is_refused(string? text) => Assert.Throws<RefusalException>(() => LightColour.Find(text!));

    [Fact]
    public void Bluer_light_does_more_for_paper() => Gen.Select(GenPaper, Gen.Double[4000, 24000], Gen.Double[100, 1000]).Sample((paper, kelvin, more) =>
        Factor(kelvin + more, paper) > Factor(kelvin, paper));

    // A radiator and daylight of 4000 K have nearly the same colour, so changing over there must not jump by
    // more than the third of a stop that shutters and paper speeds are stepped in.
    [Fact]
    public void Changing_from_radiator_to_daylight_does_not_jump() => GenPaper.Sample(paper =>
        Assert.Equal(0, Math.Log2(Factor(4000, paper) / Factor(3999.9, paper)), 1 / 3.0));

    [Fact]
    public void The_amount_of_light_does_not_matter() => Gen.Select(GenPaper, Gen.Double[0.001, 1000]).Sample((paper, scale) =>
    {
        var noon = LightColour.Noon.ToSpectrum();
        var scaled = Spectrum.FromFunction("scaled", nanometres => scale * noon.Values[((int)nanometres - 300) / 10]);
        Assert.Equal(Actinic.Factor(noon, paper), Actinic.Factor(scaled, paper), 1e-9);
    });

    [Fact]
    public void Light_the_eye_cannot_see_is_refused()
        => Assert.Throws<RefusalException>(() => Actinic.Factor(Spectrum.FromFunction("ultraviolet lamp", nm => nm < 350 ? 1 : 0), PaperSensitivity.BlueSensitive));

    [Fact]
    public void Daylight_outside_its_formulas_is_refused()
    {
        Assert.Throws<RefusalException>(() => Daylight.OfTemperature(ColourTemperature.FromKelvin(3999)));
        Assert.Throws<RefusalException>(() => Daylight.OfTemperature(ColourTemperature.FromKelvin(25001)));
    }

    [Theory]
    [InlineData("5600.5 K", 5600.5)]
    [InlineData("1500 K", 1500)]
    [InlineData("25000 K", 25000)]
    public void Temperatures_to_the_edges_are_taken(string text, double kelvin) => Assert.Equal(kelvin, LightColour.Find(text).Temperature.Kelvin);

    [Fact]
    public void Daylight_to_the_edges_of_its_formulas_is_taken()
    {
        Assert.Equal(100, Daylight.OfTemperature(ColourTemperature.FromKelvin(4000)).Values[26], 1e-9);
        Assert.Equal(100, Daylight.OfTemperature(ColourTemperature.FromKelvin(25000)).Values[26], 1e-9);
    }

    // The table of daylight ends at 780 nm; what is beyond is held.
    [Fact]
    public void Daylight_beyond_its_table_is_held()
    {
        var noon = LightColour.Noon.ToSpectrum().Values;
        Assert.NotEqual(noon[47], noon[48]);
        for (var i = 49; i < Spectrum.Count; i++)
        {
            Assert.Equal(noon[48], noon[i]);
        }
    }

    [Fact]
    public void Light_the_paper_cannot_see_has_no_stops()
        => Assert.Contains("sees nothing", Assert.Throws<RefusalException>(() =>
            Actinic.StopsFromDaylight(Spectrum.FromFunction("safelight", nm => nm > 600 ? 1 : 0), PaperSensitivity.BlueSensitive)).Message, StringComparison.Ordinal);

    [Fact]
    public void A_lamp_is_a_radiator_and_shade_is_daylight()
    {
        Assert.Equal(Planckian.OfTemperature(LightColour.Lamp.Temperature).Values, LightColour.Lamp.ToSpectrum().Values);
        Assert.Equal(Daylight.OfTemperature(LightColour.OpenShade.Temperature).Values, LightColour.OpenShade.ToSpectrum().Values);
    }

    private static double Factor(double kelvin, PaperSensitivity paper)
        => Actinic.Factor(LightColour.FromTemperature(ColourTemperature.FromKelvin(kelvin)).ToSpectrum(), paper);
}
