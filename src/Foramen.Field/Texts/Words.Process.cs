using System.Globalization;
using Foramen.Field.Time;
using Foramen.Field.Units;
using Foramen.Journal.Bodies;

namespace Foramen.Field.Texts;

public static partial class Words
{
    /// <summary>The Process step.</summary>
    public static class Process
    {
        public const string InDeveloper = "in the developer";
        public const string Temperature = "Developer";
        public const string Cooler = "cooler";
        public const string Warmer = "warmer";
        public const string Expected = "Could be";
        public const string ExpectedWhy = "Developers differ in how much warmth speeds them: doubled for every 10 °C is the middle of what handbooks give, 1.9 to 2.5 times the bounds. Fresh developer is taken for granted.";
        public const string Start = "Sheet is in the developer";
        public const string StartDetail = "Counting starts with this touch";
        public const string NotExposed = "The journal does not know this sheet as exposed and closed. You can process it all the same.";
        public const string Order = "Baths";
        public const string AfterDeveloper = "After the developer";
        public const string Changes = "Changes of water";
        public const string WentOnTime = "It went on when the time was over";
        public const string FixHint = "Rapid fixer needs 1 to 2 min, plain fixer 5 to 10.";
        public const string WashHint = "Two minutes each. Changing the water counts for more than its amount; fibre paper needs more.";
        public const string BeforeShort = "Gloves on, eyes guarded, fresh air. The safety data sheets of your chemicals come first.";
        public const string BeforeMore = "More to mind";
        public const string WhenWrong = "If something goes wrong";
        public const string Finish = "Wash is over";
        public const string Through = "The sheet is through. Look at it in good light once it has dried: wet prints look lighter and richer.";
        public const string Others = "Also running";
        public const string Afterwards = "Take used fixer, and the first wash water, home: they carry silver. Follow local rules. Wash your hands.";

        public const string Bottle = "Bottle";
        public const string OtherBottle = "Another, not in the journal";
        public const string ToTheBottle = "To the bottle";
        public const string FirstTone = "First tone is seen";
        public const string FirstToneHint = "Only if you can watch the sheet. It shows how strong the bottle is.";
        public const string TenthUsual = "Usual is a tenth fresh after each sheet, and about as much poured away to make room.";
        public const string Lost = "Lost at the transfer";
        public const string ColourNow = "The developer looks like";

        public static string FixerAtTwenty(string twenty) => $"Fixer at {twenty}";

        public static string FixerInTheCold(string celsius, double seconds) => $"At {celsius} that is {Time.TimeText.Spoken(seconds)}: cold fixer is slower.";

        /// <summary>What must be known before the first bottle is opened.</summary>
        public static IReadOnlyList<string> Before { get; } =
        [
            "Guard your eyes when you pour; if it splashes in an eye, rinse with clean water for 15 minutes and get help.",
            "No food or drink beside the baths. Never keep chemicals in drinking bottles.",
            "Acid into water, never the other way. Never mix any bath with bleach or a household cleaner.",
            "A phone is no safelight: keep its light from the open paper.",
        ];

        public static string Name(BathKind bath) => bath switch
        {
            BathKind.Developer => "Developer",
            BathKind.Rinse => "Rinse",
            BathKind.Stop => "Stop bath",
            BathKind.Fix => "Fixer",
            _ => "Wash",
        };

        public static string ShortName(BathKind bath) => bath == BathKind.Stop ? "Stop" : Name(bath);

        public static string Into(BathKind next) => next switch
        {
            BathKind.Rinse => "Now in the rinse",
            BathKind.Stop => "Now in the stop bath",
            BathKind.Fix => "Now in the fixer",
            _ => "Now in the wash",
        };

        public static string NextSettings(BathKind next) => $"Set what comes next: {Name(next).ToLowerInvariant()}";

        public const string Move = "Rock it";
        public const string Rest = "Let it stand";
        public const string FreshWater = "Fresh water, rock it";
        public const string Drain = "Drain, then move on";

        public static string Caution(BathKind bath) => bath switch
        {
            BathKind.Developer => "Gloves: developer can bring on an allergy that stays. Off the skin, out of the eyes.",
            BathKind.Stop => "Acid into water, never water into acid. Stay upwind of the fumes.",
            BathKind.Rinse => "This water carries developer: collect it with the rest.",
            BathKind.Fix => "Never mix fixer with bleach, household cleaner or acid: it gives off choking gas. Used fixer carries silver: collect it, never pour it out on the ground, and follow local rules.",
            _ => "The first changes of water carry fixer and silver: collect them too.",
        };

        public static string Taken(string sheet) => $"{sheet} is in this bottle now. One sheet at a time.";

        public static string TopUpTitle(string bottle) => $"Top up: {bottle}";

        public static string ToppedUp(double millilitres, double strength) => string.Create(
            CultureInfo.InvariantCulture, $"Topped up: {millilitres:0.#} ml at {strength * 100:0} % of fresh.");

        public static string ByFirstTone(double seconds, double planned) => string.Create(
            CultureInfo.InvariantCulture, $"By the first tone it wants {seconds:0} s in all; {planned:0} s were planned.");

        public static string GoByFirstTone(double seconds) => string.Create(CultureInfo.InvariantCulture, $"Make it {seconds:0} s");

        public static string FixerLeft(string bottle, int sheets) => sheets == 0
            ? $"{bottle} is spent: this sheet will not keep. Mix a fresh one."
            : $"{bottle}: {Bottles.About(sheets)}.";

        public static string NotThatMuch(double millilitres) => string.Create(
            CultureInfo.InvariantCulture, $"Only {millilitres:0.#} ml are in the bottle; pour less.");

        public static string NoRoom(double over) => string.Create(
            CultureInfo.InvariantCulture, $"There is no room for that; pour {over:0.#} ml more away first, or add less.");

        public static string Colour(DeveloperColour colour) => colour switch
        {
            DeveloperColour.Clear => "Water",
            DeveloperColour.Straw => "Straw",
            DeveloperColour.Amber => "Tea",
            _ => "Coffee",
        };

        public static string AtTwenty(string twenty) => $"Its time at {twenty}";

        public static string Degrees(double celsius, UnitSystem units) => units == UnitSystem.Imperial
            ? string.Create(CultureInfo.CurrentCulture, $"{(celsius * 1.8) + 32:0.#} °F")
            : string.Create(CultureInfo.CurrentCulture, $"{celsius:0.#} °C");

        public static string Range(double low, double high) => Math.Round(low) == Math.Round(high)
            ? string.Create(CultureInfo.CurrentCulture, $"{low:0}")
            : string.Create(CultureInfo.CurrentCulture, $"{low:0} to {high:0}");

        public static string ChangesOf(double changes) => string.Create(CultureInfo.CurrentCulture, $"{changes:0} × 2 min");

        public static string OfPlanned(double seconds) => $"of {TimeText.Spoken(seconds)}";
    }
}
