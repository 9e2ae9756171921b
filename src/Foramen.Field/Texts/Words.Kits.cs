using System.Globalization;
using Foramen.Engine.Bath;

namespace Foramen.Field.Texts;

public static partial class Words
{
    /// <summary>The kit planner and its packing lists.</summary>
    public static class Kits
    {
        public const string Title = "Kits to pack";
        public const string None = "No packing list yet.";
        public const string Add = "Plan a kit";
        public const string Sheets = "Pictures each";
        public const string People = "People";
        public const string PeopleHint = "They share one developer bottle";
        public const string Developer = "Developer bottle";
        public const string Covering = "Covers a sheet";
        public const string TopUp = "Topped up per sheet";
        public const string Base = "Paper is";
        public const string Coated = "Resin-coated";
        public const string Fibre = "Fibre";
        public const string Prices = "What it costs";
        public const string SheetPrice = "A sheet";
        public const string DeveloperPrice = "A litre of developer";
        public const string FixerPrice = "A litre of fixer";
        public const string Concentrates = "Concentrates";
        public const string Water = "Water";
        public const string Waste = "Waste to take home";
        public const string Weight = "Weight";
        public const string WeightWhy = "With all the water, without the containers.";
        public const string Cost = "Cost";
        public const string Busy = "Developer is busy for";
        public const string AtEnd = "Strength at the end";
        public const string List = "To pack";
        public const string Keep = "Keep this list";
        public const string AllPacked = "All packed.";
        public const string Unknown = "The journal knows no such list.";

        public static string Name(KitPlan plan, int people) => people > 1 ? $"{plan.Paper} sheets, {people} people" : $"{plan.Paper} sheets";

        public static string Left(int lines) => lines == 0 ? AllPacked : $"{lines} still to pack";

        public static string Amount(double millilitres) => millilitres >= 1000
            ? string.Create(CultureInfo.InvariantCulture, $"{millilitres / 1000:0.0} l")
            : string.Create(CultureInfo.InvariantCulture, $"{millilitres:0} ml");

        public static string Kilograms(double value) => string.Create(CultureInfo.InvariantCulture, $"{value:0.0} kg");

        public static string Money(double value) => value.ToString("0.00", CultureInfo.InvariantCulture);
    }
}
