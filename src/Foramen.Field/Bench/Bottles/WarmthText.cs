using Foramen.Engine.Bath;
using Foramen.Engine.Quantities;
using Foramen.Field.Components;
using Foramen.Field.Units;

namespace Foramen.Field.Bench.Bottles;

/// <summary>Temperatures as they are typed in the user's scale. One that would fit the other scale is asked about, never taken.</summary>
public static class WarmthText
{
    /// <summary>The scale's sign.</summary>
    public static string Unit(UnitSystem units) => units == UnitSystem.Imperial ? "°F" : "°C";

    /// <summary>The number alone.</summary>
    public static string Bare(double celsius, UnitSystem units) => NumberText.Show(units == UnitSystem.Imperial ? (celsius * 1.8) + 32 : celsius, 1);

    /// <summary>°C from what was typed, 10 to 32; NaN with a message under the field's name where it cannot be.</summary>
    public static double Read(string text, UnitSystem units, Dictionary<string, string> messages, string field)
        => messages.Try(field, () =>
        {
            var value = NumberText.Read(text, -60, 230, "the temperature", Unit(units));
            var temperature = units == UnitSystem.Imperial ? Temperature.FromFahrenheit(value) : Temperature.FromCelsius(value);
            return DeveloperWarmth.Check(temperature).Celsius;
        });
}
