namespace Foramen.Field.Texts;

public static partial class Words
{
    /// <summary>The Sheet place.</summary>
    public static class Sheets
    {
        public const string Title = "Sheet";
        public const string None = "No sheet in hand. A sheet is one piece of paper and all that happens to it.";
        public const string Start = "New sheet";
        public const string Another = "Somebody else's sheet";
        public const string Running = "Running";
        public const string InHand = "In hand";
        public const string Camera = "Camera";
        public const string Paper = "Paper";
        public const string NoCamera = "No camera is on the bench yet.";
        public const string NoPaper = "No paper is on the bench yet.";
        public const string ToBench = "Define it on the Bench";
        public const string Name = "Name of the sheet";
        public const string NameHint = "May stay empty";
        public const string Load = "Load the sheet";
        public const string Keeper = "Keeper";
        public const string NotKept = "Not a keeper";

        public static string TimeIsOver(string sheet, string what) => $"{sheet}: the time of {what} is over.";

        public static string Numbered(int number) => $"Sheet {number}";
    }
}
