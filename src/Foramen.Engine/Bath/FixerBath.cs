using Foramen.Engine.Quantities;

namespace Foramen.Engine.Bath;

/// <summary>A fixer after the sheets it has fixed. Silver and area per litre only rise with sheets and fall with fresh fixer. Immutable.</summary>
public sealed record FixerBath
{
    // A sum of many sheets must not pass a limit that it only reaches.
    private const double RoundingFactor = 1 + 1e-9;

    private FixerBath()
    {
    }

    /// <summary>What is in it.</summary>
    public required Volume Volume { get; init; }

    /// <summary>How far it may be used.</summary>
    public required FixerLimits Limits { get; init; }

    /// <summary>Silver, g/l.</summary>
    public double SilverGramsPerLitre { get; private init; }

    /// <summary>Area of paper that each litre has fixed, m²/l.</summary>
    public double SquareMetresPerLitre { get; private init; }

    /// <summary>Sheets fixed.</summary>
    public int Sheets { get; private init; }

    /// <summary>Whether either limit is passed.</summary>
    public bool IsSpent => SilverGramsPerLitre > Limits.SilverGramsPerLitre * RoundingFactor
        || SquareMetresPerLitre > Limits.SquareMetresPerLitre * RoundingFactor;

    /// <summary>A fresh fixer.</summary>
    /// <param name="volume">10 ml to 100 l.</param>
    /// <param name="limits">How far it may be used.</param>
    /// <exception cref="RefusalException">Outside the range.</exception>
    public static FixerBath Fill(Volume volume, FixerLimits limits)
    {
        Guard.Within(volume.Millilitres, 10, 100_000, "the fixer", "ml");
        return new FixerBath { Volume = volume, Limits = limits };
    }

    /// <summary>After a sheet.</summary>
    /// <param name="area">Of the sheet.</param>
    /// <param name="silverGrams">Silver it gives up, 0 to 100 g.</param>
    /// <exception cref="RefusalException">Outside the range.</exception>
    public FixerBath AfterSheet(Area area, double silverGrams) => this with
    {
        SilverGramsPerLitre = SilverGramsPerLitre + (Guard.Within(silverGrams, 0, 100, "the silver of a sheet", "g") / Volume.Litres),
        SquareMetresPerLitre = SquareMetresPerLitre + (area.SquareMetres / Volume.Litres),
        Sheets = Sheets + 1,
    };

    /// <summary>After this part of it was replaced by fresh fixer.</summary>
    /// <param name="part">0 to 1.</param>
    /// <exception cref="RefusalException">Outside the range.</exception>
    public FixerBath Refreshed(double part)
    {
        var kept = 1 - Guard.Within(part, 0, 1, "the part of the fixer that is replaced");
        return this with { SilverGramsPerLitre = SilverGramsPerLitre * kept, SquareMetresPerLitre = SquareMetresPerLitre * kept };
    }

    /// <summary>Like sheets that it takes before a limit would be passed; 10 000 at the most.</summary>
    /// <param name="area">Of each, above zero.</param>
    /// <param name="silverGrams">Silver that each gives up.</param>
    /// <param name="refreshed">Part replaced by fresh fixer after each, 0 to 1.</param>
    /// <exception cref="RefusalException">Outside the ranges.</exception>
    public int SheetsLeft(Area area, double silverGrams, double refreshed = 0)
    {
        Guard.Within(area.SquareCentimetres, 0.01, 1e8, "the sheet's area", "cm²");
        var bath = this;
        for (var sheets = 0; sheets < 10_000; sheets++)
        {
            var fixedSheet = bath.AfterSheet(area, silverGrams);
            if (fixedSheet.IsSpent)
            {
                return sheets;
            }

            bath = fixedSheet.Refreshed(refreshed);
        }

        return 10_000;
    }
}
