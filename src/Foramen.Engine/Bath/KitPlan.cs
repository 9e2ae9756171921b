using System.Globalization;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Bath;

/// <summary>
/// What a day's processing takes: sheets, solutions, water, waste, weight and cost. Counts on the low bound of what a bottle is good for.
/// Containers are not weighed. Immutable.
/// </summary>
public sealed record KitPlan
{
    // Concentrates are denser than water, and coated paper weighs about this much (both from memory).
    private const double ConcentrateKilogramsPerLitre = 1.15;
    private const double PaperKilogramsPerSquareMetre = 0.25;

    // Between two sheets the bottle is emptied, topped up and filled again (our assumption).
    private const double HandlingSeconds = 60;

    private KitPlan()
    {
    }

    /// <summary>Sheets of paper, spares included; all are counted as developed.</summary>
    public required int Paper { get; init; }

    /// <summary>Developer, stop where used, fixer, wash water; in the order of use.</summary>
    public required IReadOnlyList<KitLiquid> Liquids { get; init; }

    /// <summary>Fresh developer for topping up, part of the first of <see cref="Liquids"/>.</summary>
    public required Volume TopUps { get; init; }

    /// <summary>Wash plan for each sheet.</summary>
    public required WashPlan Wash { get; init; }

    /// <summary>Changes of water for each sheet.</summary>
    public required int WashChanges { get; init; }

    /// <summary>What the waste containers must hold: all solutions and the first wash water of each sheet.</summary>
    public required Volume Waste { get; init; }

    /// <summary>What leaves the house, in kilograms, if all water is carried.</summary>
    public required double Kilograms { get; init; }

    /// <summary>Cost in the user's money; null without prices.</summary>
    public required double? Cost { get; init; }

    /// <summary>Activity of the developer when the last sheet has gone through.</summary>
    public required Spread<double> ActivityAtEnd { get; init; }

    /// <summary>How long one developer bottle is busy with all the sheets, one after the other.</summary>
    public required Duration DeveloperBusy { get; init; }

    /// <summary>Sentences for the user.</summary>
    public required IReadOnlyList<string> Remarks { get; init; }

    /// <summary>All concentrate to buy or bring.</summary>
    public Volume Concentrates => Volume.FromMillilitres(Liquids.Sum(liquid => liquid.Concentrate.Millilitres));

    /// <summary>All water to bring or find.</summary>
    public Volume Water => Volume.FromMillilitres(Liquids.Sum(liquid => liquid.Water.Millilitres));

    /// <summary>The plan for a wish.</summary>
    /// <exception cref="RefusalException">A bottle too small to cover a sheet, or quantities beyond their range.</exception>
    public static KitPlan For(KitWish wish)
    {
        var sheets = (wish.Sheets * wish.People) + (wish.Spares ?? UsualSpares(wish.Sheets * wish.People));
        var area = Area.FromSides(wish.Size.Width, wish.Size.Height);
        var remarks = new List<string>();
        var (developer, topUps, atEnd) = Developer(wish, sheets, area, remarks);
        var liquids = new List<KitLiquid> { developer, StopOrRinse(wish, sheets), Fixer(wish, sheets, area, remarks) };
        var chemicals = liquids.Sum(liquid => liquid.Working.Millilitres);
        var wash = WashPlan.For(wish.SheetBase, area, Volume.FromMillilitres(8), wish.Covering, Temperature.FromCelsius(20));
        var changes = wish.WashChanges ?? wash.Advised;
        if (changes < wash.Changes)
        {
            remarks.Add(Text($"{changes} changes of water are for the way home only; wash again at home, {wash.Advised} changes in all."));
        }

        var washWater = Volume.FromMillilitres(sheets * changes * wish.Covering.Millilitres);
        liquids.Add(new(ProcessingBath.Wash, washWater, default, washWater, sheets * changes));
        var busy = sheets * (wish.Profile.Time.Seconds + HandlingSeconds);
        if (wish.People > 1)
        {
            remarks.Add(Text(
                $"One bottle develops one sheet at a time: {sheets} sheets of {wish.People} people keep it busy for about {busy / 60:0} minutes."));
        }

        return new KitPlan
        {
            Paper = sheets,
            Liquids = liquids,
            TopUps = topUps,
            Wash = wash,
            WashChanges = changes,
            Waste = Volume.FromMillilitres(chemicals + (sheets * wish.Covering.Millilitres)),
            Kilograms = liquids.Sum(liquid => liquid.Water.Litres + (liquid.Concentrate.Litres * ConcentrateKilogramsPerLitre))
                + (sheets * area.SquareMetres * PaperKilogramsPerSquareMetre),
            Cost = wish.Prices is { } prices ? Price(prices, sheets, liquids) : null,
            ActivityAtEnd = atEnd,
            DeveloperBusy = Duration.FromSeconds(busy),
            Remarks = remarks,
        };
    }

