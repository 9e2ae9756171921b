using Foramen.Engine.Quantities;

namespace Foramen.Engine.Bath;

/// <summary>A working solution from a concentrate and water, as written on bottles: 1 + 9 is one part and nine of water. Immutable.</summary>
public sealed record Dilution
{
    private Dilution(double water) => WaterParts = water;

    /// <summary>Parts of water to one of concentrate; zero is ready to use.</summary>
    public double WaterParts { get; }

    /// <summary>One part and this many of water.</summary>
    /// <param name="waterParts">0 to 1000.</param>
    /// <exception cref="RefusalException">Outside the range.</exception>
    public static Dilution OnePlus(double waterParts) => new(Guard.Within(waterParts, 0, 1000, "the parts of water"));

    /// <summary>Concentrate in this much working solution.</summary>
    public Volume ConcentrateFor(Volume working) => Volume.FromMillilitres(working.Millilitres / (1 + WaterParts));

    /// <summary>Water in this much working solution.</summary>
    public Volume WaterFor(Volume working) => Volume.FromMillilitres(working.Millilitres * WaterParts / (1 + WaterParts));

    /// <summary>As written on bottles.</summary>
    public override string ToString() => FormattableString.Invariant($"1 + {WaterParts:0.##}");
}
