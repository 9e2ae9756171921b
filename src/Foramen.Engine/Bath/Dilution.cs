using Foramen.Engine.Quantities;

namespace Foramen.Engine.Bath;

/// <summary>A working solution from a concentrate and water, as written on bottles: 1 + 9 is one part and nine of water. Immutable.</summary>
public sealed record Dilution
{
    private Dilution(double water) => WaterParts = water;

    /// <summary>Parts of water to one of concentrate; zero is ready to use.</summary>
    public double WaterParts { get; }

    /// <summary>Used as it is.</summary>
    public static Dilution None { get; } = new(0);

    /// <summary>One part and this many of water.</summary>
    /// <param name="waterParts">0 to 1000.</param>
    /// <exception cref="RefusalException">Outside the range.</exception>
    public static Dilution OnePlus(double waterParts) => new(Guard.Within(waterParts, 0, 1000, "the parts of water"));

    /// <summary>Concentrate in this much working solution.</summary>
    public Volume ConcentrateFor(Volume working) => Volume.FromMillilitres(working.Millilitres / (1 + WaterParts));

    /// <summary>Water in this much working solution.</summary>
    public Volume WaterFor(Volume working) => Volume.FromMillilitres(working.Millilitres * WaterParts / (1 + WaterParts));

    /// <summary>V1 = C2·V2/C1: how much of a strong solution makes a volume of a weaker one.</summary>
    /// <param name="strong">C1, in any unit, above zero.</param>
    /// <param name="wanted">C2, in the same unit, not above C1.</param>
    /// <param name="volume">V2.</param>
    /// <exception cref="RefusalException">A strength of zero, or a mixture stronger than what it is made from.</exception>
    public static Volume StrongerNeeded(double strong, double wanted, Volume volume)
    {
        Guard.Within(strong, 1e-9, 1e9, "the strength of the strong solution");
        Guard.Within(wanted, 0, strong, "the strength that is wanted");
        return Volume.FromMillilitres(volume.Millilitres * wanted / strong);
    }

    /// <summary>As written on bottles.</summary>
    public override string ToString() => FormattableString.Invariant($"1 + {WaterParts:0.##}");
}
