using Foramen.Engine.Quantities;

namespace Foramen.Engine.Bath;

/// <summary>What things cost, in the user's own money. Immutable; negative or absurd prices are refused.</summary>
public sealed record KitPrices
{
    private readonly double sheet;
    private readonly double developer;
    private readonly double stop;
    private readonly double fixer;

    /// <summary>One sheet of paper.</summary>
    public double Sheet
    {
        get => sheet;
        init => sheet = Price(value);
    }

    /// <summary>A litre of developer concentrate.</summary>
    public double DeveloperLitre
    {
        get => developer;
        init => developer = Price(value);
    }

    /// <summary>A litre of stop concentrate.</summary>
    public double StopLitre
    {
        get => stop;
        init => stop = Price(value);
    }

    /// <summary>A litre of fixer concentrate.</summary>
    public double FixerLitre
    {
        get => fixer;
        init => fixer = Price(value);
    }

    private static double Price(double value) => Guard.Within(value, 0, 1e6, "the price");
}
