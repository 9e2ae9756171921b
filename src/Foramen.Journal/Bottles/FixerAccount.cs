using Foramen.Engine.Bath;
using Foramen.Engine.Quantities;
using Foramen.Journal.Bodies;
using Foramen.Journal.Fold;

namespace Foramen.Journal.Bottles;

/// <summary>A bottle of fixer after the sheets that the journal says went through it. Immutable.</summary>
/// <param name="Bottle">The bottle as written down.</param>
/// <param name="Now">The fixer now.</param>
/// <param name="Time">Its usual time at 20 °C.</param>
/// <param name="SheetsLeft">Sheets like those that were (before the first: 102 × 127 mm, mean density 0.7) until a limit is reached.</param>
public sealed record FixerAccount(Bottle Bottle, FixerBath Now, Duration Time, int SheetsLeft)
{
    // A black of 2.0 above white is the least that keeps silver back, as in the kit's plan.
    private static readonly Density DeepestBlack = Density.FromValue(2);

    /// <summary>The account of a bottle.</summary>
    /// <exception cref="RefusalException">No bottle of fixer, or mixed in a way that cannot be.</exception>
    public static FixerAccount Of(Ledger ledger, Bottle bottle)
    {
        if (bottle.Mixed is not { Body: { Contents: BottleContents.Fixer } mixed })
        {
            throw new RefusalException("This is no bottle of fixer whose mixing the journal knows; choose one that was mixed.");
        }

        var loads = new SheetLoads(ledger, DeveloperProfile.Paper.ReferenceDensity);
        var fixer = FixerBath.Fill(Volume.FromMillilitres(mixed.VolumeMillilitres), mixed.Fixer.ToLimits());
        double area = 0, silver = 0;
        foreach (var happening in bottle.Happenings)
        {
            switch (happening.Said)
            {
                case FixedIn said:
                    var sheet = ledger.Sheets.Find(said.Sheet);
                    var load = loads.Of(sheet, sheet?.Developed?.Body.MeanDensity);
                    var grams = SilverOf(load);
                    fixer = fixer.AfterSheet(load.Area, grams);
                    (area, silver) = (area + load.Area.SquareMetres, silver + grams);
                    break;
                case BottleToppedUp said:
                    fixer = fixer.Refreshed(Math.Min(1, said.FreshMillilitres / fixer.Volume.Millilitres));
                    break;
            }
        }

        var usual = loads.Of(null, null);
        var left = fixer.Sheets == 0
            ? fixer.SheetsLeft(usual.Area, SilverOf(usual))
            : fixer.SheetsLeft(Area.FromSquareMetres(area / fixer.Sheets), silver / fixer.Sheets);
        return new FixerAccount(bottle, fixer, FixingTime.Usual(mixed.Fixer.ToKind()), left);
    }

    private static double SilverOf(SheetLoad load)
        => SilverCoating.Usual.GramsInto(load.Area, SilverCoating.UndevelopedPart(load.MeanDensity, DeepestBlack));
}
