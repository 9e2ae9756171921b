using Foramen.Engine.Quantities;

namespace Foramen.Engine.Bath;

/// <summary>
/// t(T) = t_ref·Q10^((T_ref − T)/10): the law of W. B. Ferguson and B. F. Howard (1905), k(10 + x) = k(10)·b^x, with b^10 written Q10.
/// Handbooks give 1.9 to 2.5 for metol-hydroquinone on paper.
/// </summary>
public sealed record TemperatureCoefficient : TemperatureLaw
{
    private TemperatureCoefficient(double q10, Temperature reference)
        : base(reference) => Q10 = q10;

    /// <summary>How many times faster it goes 10 °C warmer; 1 to 5.</summary>
    public double Q10 { get; }

    /// <summary>The law with this coefficient.</summary>
    /// <param name="q10">1 to 5.</param>
    /// <param name="reference">Where the factor is one.</param>
    /// <exception cref="RefusalException">Outside the range.</exception>
    public static TemperatureCoefficient FromQ10(double q10, Temperature reference)
        => new(Guard.Within(q10, 1, 5, "the temperature coefficient"), reference);

    /// <summary>The law through two times found at two temperatures.</summary>
    /// <param name="cool">Temperature and time, the cooler.</param>
    /// <param name="warm">Temperature and time, the warmer.</param>
    /// <exception cref="RefusalException">Less than 2 °C apart, a time of zero, or a coefficient outside 1 to 5.</exception>
    public static TemperatureCoefficient FromTwoTimes((Temperature At, Duration Time) cool, (Temperature At, Duration Time) warm)
    {
        var apart = warm.At.Celsius - cool.At.Celsius;
        if (apart < 2 || cool.Time.Seconds <= 0 || warm.Time.Seconds <= 0)
        {
            throw new RefusalException(
                "A temperature coefficient needs two times above zero, the warmer found at least 2 °C above the cooler.");
        }

        return FromQ10(Math.Pow(cool.Time.Seconds / warm.Time.Seconds, 10 / apart), cool.At);
    }

    /// <inheritdoc/>
    public override double TimeFactor(Temperature temperature) => Math.Pow(Q10, (Reference.Celsius - temperature.Celsius) / 10);
}
