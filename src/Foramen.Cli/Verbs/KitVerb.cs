using System.CommandLine;
using System.Globalization;
using Foramen.Cli.Options;
using Foramen.Cli.Output;
using Foramen.Engine.Bath;
using Foramen.Engine.Camera;
using Foramen.Engine.Quantities;

namespace Foramen.Cli.Verbs;

/// <summary><c>foramen kit</c>: what a day's processing takes, and the packing list.</summary>
internal static class KitVerb
{
    public static Command Create(Page page)
    {
        var sheets = new Option<int>("--sheets") { Description = "Pictures to be taken by each person.", HelpName = "N", Required = true };
        var size = new Option<string>("--size") { Description = "Size of a sheet, such as 102x127mm.", HelpName = "SIZE", Required = true };
        var spares = new Option<int?>("--spares") { Description = "Further sheets for tests and failures; a fifth and one more where nothing is said.", HelpName = "N" };
        var people = new Option<int?>("--people") { Description = "Who share the one developer bottle; 1 where nothing is said.", HelpName = "N" };
        var fibre = new Option<bool>("--fibre") { Description = "The paper is coated on fibre rather than on resin: it holds more and washes slower." };
        var covering = new Option<string?>("--covering") { Description = "What covers a sheet in the tank; 150ml where nothing is said.", HelpName = "VOLUME" };
        var developer = new Option<string?>("--developer") { Description = "The developer bottle; 300ml where nothing is said.", HelpName = "VOLUME" };
        var developerWater = new Option<double?>("--developer-water") { Description = "Parts of water to one of developer; 9 where nothing is said, 0 for ready to use.", HelpName = "PARTS" };
        var topUp = new Option<string?>("--top-up") { Description = "Fresh developer after each sheet; a tenth of the bottle where nothing is said.", HelpName = "VOLUME" };
        var stop = new Option<string?>("--stop") { Description = "The stop bottle; 300ml where nothing is said, 0ml for a rinse in water.", HelpName = "VOLUME" };
        var stopWater = new Option<double?>("--stop-water") { Description = "Parts of water to one of stop; 19 where nothing is said.", HelpName = "PARTS" };
        var fixer = new Option<string?>("--fixer") { Description = "The fixer bottle; 300ml where nothing is said.", HelpName = "VOLUME" };
        var fixerWater = new Option<double?>("--fixer-water") { Description = "Parts of water to one of fixer; 4 where nothing is said.", HelpName = "PARTS" };
        var washes = new Option<int?>("--wash-changes") { Description = "Changes of wash water on the spot; as many as the wash needs where nothing is said.", HelpName = "N" };
        var priceSheet = new Option<double?>("--price-sheet") { Description = "What a sheet costs, in your money.", HelpName = "PRICE" };
        var priceDeveloper = new Option<double?>("--price-developer") { Description = "What a litre of developer concentrate costs.", HelpName = "PRICE" };
        var priceStop = new Option<double?>("--price-stop") { Description = "What a litre of stop concentrate costs.", HelpName = "PRICE" };
        var priceFixer = new Option<double?>("--price-fixer") { Description = "What a litre of fixer concentrate costs.", HelpName = "PRICE" };
        var json = CommonOptions.Json();
        var verb = new Command(
            "kit",
            """
            Says what a day's processing takes: sheets with spares, concentrates, water, top-up, waste, weight, cost; and the list to pack.

            Try:
              foramen kit --sheets 10 --size 102x127mm
              foramen kit --sheets 2 --people 5 --size 102x127mm --developer 500ml
              foramen kit --sheets 10 --size 102x127mm --price-sheet 0.9 --price-developer 24 --price-fixer 16 --json
            """)
        {
            sheets, size, spares, people, fibre, covering, developer, developerWater, topUp, stop, stopWater, fixer, fixerWater, washes,
            priceSheet, priceDeveloper, priceStop, priceFixer, json,
        };
        verb.SetAction(parsed =>
        {
            Volume Said(Option<string?> option, string what, double usual)
                => parsed.GetValue(option) is { } text ? QuantityText.Volume(text, what) : Volume.FromMillilitres(usual);

            var (width, height) = QuantityText.Size(parsed.GetRequiredValue(size), "the sheet's size");
            var bottle = Said(developer, "the developer", 300);
            var stopBottle = Said(stop, "the stop bath", 300);
            var prices = new[] { priceSheet, priceDeveloper, priceStop, priceFixer }.Select(parsed.GetValue).ToList();
            var wish = new KitWish
            {
                Sheets = parsed.GetValue(sheets),
                Spares = parsed.GetValue(spares),
                People = parsed.GetValue(people) ?? 1,
                Size = SheetSize.FromLengths(width, height),
                SheetBase = parsed.GetValue(fibre) ? SheetBase.Fibre : SheetBase.Coated,
                Covering = Said(covering, "what covers a sheet", 150),
                Developer = bottle,
                DeveloperDilution = Dilution.OnePlus(parsed.GetValue(developerWater) ?? 9),
                TopUpPart = parsed.GetValue(topUp) is { } fresh ? PartOf(bottle, QuantityText.Volume(fresh, "the top-up")) : 0.1,
                Stop = stopBottle.Millilitres > 0 ? stopBottle : null,
                StopDilution = Dilution.OnePlus(parsed.GetValue(stopWater) ?? 19),
                Fixer = Said(fixer, "the fixer", 300),
                FixerDilution = Dilution.OnePlus(parsed.GetValue(fixerWater) ?? 4),
                WashChanges = parsed.GetValue(washes),
                Prices = prices.TrueForAll(price => price is null)
                    ? null
                    : new KitPrices { Sheet = prices[0] ?? 0, DeveloperLitre = prices[1] ?? 0, StopLitre = prices[2] ?? 0, FixerLitre = prices[3] ?? 0 },
            };
            var plan = KitPlan.For(wish);
            return page.Show(parsed.GetValue(json), Report(plan, wish), ReportJson.Default.KitReport, () => Write(page, plan));
        });
        return verb;
    }

