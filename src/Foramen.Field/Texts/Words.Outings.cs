namespace Foramen.Field.Texts;

public static partial class Words
{
    /// <summary>The Outing place.</summary>
    public static class Outings
    {
        public const string Title = "Outing";
        public const string None = "No outing yet. Start one when you set off; every sheet of the day is kept with it.";
        public const string NewName = "Name of the outing";
        public const string NewNameHint = "Where to, or what for";
        public const string Start = "Start an outing";
        public const string Today = "On the way";
        public const string Sheets = "Sheets";
        public const string NoSheets = "No sheet yet.";
        public const string NewSheet = "New sheet";
        public const string Earlier = "Earlier outings";
        public const string Nameless = "Sheets without an outing";
        public const string EmptyName = "The outing needs a name: a word or two.";
    }
}
