using Foramen.Engine.Quantities;

namespace Foramen.Engine.Bath;

/// <summary>
/// Time in the fixer. It doubles for every 10 °C below 20 °C (US War Department TM 11-2323: for every 18 °F below 68 °F) and is not shortened
/// above.
/// </summary>
public static class FixingTime
{
    private static readonly Temperature Normal = Temperature.FromCelsius(20);

    /// <summary>Usual time at 20 °C (common practice, no source): 60 s, 2 min and 8 min.</summary>
    public static Duration Usual(FixerKind kind) => Duration.FromSeconds(kind switch
    {
        FixerKind.AmmoniumStrong => 60,
        FixerKind.AmmoniumPaper => 120,
        FixerKind.Sodium => 480,
        _ => throw new ArgumentOutOfRangeException(nameof(kind)),
    });

    /// <summary>The time at a temperature for a time at 20 °C.</summary>
    /// <param name="atTwenty">At 20 °C.</param>
    /// <param name="temperature">Of the fixer; 1 to 35 °C.</param>
    /// <exception cref="RefusalException">Too cold or too warm; asks for the other scale where that would make sense.</exception>
    public static Duration At(Duration atTwenty, Temperature temperature)
    {
        var celsius = temperature.Celsius;
        if (celsius is > 35 and <= 95)
        {
            throw new RefusalException(FormattableString.Invariant(
                $"The fixer is {celsius:0.#} °C; was {celsius:0.#} °F meant, which is {(celsius - 32) / 1.8:0.#} °C?"));
        }

        Guard.Within(celsius, 1, 35, "the temperature of the fixer", "°C");
        var factor = TemperatureCoefficient.FromQ10(2, Normal).TimeFactor(temperature);
        return Duration.FromSeconds(atTwenty.Seconds * Math.Max(1, factor));
    }
}