    private static double PartOf(Volume bottle, Volume fresh)
        => Guard.Within(fresh.Millilitres, 0, bottle.Millilitres, "the top-up", "ml") / Math.Max(bottle.Millilitres, 1);

    private static KitReport Report(KitPlan plan, KitWish wish) => new()
    {
        Paper = plan.Paper,
        Spares = plan.Paper - (wish.Sheets * wish.People),
        People = wish.People,
        Liquids =
        [
            .. plan.Liquids.Select(liquid => new KitLiquidReport(
                liquid.Bath.ToString().ToLowerInvariant(), liquid.Working.Millilitres, liquid.Concentrate.Millilitres, liquid.Water.Millilitres, liquid.Fills)),
        ],
        TopUpMl = plan.TopUps.Millilitres,
        ConcentratesMl = plan.Concentrates.Millilitres,
        WaterMl = plan.Water.Millilitres,
        WasteMl = plan.Waste.Millilitres,
        WashChanges = plan.WashChanges,
        WashChangeSeconds = plan.Wash.EachChange.Seconds,
        Kilograms = plan.Kilograms,
        Cost = plan.Cost,
        DeveloperBusySeconds = plan.DeveloperBusy.Seconds,
        ActivityAtEnd = new(plan.ActivityAtEnd.Low, plan.ActivityAtEnd.Middle, plan.ActivityAtEnd.High),
        Packing = PackingList.For(plan),
        Remarks = plan.Remarks,
        Cautions = [Cautions.First, .. Cautions.Mixing, .. Cautions.Everywhere, .. Cautions.Disposal, .. Cautions.Emergency],
    };

    private static void Write(Page page, KitPlan plan)
    {
        var culture = CultureInfo.CurrentCulture;
        page.Line("To pack");
        foreach (var line in PackingList.For(plan))
        {
            page.Line("  [ ] " + line);
        }

        page.Line();
        page.Table(["", ""],
        [
            ["concentrates", string.Create(culture, $"{plan.Concentrates.Millilitres:0} ml")],
            ["water", string.Create(culture, $"{plan.Water.Litres:0.0} l")],
            ["waste", string.Create(culture, $"{plan.Waste.Litres:0.0} l to take home")],
            ["weight", string.Create(culture, $"{plan.Kilograms:0.0} kg with all water, without containers")],
            ["cost", plan.Cost is { } cost ? string.Create(culture, $"{cost:0.00}") : "not known: no prices were said"],
            ["developer busy", string.Create(culture, $"{plan.DeveloperBusy.Seconds / 60:0} min in all, one sheet after the other")],
            ["strength at the end", string.Create(culture, $"{plan.ActivityAtEnd.Middle:0.00} of fresh, could be {plan.ActivityAtEnd.Low:0.00} to {plan.ActivityAtEnd.High:0.00}")],
        ]);
        foreach (var remark in plan.Remarks)
        {
            page.Line(remark);
        }

        page.Line();
        foreach (var caution in (IEnumerable<string>)[Cautions.First, .. Cautions.Mixing, .. Cautions.Disposal, .. Cautions.Emergency])
        {
            page.Line(caution);
        }
    }
}
