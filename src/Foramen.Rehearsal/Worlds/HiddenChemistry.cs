namespace Foramen.Rehearsal.Worlds;

/// <summary>What the developer costs in stops after so many sheets.</summary>
internal sealed class HiddenChemistry(ChemistryFamily family, Chance chance)
{
    private readonly double atTwenty = chance.Between(0.2, 1.2);
    private readonly double knee = chance.Between(8, 14);

    /// <summary>Sheets in the bottle when this sheet comes; the photographer knows it, for they refreshed it.</summary>
    public int SheetsBefore(int number) => family == ChemistryFamily.Refreshed ? (number - 1) % 10 : number - 1;

    public double LossAfter(int sheets) => family switch
    {
        ChemistryFamily.Knee => atTwenty * Math.Max(0, sheets - knee) / (20 - knee),
        ChemistryFamily.Settling => atTwenty * (1 - Math.Exp(-sheets / 5.0)),
        _ => atTwenty * sheets / 20,
    };
}
