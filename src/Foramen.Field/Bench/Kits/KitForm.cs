using Foramen.Engine.Bath;
using Foramen.Engine.Camera;
using Foramen.Engine.Quantities;
using Foramen.Field.Components;
using Foramen.Field.Units;

namespace Foramen.Field.Bench.Kits;

/// <summary>What a day should yield, as it is typed: texts until they are read, a message beside each that cannot be.</summary>
public sealed class KitForm(UnitSystem units)
{
    private const double MostMillilitres = 100_000;

    /// <summary>Pictures each person takes.</summary>
    public string Sheets { get; set; } = "10";

    /// <summary>Who share the bottles.</summary>
    public string People { get; set; } = "1";

    /// <summary>Width of a sheet in the user's unit.</summary>
    public string Width { get; set; } = Lengths.Bare(127, units);

    /// <summary>Height of a sheet in the user's unit.</summary>
    public string Height { get; set; } = Lengths.Bare(102, units);

    /// <summary>The developer bottle, ml.</summary>
    public string Developer { get; set; } = "500";

    /// <summary>What covers a sheet, ml.</summary>
    public string Covering { get; set; } = "150";

    /// <summary>Fresh developer after each sheet, ml.</summary>
    public string TopUp { get; set; } = "50";

    /// <summary>Whether the paper is on fibre.</summary>
    public bool Fibre { get; set; }

    /// <summary>Price of a sheet; may stay empty, like the other prices.</summary>
    public string SheetPrice { get; set; } = "";

    /// <summary>Price of a litre of developer concentrate.</summary>
    public string DeveloperPrice { get; set; } = "";

    /// <summary>Price of a litre of fixer concentrate.</summary>
    public string FixerPrice { get; set; } = "";

    /// <summary>What is wrong, by field; under the empty name what is wrong with all of it.</summary>
    public Dictionary<string, string> Messages { get; } = [];

    /// <summary>The plan; null where something is wrong, and then <see cref="Messages"/> says what.</summary>
    public KitPlan? Read()
    {
        Messages.Clear();
        var sheets = Whole(nameof(Sheets), Sheets, 1000, "the number of sheets");
        var people = Whole(nameof(People), People, 100, "the number of people");
        var width = Messages.Try(nameof(Width), () => Lengths.Read(Width, 10, 2000, "the sheet's width", units));
        var height = Messages.Try(nameof(Height), () => Lengths.Read(Height, 10, 2000, "the sheet's height", units));
        var developer = Millilitres(nameof(Developer), Developer, 10, "the developer bottle");
        var covering = Millilitres(nameof(Covering), Covering, 1, "what covers a sheet");
        var topUp = Millilitres(nameof(TopUp), TopUp, 0, "what is topped up", double.IsNaN(developer) ? MostMillilitres : developer);
        double?[] prices = [Price(nameof(SheetPrice), SheetPrice), Price(nameof(DeveloperPrice), DeveloperPrice), Price(nameof(FixerPrice), FixerPrice)];
        if (Messages.Count > 0)
        {
            return null;
        }

        try
        {
            return KitPlan.For(new KitWish
            {
                Sheets = sheets,
                People = people,
                Size = SheetSize.FromMillimetres(width, height),
                SheetBase = Fibre ? SheetBase.Fibre : SheetBase.Coated,
                Developer = Volume.FromMillilitres(developer),
                Covering = Volume.FromMillilitres(covering),
                TopUpPart = topUp / developer,
                Stop = Volume.FromMillilitres(Math.Max(300, covering)),
                Fixer = Volume.FromMillilitres(Math.Max(300, covering)),
                Prices = Array.TrueForAll(prices, price => price is null)
                    ? null
                    : new KitPrices { Sheet = prices[0] ?? 0, DeveloperLitre = prices[1] ?? 0, FixerLitre = prices[2] ?? 0 },
            });
        }
        catch (RefusalException e)
        {
            Messages[""] = e.Message;
            return null;
        }
    }

    private double? Price(string field, string text)
        => text.Trim().Length == 0 ? null : Messages.Try(field, () => NumberText.Read(text, 0, 1e6, "the price"));

    private double Millilitres(string field, string text, double min, string what, double max = MostMillilitres)
        => Messages.Try(field, () => NumberText.Read(text, min, max, what, "ml"));

    private int Whole(string field, string text, int max, string what)
    {
        var value = Messages.Try(field, () => NumberText.Read(text, 1, max, what));
        if (!double.IsNaN(value) && value != Math.Floor(value))
        {
            Messages[field] = $"{char.ToUpperInvariant(what[0])}{what[1..]} should be a whole number.";
        }

        return double.IsNaN(value) ? 1 : (int)value;
    }
}
