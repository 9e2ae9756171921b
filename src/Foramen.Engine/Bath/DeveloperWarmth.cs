using System.Globalization;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Bath;

/// <summary>
/// Where a developer can work. Below about 13 °C hydroquinone all but stops (Edwardian handbooks: 55 °F), above about 25 °C come fog, stain
/// and soft gelatine (L. P. Clerc, <i>Photography: Theory and Practice</i>, sec. 573); the exact bounds are our choice.
/// </summary>
public static class DeveloperWarmth
{
    /// <summary>Below this nothing is computed.</summary>
    public const double RefusedBelowCelsius = 10;

    /// <summary>Above this nothing is computed.</summary>
    public const double RefusedAboveCelsius = 32;

    /// <summary>Passes a temperature on if a developer can work at it.</summary>
    /// <exception cref="RefusalException">Outside 10 to 32 °C; asks whether the other scale was meant where that would make sense.</exception>
    public static Temperature Check(Temperature temperature)
    {
        var celsius = temperature.Celsius;
        if (celsius is >= RefusedBelowCelsius and <= RefusedAboveCelsius)
        {
            return temperature;
        }

        var asFahrenheit = (celsius - 32) / 1.8;
        if (Works(asFahrenheit))
        {
            throw new RefusalException(string.Create(
                CultureInfo.InvariantCulture,
                $"The developer is {celsius:0.#} °C; was {celsius:0.#} °F meant, which is {asFahrenheit:0.#} °C?"));
        }

        if (Works(temperature.Fahrenheit) && celsius < 0)
        {
            throw new RefusalException(string.Create(
                CultureInfo.InvariantCulture,
                $"The developer is {temperature.Fahrenheit:0.#} °F, which is {celsius:0.#} °C; was {temperature.Fahrenheit:0.#} °C meant?"));
        }

        throw new RefusalException(string.Create(
            CultureInfo.InvariantCulture,
            $"The developer is {celsius:0.#} °C; a time can be given between 10 and 32 °C, so {(celsius < RefusedBelowCelsius ? "warm" : "cool")} it first."));

        static bool Works(double celsius) => celsius is >= RefusedBelowCelsius and <= RefusedAboveCelsius;
    }

    /// <summary>What to say of this temperature; null between 18 and 25 °C.</summary>
    public static string? Warning(Temperature temperature) => temperature.Celsius switch
    {
        < 13 => "Below 13 °C hydroquinone all but stops working: weak blacks are likely whatever the time, so warm the bottle.",
        < 18 => "The developer is cool: the time is longer, and less certain than at 20 °C.",
        > 28 => "Above 28 °C fog, yellow stain and soft gelatine are likely: cool the bottle.",
        > 25 => "The developer is warm: the time is short, so keep to the second, and watch the whites for fog.",
        _ => null,
    };
}
