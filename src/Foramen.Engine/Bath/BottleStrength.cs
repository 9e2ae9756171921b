namespace Foramen.Engine.Bath;

/// <summary>
/// The activity of one bottle by the two models that real developers lie between, at the middle and the ends of the capacity.
/// Multiplicative: a sheet takes a share of what is left, as if only the developing agent mattered. Additive: a sheet takes a fixed amount,
/// as if only the restraining by-products mattered.
/// </summary>
internal readonly record struct BottleStrength(double HarshAdditive, double Additive, double Multiplicative, double GentleMultiplicative)
{
    public static BottleStrength Fresh { get; } = new(1, 1, 1, 1);

    public Spread<double> Activity
    {
        get
        {
            var low = Math.Min(Math.Min(HarshAdditive, Additive), Math.Min(Multiplicative, GentleMultiplicative));
            var high = Math.Max(Math.Max(HarshAdditive, Additive), Math.Max(Multiplicative, GentleMultiplicative));
            return new(low, (Additive + Multiplicative) / 2, high);
        }
    }

    /// <summary>After a sheet that takes this part of the bottle at the low, middle and high capacity.</summary>
    public BottleStrength AfterSheet(Spread<double> exhaustion) => new(
        Math.Max(0, HarshAdditive - exhaustion.Low),
        Math.Max(0, Additive - exhaustion.Middle),
        Multiplicative * Math.Max(0, 1 - exhaustion.Middle),
        GentleMultiplicative * Math.Max(0, 1 - exhaustion.High));

    /// <summary>Mixed with fresh developer, which makes up this part of the mixture.</summary>
    public BottleStrength MixedWith(double freshPart, double strength)
    {
        var (kept, fresh) = (1 - freshPart, freshPart * strength);
        return new(
            (kept * HarshAdditive) + fresh,
            (kept * Additive) + fresh,
            (kept * Multiplicative) + fresh,
            (kept * GentleMultiplicative) + fresh);
    }

    /// <summary>After ageing to this part of its strength, which is known to a factor in the rate.</summary>
    public BottleStrength Weakened(double remaining, double rateFactor) => new(
        HarshAdditive * Math.Pow(remaining, rateFactor),
        Additive * remaining,
        Multiplicative * remaining,
        GentleMultiplicative * Math.Pow(remaining, 1 / rateFactor));

    /// <summary>Narrowed to what an observation allows; where it contradicts all models the observation stands.</summary>
    public BottleStrength Seen(double activity, double uncertaintyFactor)
    {
        var (low, high) = (activity / uncertaintyFactor, activity * uncertaintyFactor);
        var believed = Activity;
        return high < believed.Low || low > believed.High
            ? new(low, activity, activity, high)
            : new(
                Math.Clamp(HarshAdditive, low, high),
                Math.Clamp(Additive, low, high),
                Math.Clamp(Multiplicative, low, high),
                Math.Clamp(GentleMultiplicative, low, high));
    }
}
