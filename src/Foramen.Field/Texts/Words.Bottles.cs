using System.Globalization;
using Foramen.Engine.Bath;
using Foramen.Engine.Learning;
using Foramen.Engine.Quantities;
using Foramen.Field.Units;
using Foramen.Journal.Bodies;

namespace Foramen.Field.Texts;

public static partial class Words
{
    /// <summary>Bottles of developer and fixer on the bench.</summary>
    public static class Bottles
    {
        public const string Title = "Bottles";
        public const string None = "No bottle yet. Mix one and the app keeps its strength and its time.";
        public const string Add = "Mix a bottle";
        public const string Holds = "It holds";
        public const string Developer = "Developer";
        public const string Fixer = "Fixer";
        public const string Which = "Which fixer";
        public const string Rapid = "Rapid";
        public const string RapidFor = "Paper strength, about 2 min";
        public const string Strong = "Rapid, strong";
        public const string StrongFor = "Film strength, about 1 min";
        public const string Plain = "Plain";
        public const string PlainFor = "Hypo, about 8 min";
        public const string NameHint = "May stay empty";
        public const string Volume = "Working solution";
        public const string Covering = "Covers a sheet";
        public const string CoveringHint = "In your tank or tray";
        public const string Water = "Parts of water to one";
        public const string WaterHint = "0 if ready to use";
        public const string Temperature = "Temperature";
        public const string AtTwenty = "Its time at 20 °C";
        public const string AtTwentyHint = "Fresh, for your paper";
        public const string Mixed = "It is mixed";
        public const string Unknown = "The journal knows no such bottle.";
        public const string Strength = "Strength";
        public const string Limit = "too weak";
        public const string FreshMark = "fresh";
        public const string NextWhy = "From its strength and its temperature as last read. The bounds are what the gentlest and the harshest model make of what handbooks give; your own first tones narrow them.";
        public const string SheetsLeft = "Sheets left";
        public const string LeftWhy = "If the sheets and the topping up go on as they did. A sheet counts while the strength is above the limit, the liquid covers it, and handbooks know of bottles used that far.";
        public const string TopUp = "Top up";
        public const string Fresh = "Fresh, added";
        public const string Poured = "Poured away first";
        public const string PouredHint = "Into the waste container";
        public const string WriteTopUp = "It is topped up";
        public const string WriteWarmth = "That is its temperature";
        public const string Open = "It stands open now";
        public const string Close = "It is closed now";
        public const string Opened = "Open: it loses strength to the air.";
        public const string Discard = "Give it up";
        public const string DiscardSure = "Yes, it is waste now";
        public const string DiscardHow = "Keep it for the waste site; never into a drain or on the ground.";
        public const string Discarded = "This bottle was given up.";
        public const string Where = "Where the liquid went";
        public const string Now = "in it now";
        public const string Filled = "filled";
        public const string Added = "added";
        public const string Lost = "lost at transfers";
        public const string PouredAway = "poured away";
        public const string Past = "What went through";
        public const string Remarks = "To know";
        public const string MixingMore = "Before you mix";
        public const string Learned = "What your sheets say of it";
        public const string LearnedWhich = "Number by number";
        public const string LearnedWhy = "From the first tones you saw, in every bottle described like this one. Until they say enough, what handbooks and common practice have is used.";
        public const string Spent = "Spent: mix a fresh one. Used fixer carries silver: keep it for the waste site.";
        public const string Silver = "Silver in it";

        public static string UsualName(BottleContents contents) => contents == BottleContents.Fixer ? Fixer : Developer;

        public static string TooLittle(double volume, double covering) => string.Create(
            CultureInfo.InvariantCulture, $"{volume:0.#} ml do not cover a sheet, which takes {covering:0.#} ml; mix more.");

        public static string Percent(double part) => string.Create(CultureInfo.InvariantCulture, $"{part * 100:0} %");

