using Foramen.Engine.Quantities;

namespace Foramen.Engine.Bath;

/// <summary>
/// How the time a bath needs depends on its temperature, t(T) = t_ref·Q10^((T_ref − T)/10): the law of W. B. Ferguson and B. F. Howard (1905),
/// k(10 + x) = k(10)·b^x, with b^10 written Q10. Handbooks give 1.9 to 2.5 for metol-hydroquinone on paper. Within the range of baths the law of
/// S. Arrhenius (1889) differs from it by some five per cent at most. Immutable.
/// </summary>
public sealed record TemperatureCoefficient
{
    private TemperatureCoefficient(double q10, Temperature reference)
    {
        Q10 = q10;
        Reference = reference;
    }

    /// <summary>How many times faster it goes 10 °C warmer; 1 to 5.</summary>
    public double Q10 { get; }

    /// <summary>The temperature at which the factor is one.</summary>
    public Temperature Reference { get; }

    /// <summary>The law with this coefficient.</summary>
    /// <param name="q10">1 to 5.</param>
    /// <param name="reference">Where the factor is one.</param>
    /// <exception cref="RefusalException">Outside the range.</exception>
    public static TemperatureCoefficient FromQ10(double q10, Temperature reference)
        => new(Guard.Within(q10, 1, 5, "the temperature coefficient"), reference);

    /// <summary>The time needed at <paramref name="temperature"/> over the time needed at <see cref="Reference"/>.</summary>
    public double TimeFactor(Temperature temperature) => Math.Pow(Q10, (Reference.Celsius - temperature.Celsius) / 10);
}
