using Foramen.Engine.Quantities;

namespace Foramen.Engine.Bath;

/// <summary>
/// t = t_ref·exp[(Ea/R)(1/T − 1/T_ref)] in kelvin (S. Arrhenius 1889). Within the range of baths it differs from a constant Q10 by some
/// five per cent at most.
/// </summary>
public sealed record ArrheniusLaw : TemperatureLaw
{
    /// <summary>Molar gas constant, J/(mol K); CODATA 2018, exact.</summary>
    public const double GasConstant = 8.314462618;

    private ArrheniusLaw(double joulesPerMole, Temperature reference)
        : base(reference) => ActivationJoulesPerMole = joulesPerMole;

    /// <summary>Ea, J/mol; 0 to 200 000.</summary>
    public double ActivationJoulesPerMole { get; }

    /// <summary>The law with this activation energy.</summary>
    /// <param name="joulesPerMole">0 to 200 000 J/mol.</param>
    /// <param name="reference">Where the factor is one.</param>
    /// <exception cref="RefusalException">Outside the range.</exception>
    public static ArrheniusLaw FromActivation(double joulesPerMole, Temperature reference)
        => new(Guard.Within(joulesPerMole, 0, 200_000, "the activation energy", "J/mol"), reference);

    /// <summary>The law that agrees with a Q10 between two temperatures: Ea = R·ln(ratio)·T1·T2/(T2 − T1).</summary>
    /// <param name="q10">1 to 5.</param>
    /// <param name="from">One temperature, and the reference.</param>
    /// <param name="to">The other; at least 2 °C away.</param>
    /// <exception cref="RefusalException">Outside the ranges.</exception>
    public static ArrheniusLaw FromQ10(double q10, Temperature from, Temperature to)
    {
        Guard.Within(Math.Abs(to.Celsius - from.Celsius), 2, 200, "the distance of the two temperatures", "°C");
        var rise = to.Celsius - from.Celsius;
        var logRatio = Math.Log(Guard.Within(q10, 1, 5, "the temperature coefficient")) * rise / 10;
        return FromActivation(GasConstant * logRatio * from.Kelvin * to.Kelvin / rise, from);
    }

    /// <inheritdoc/>
    public override double TimeFactor(Temperature temperature)
        => Math.Exp(ActivationJoulesPerMole / GasConstant * ((1 / temperature.Kelvin) - (1 / Reference.Kelvin)));
}