        public static string Bounds(Spread<double> activity) => Math.Round(activity.Low * 100) == Math.Round(activity.High * 100)
            ? "of fresh"
            : string.Create(CultureInfo.InvariantCulture, $"of fresh, could be {activity.Low * 100:0} to {activity.High * 100:0} %");

        public static string NextSheetAt(string temperature) => $"Next sheet at {temperature}";

        public static string Time(Spread<Duration> time) => string.Create(
            CultureInfo.InvariantCulture, $"{time.Middle.Seconds:0} s ({time.Low.Seconds:0} to {time.High.Seconds:0})");

        public static string GaugeLabel(Spread<double> activity, double limit) => string.Create(
            CultureInfo.InvariantCulture,
            $"Strength {activity.Middle * 100:0} % of fresh, could be {activity.Low * 100:0} to {activity.High * 100:0} %; too weak below {limit * 100:0} %.");

        public static string Advice(BottleAction action, TopUp? topUp) => action switch
        {
            BottleAction.Use => "Use it as it is.",
            BottleAction.Extend => "Use it, with the longer time.",
            BottleAction.TopUp => string.Create(
                CultureInfo.InvariantCulture, $"Top it up: pour {topUp!.Pour.Millilitres:0} ml away, add {topUp.Fresh.Millilitres:0} ml fresh."),
            _ => "Mix a fresh one and keep this for the waste site.",
        };

        public static string Left(Spread<int> sheets) => sheets.Low >= Engine.Bath.SheetsLeft.Horizon
            ? "more than a day's"
            : sheets.Low == sheets.High
                ? $"{sheets.Middle}"
                : string.Create(CultureInfo.InvariantCulture, $"{Many(sheets.Middle)} ({Many(sheets.Low)} to {Many(sheets.High)})");

        public static string About(int sheets) => sheets switch
        {
            0 => "no more sheets",
            1 => "about 1 more sheet",
            >= 100 => $"{Many(sheets)} sheets",
            _ => $"about {sheets} more sheets",
        };

        public static string Card(Spread<double> activity, Spread<int> sheets, double millilitres) => string.Create(
            CultureInfo.InvariantCulture, $"{activity.Middle * 100:0} % of fresh · {About(sheets.Middle)} · {millilitres:0} ml");

        public static string Millilitres(double value) => $"{NumberText.Show(value, 1)} ml";

        public static string Through(double strength, double? seconds) => seconds is { } given
            ? string.Create(CultureInfo.InvariantCulture, $"{given:0} s at {strength * 100:0} %")
            : string.Create(CultureInfo.InvariantCulture, $"at {strength * 100:0} %");

        public static string NameOf(DeveloperParameter parameter) => parameter switch
        {
            DeveloperParameter.AppearanceFactor => "Full time over first tone",
            DeveloperParameter.Capacity => "A litre lasts for",
            DeveloperParameter.OpenLoss => "Lost in an open hour",
            _ => "Faster 10 °C warmer",
        };

        public static string ValueOf(LearnedParameter one) => one.IsAssumed
            ? $"{Valued(one.Parameter, one.Before)}, assumed"
            : $"{Valued(one.Parameter, one.Value.Middle)} ({Valued(one.Parameter, one.Value.Low)} to {Valued(one.Parameter, one.Value.High)})";

        public static string GramsPerLitre(double grams, double limit) => string.Create(
            CultureInfo.InvariantCulture, $"{grams:0.00} of {limit:0.0} g/l");

        private static string Valued(DeveloperParameter parameter, double value) => parameter switch
        {
            DeveloperParameter.Capacity => string.Create(CultureInfo.InvariantCulture, $"{value:0.0} m²"),
            DeveloperParameter.OpenLoss => string.Create(CultureInfo.InvariantCulture, $"{value * 100:0.0} %"),
            _ => string.Create(CultureInfo.InvariantCulture, $"{value:0.0}×"),
        };

        private static string Many(int sheets) => sheets >= 100
            ? "100 or more"
            : sheets.ToString(CultureInfo.InvariantCulture);
    }
}
