using System.Globalization;

namespace Foramen.Field.Texts;

public static partial class Words
{
    /// <summary>The Ledger place.</summary>
    public static class Records
    {
        public const string Title = "Ledger";
        public const string None = "No sheet yet. Every sheet you load is kept here, with its plan and how it came out.";
        public const string HandOn = "Hand on a copy";
        public const string Import = "Take in a copy";
        public const string WithoutPlaces = "Leave places out";
        public const string PlacesHint = "Keep them in for a copy of your own.";
        public const string Damaged = "Some lines could not be read and were left out:";
        public const string Nothing = "Everything in the file is here already.";
        public const string Unplanned = "No plan yet";

        public static string TookIn(int count) => count == 1 ? "1 entry taken in." : string.Create(CultureInfo.CurrentCulture, $"{count} entries taken in.");

        public static string Handed(Device.HandedOn how) => how switch
        {
            Device.HandedOn.Shared => "Handed on.",
            Device.HandedOn.Saved => "Saved with your downloads.",
            _ => "Not handed on.",
        };

        public static string BadLine(int number, string sentence) => string.Create(CultureInfo.CurrentCulture, $"Line {number}: {sentence}");

        public static string Unreadable(int count) => string.Create(
            CultureInfo.CurrentCulture, $"{count} stored {(count == 1 ? "entry" : "entries")} could not be read; kept as they are.");
    }
}
