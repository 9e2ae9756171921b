using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Quantities;

public class QuantityContractTests
{
    private static readonly IQuantityContract[] Contracts =
    [
        new QuantityContract<Angle>(Angle.FromDegrees, value => value.Degrees, "°", " °"),
        new QuantityContract<Area>(Area.FromSquareMetres, value => value.SquareMetres, " m²"),
        new QuantityContract<CameraSpeed>(CameraSpeed.FromIso, value => value.Iso, ""),
        new QuantityContract<ColourTemperature>(ColourTemperature.FromKelvin, value => value.Kelvin, " K"),
        new QuantityContract<Density>(Density.FromValue, value => value.Value, ""),
        new QuantityContract<Duration>(Duration.FromSeconds, value => value.Seconds, " s"),
        new QuantityContract<ExposureValue>(ExposureValue.FromAtIso100, value => value.AtIso100, " EV"),
        new QuantityContract<FNumber>(FNumber.FromValue, value => value.Value, ""),
        new QuantityContract<Illuminance>(Illuminance.FromLux, value => value.Lux, " lx"),
        new QuantityContract<Length>(Length.FromMetres, value => value.Metres, " m"),
        new QuantityContract<Luminance>(Luminance.FromCandelasPerSquareMetre, value => value.CandelasPerSquareMetre, " cd/m²"),
        new QuantityContract<LuminousExposure>(LuminousExposure.FromLuxSeconds, value => value.LuxSeconds, " lx s"),
        new QuantityContract<LuminousIntensity>(LuminousIntensity.FromCandelas, value => value.Candelas, " cd"),
        new QuantityContract<Probability>(Probability.FromFraction, value => value.Fraction, ""),
        new QuantityContract<Reflectance>(Reflectance.FromFraction, value => value.Fraction, ""),
        new QuantityContract<MotionSpeed>(MotionSpeed.FromMetresPerSecond, value => value.MetresPerSecond, " m/s"),
        new QuantityContract<Stops>(Stops.FromValue, value => value.Value, " stops"),
        new QuantityContract<Temperature>(Temperature.FromCelsius, value => value.Celsius, " °C"),
        new QuantityContract<Volume>(Volume.FromMillilitres, value => value.Millilitres, " ml"),
    ];