    /// <summary>Spares for tests and failures: a fifth, rounded up, and one (common practice, no source).</summary>
    public static int UsualSpares(int sheets) => ((sheets + 4) / 5) + 1;

    private static (KitLiquid Liquid, Volume TopUps, Spread<double> AtEnd) Developer(KitWish wish, int sheets, Area area, List<string> remarks)
    {
        var fresh = DeveloperBottle.Fill(wish.Profile, Covers(wish.Developer, wish, "developer"), wish.Covering);
        var habit = new BottleHabit(area, wish.MeanDensity, wish.Lost, Volume.FromMillilitres(wish.TopUpPart * wish.Developer.Millilitres));
        var each = SheetsLeft.For(fresh, habit).Sheets.Low;
        if (each == 0)
        {
            throw new RefusalException("The developer bottle is too small for even one such sheet; bring a larger one.");
        }

        var fills = each >= SheetsLeft.Horizon ? 1 : (sheets + each - 1) / each;
        if (fills > 1)
        {
            remarks.Add(Text($"A bottle of developer is sure to last for {each} sheets only, so it is mixed afresh {fills - 1} more times."));
        }

        // The last bottle takes what the full ones leave.
        var inLast = sheets - ((fills - 1) * each);
        var bottle = fresh;
        for (var sheet = 0; sheet < inLast; sheet++)
        {
            bottle = habit.Next(bottle);
        }

        var topUps = Volume.FromMillilitres(sheets * habit.Fresh.Millilitres);
        var working = Volume.FromMillilitres((fills * wish.Developer.Millilitres) + topUps.Millilitres);
        return (Liquid(ProcessingBath.Developer, working, wish.DeveloperDilution, fills), topUps, bottle.Activity);
    }

    private static KitLiquid StopOrRinse(KitWish wish, int sheets) => wish.Stop is { } stop
        ? Liquid(ProcessingBath.Stop, Covers(stop, wish, "stop bath"), wish.StopDilution, 1)
        : new(
            ProcessingBath.Rinse,
            Volume.FromMillilitres(sheets * wish.Covering.Millilitres),
            default,
            Volume.FromMillilitres(sheets * wish.Covering.Millilitres),
            sheets);

    private static KitLiquid Fixer(KitWish wish, int sheets, Area area, List<string> remarks)
    {
        var volume = Covers(wish.Fixer, wish, "fixer");

        // A black of 2.0 above white is the least that keeps silver back; a lighter one would keep more.
        var silver = wish.Silver.GramsInto(area, SilverCoating.UndevelopedPart(wish.MeanDensity, Density.FromValue(2)));
        var each = FixerBath.Fill(volume, wish.FixerLimits).SheetsLeft(area, silver);
        if (each == 0)
        {
            throw new RefusalException("The fixer bottle is too small for even one such sheet; bring a larger one.");
        }

        var fills = (sheets + each - 1) / each;
        if (fills > 1)
        {
            remarks.Add(Text($"A bottle of fixer lasts for {each} sheets, so it is mixed afresh {fills - 1} more times."));
        }

        return Liquid(ProcessingBath.Fix, Volume.FromMillilitres(fills * volume.Millilitres), wish.FixerDilution, fills);
    }

    private static Volume Covers(Volume volume, KitWish wish, string what) => volume >= wish.Covering
        ? volume
        : throw new RefusalException(Text(
            $"The {what} is {volume.Millilitres:0.#} ml and {wish.Covering.Millilitres:0.#} ml are needed to cover the sheet; bring more."));

    private static KitLiquid Liquid(ProcessingBath bath, Volume working, Dilution dilution, int fills)
        => new(bath, working, dilution.ConcentrateFor(working), dilution.WaterFor(working), fills);

    private static double Price(KitPrices prices, int sheets, List<KitLiquid> liquids) => (sheets * prices.Sheet) + liquids.Sum(liquid =>
        liquid.Concentrate.Litres * liquid.Bath switch
        {
            ProcessingBath.Developer => prices.DeveloperLitre,
            ProcessingBath.Stop => prices.StopLitre,
            ProcessingBath.Fix => prices.FixerLitre,
            _ => 0,
        });

    private static string Text(FormattableString sentence) => sentence.ToString(CultureInfo.InvariantCulture);
}
