using Foramen.Engine.Quantities;

namespace Foramen.Engine.Bath;

/// <summary>
/// How often and how long to wash a sheet in a small tank for a stated residue. Twice the changes that theory asks for are advised. No
/// standard's limit for paper is known to us; the default target, 0.014 g/m² of thiosulphate, is that of ANSI IT9.1-1996 for film
/// meant to last 500 years. Immutable.
/// </summary>
public sealed record WashPlan
{
    /// <summary>Default target, g/m².</summary>
    public const double FilmTarget = 0.014;

    private WashPlan()
    {
    }

    /// <summary>Changes by theory.</summary>
    public required int Changes { get; init; }

    /// <summary>Changes advised: twice the theory.</summary>
    public int Advised => 2 * Changes;

    /// <summary>How long each change stands: three time constants of the layer, not under 20 s, doubled for every 10 °C below 20 °C.</summary>
    public required Duration EachChange { get; init; }

    /// <summary>Standing time of the advised changes.</summary>
    public Duration Time => Duration.FromSeconds(Advised * EachChange.Seconds);

    /// <summary>Thiosulphate left after the advised changes, g/m².</summary>
    public required double LeftGramsPerSquareMetre { get; init; }

    /// <summary>The plan.</summary>
    /// <param name="sheetBase">Coated paper holds about 0.08 l/m², fibre about 0.3 l/m² (our assumption).</param>
    /// <param name="area">Of the sheet.</param>
    /// <param name="onWalls">What stays on the tank's walls after pouring out; 0.1 ml to 1 l.</param>
    /// <param name="filling">Each filling.</param>
    /// <param name="water">Temperature of the water; 1 to 35 °C.</param>
    /// <param name="fixerGramsPerLitre">Thiosulphate in the fixer, 1 to 500 g/l; 100 for paper strength.</param>
    /// <param name="targetGramsPerSquareMetre">Thiosulphate that may stay, 0.0001 to 10 g/m².</param>
    /// <exception cref="RefusalException">Outside the ranges.</exception>
    public static WashPlan For(
        SheetBase sheetBase,
        Area area,
        Volume onWalls,
        Volume filling,
        Temperature water,
        double fixerGramsPerLitre = 100,
        double targetGramsPerSquareMetre = FilmTarget)
    {
        var litresPerSquareMetre = sheetBase == SheetBase.Fibre ? 0.3 : 0.08;
        var start = litresPerSquareMetre * Guard.Within(fixerGramsPerLitre, 1, 500, "the fixer's strength", "g/l");
        var target = Guard.Within(targetGramsPerSquareMetre, 1e-4, 10, "the residue that may stay", "g/m²") / start;
        Guard.Within(onWalls.Millilitres, 0.1, 1000, "what stays on the walls", "ml");
        var kept = Volume.FromMillilitres(onWalls.Millilitres + (litresPerSquareMetre * area.SquareMetres * 1000));
        Guard.Within(water.Celsius, 1, 35, "the temperature of the wash water", "°C");

        // Washing slows by two for every 10 °C (TM 11-2323: twice the time at 50 °F, four times at 35 °F).
        var cold = Math.Max(1, Math.Pow(2, (20 - water.Celsius) / 10));
        var layer = WashingOut.Of(sheetBase);
        var standing = Math.Max(20, 3 * layer.TimeConstant.Seconds) * cold;
        var equilibrium = 1 - layer.Left(Duration.FromSeconds(standing / cold));
        var changes = Math.Max(1, FillAndDump.ChangesNeeded(Math.Min(1, target), kept, filling, equilibrium));
        return new WashPlan
        {
            Changes = changes,
            EachChange = Duration.FromSeconds(standing),
            LeftGramsPerSquareMetre = start * FillAndDump.Left(kept, filling, 2 * changes, equilibrium),
        };
    }
}
