using CsCheck;
using Foramen.Engine.Bath;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Bath;

/// <summary>Short names for the quantities of a bath, and the range of what may happen to a bottle.</summary>
internal static class BathExamples
{
    /// <summary>Temperatures at which a time is given, °C.</summary>
    public static Gen<double> GenWorkingCelsius { get; } = Gen.Double[DeveloperWarmth.RefusedBelowCelsius, DeveloperWarmth.RefusedAboveCelsius];

    public static Temperature C(double celsius) => Temperature.FromCelsius(celsius);

    public static Temperature F(double fahrenheit) => Temperature.FromFahrenheit(fahrenheit);

    public static Duration S(double seconds) => Duration.FromSeconds(seconds);

    public static Volume Ml(double millilitres) => Volume.FromMillilitres(millilitres);

    public static Area Cm2(double squareCentimetres) => Area.FromSquareCentimetres(squareCentimetres);

    public static Density D(double density) => Density.FromValue(density);

    public static Spread<double> Exactly(double activity) => new(activity, activity, activity);
}