    public static TheoryData<string> Names => [.. Contracts.Select(contract => contract.Type.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void Keeps_its_range(string name) => Of(name).KeepsItsRange();

    [Theory]
    [MemberData(nameof(Names))]
    public void Is_ordered_by_its_number(string name) => Of(name).IsOrderedByItsNumber();

    [Theory]
    [MemberData(nameof(Names))]
    public void Is_written_with_its_unit(string name) => Of(name).IsWrittenWithItsUnit();

    [Fact]
    public void No_quantity_is_without_a_contract()
    {
        var quantities = typeof(Guard).Assembly.GetExportedTypes()
            .Where(type => type is { IsValueType: true, IsEnum: false, Namespace: "Foramen.Engine.Quantities" } && type.GetField("Min") is not null);
        Assert.Empty(quantities.Except(Contracts.Select(contract => contract.Type)));
    }

    // SI Brochure and the inch of 1959 (25.4 mm exactly); one stop is lg 2 = 0.30103; a density of 0.7447 is 18 % (ISO 5-4).
    [Fact]
    public void Units_stand_in_their_defined_ratios()
    {
        Assert.Equal(0.025, Length.FromMillimetres(25).Metres, 1e-15);
        Assert.Equal(120, Duration.FromMinutes(2).Seconds);
        Assert.Equal(Math.PI, Angle.FromDegrees(180).Radians, 1e-15);
        Assert.Equal(180, Angle.FromRadians(Math.PI).Degrees, 1e-12);
        Assert.Equal(0.30103, Math.Log10(Stops.FromValue(1).Ratio), 5e-6);
        Assert.Equal(0.7447, Density.FromReflectance(Reflectance.FromFraction(0.18)).Value, 0.00005);
        Assert.Equal(0.25119, Reflectance.FromDensity(Density.FromValue(0.60)).Fraction, 0.000005);
        Assert.Equal(129.032, Area.FromSides(Length.FromMillimetres(101.6), Length.FromMillimetres(127)).SquareCentimetres, 1e-9);
        Assert.Equal(0.3, Volume.FromMillilitres(300).Litres, 1e-15);

        // 68 °F is 20 °C exactly; the scales meet at -40; 0 °C is 273.15 K (SI Brochure, NIST SP 811).
        Assert.Equal(20, Temperature.FromFahrenheit(68).Celsius, 1e-12);
        Assert.Equal(-40, Temperature.FromFahrenheit(-40).Celsius, 1e-12);
        Assert.Equal(55, Temperature.FromCelsius(12.777_777_777).Fahrenheit, 1e-8);
        Assert.Equal(293.15, Temperature.FromCelsius(20).Kelvin, 1e-12);
        Assert.Equal(180, FNumber.FromHole(Length.FromMillimetres(0.35), Length.FromMillimetres(63)).Value, 1e-9);
    }

    [Fact]
    public void Derived_quantities_refuse_what_cannot_be()
    {
        Assert.Throws<RefusalException>(() => FNumber.FromHole(default, Length.FromMillimetres(63)));
        Assert.Throws<RefusalException>(() => FNumber.FromHole(default, default));
        Assert.Throws<RefusalException>(() => Density.FromReflectance(default));
        Assert.Throws<RefusalException>(() => Stops.FromRatio(0));
        Assert.Throws<RefusalException>(() => Stops.FromRatio(-1));
        Assert.Throws<RefusalException>(() => LuminousExposure.FromLuxSeconds(1e10) + LuminousExposure.FromLuxSeconds(1));
        Assert.Throws<RefusalException>(() => Stops.FromValue(50) + Stops.FromValue(50));
    }

    // The other units' factories have the same range, said in their own unit: 110 °C is 230 °F, 1 m² is 10 000 cm².
    [Fact]
    public void Other_units_keep_the_same_range_and_say_it_in_their_own()
    {
        Ends(Length.FromMillimetres, value => value.Millimetres, Length.Min * 1e3, Length.Max * 1e3, " mm");
        Ends(Duration.FromMinutes, value => value.Seconds / 60, Duration.Min / 60, Duration.Max / 60, " min");
        Ends(Area.FromSquareCentimetres, value => value.SquareCentimetres, Area.Min * 1e4, Area.Max * 1e4, " cm²");
        Ends(Volume.FromLitres, value => value.Litres, Volume.Min / 1e3, Volume.Max / 1e3, " l");
        Ends(MotionSpeed.FromKilometresPerHour, value => value.MetresPerSecond * 3.6, MotionSpeed.Min * 3.6, MotionSpeed.Max * 3.6, " km/h");
        Ends(Temperature.FromFahrenheit, value => value.Fahrenheit, -76, 230, " °F");

        static void Ends<T>(Func<double, T> from, Func<T, double> number, double least, double most, string unit)
        {
            Assert.Equal(least, number(from(least)), Math.Max(1, Math.Abs(least)) * 1e-12);
            Assert.Equal(most, number(from(most)), most * 1e-12);
            foreach (var beyond in new[] { least - 1, most * 1.001 })
            {
                var said = Assert.Throws<RefusalException>(() => from(beyond)).Message;
                Assert.StartsWith("The ", said, StringComparison.Ordinal);
                Assert.EndsWith($"{unit}.", said, StringComparison.Ordinal);
            }
        }
    }

    [Fact]
    public void Stops_add_subtract_and_turn_round()
    {
        var (three, two) = (Stops.FromValue(3), Stops.FromValue(2));
        Assert.Equal(Stops.FromValue(5), three + two);
        Assert.Equal(Stops.FromValue(1), three - two);
        Assert.Equal(Stops.FromValue(-3), -three);
        Assert.Equal(three + two, Stops.Add(three, two));
        Assert.Equal(three - two, Stops.Subtract(three, two));
        Assert.Equal(-three, Stops.Negate(three));

        // 3-4-5.
        Assert.Equal(5, Stops.RootSumSquare(three, Stops.FromValue(4)).Value, 1e-12);
    }

    private static IQuantityContract Of(string name) => Contracts.Single(contract => contract.Type.Name == name);
}
