using System.Globalization;
using Foramen.Journal.Listing;

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
        public const string More = "Show more sheets";
        public const string FindOrGroup = "Find or group";
        public const string Find = "Find sheets";
        public const string FindHint = "Words from name, note, place, camera, paper or light";
        public const string Which = "Which";
        public const string All = "All";
        public const string Keepers = "Keepers";
        public const string Others = "Not kept";
        public const string By = "Together by";
        public const string NotSaid = "Not said";
        public const string Contact = "Contact sheet";
        public const string Table = "As a table (CSV)";
        public const string ContactHint = "All prints on paper: print this page, or save it as a PDF.";
        public const string PrintIt = "Print";
        public const string NoPicture = "no picture";
        public const string Unplanned = "No plan yet";

        public static string TookIn(int count) => count == 1 ? "1 entry taken in." : string.Create(CultureInfo.CurrentCulture, $"{count} entries taken in.");

        public static string Handed(Device.HandedOn how) => how switch
        {
            Device.HandedOn.Shared => "Handed on.",
            Device.HandedOn.Saved => "Saved with your downloads.",
            _ => "Not handed on.",
        };

        public const string ByDate = "Date";
        public const string ByPaper = "Paper";
        public const string ByPlace = "Place";
        public const string ByLight = "Light";

        public static string Found(int shown, int all)
            => string.Create(CultureInfo.CurrentCulture, $"{(shown == all ? "" : $"{shown} of ")}{all} {(all == 1 ? "sheet" : "sheets")}");

        public static string Tally(IReadOnlyList<LedgerRow> rows)
            => string.Create(CultureInfo.CurrentCulture, $"{rows.Count(row => row.Keeper == true)} kept of {rows.Count(row => row.Keeper is not null)} judged");

        public static string Name(LedgerRow row) => row.Name is { Length: > 0 } name ? name : Sheets.Numbered(row.Number);

        public static string Line(LedgerRow row) => string.Join(" · ", new[]
        {
            row.LoadedAt?.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture),
            row.OpenSeconds is { } open ? Time.TimeText.Spoken(open) : row.PlannedSeconds is { } planned ? $"planned {Time.TimeText.Spoken(planned)}" : Unplanned,
            row.FlashSeconds > 0 ? $"flash {Plan.TimeShown(row.FlashSeconds.Value)}" : null,
            row.Light,
            row.Odds is { } odds ? $"odds {Plan.Percent(odds)}" : null,
            row.Keeper switch { true => Sheets.Keeper, false => Sheets.NotKept, null => null },
        }.OfType<string>());

        public static string BadLine(int number, string sentence) => string.Create(CultureInfo.CurrentCulture, $"Line {number}: {sentence}");

        public static string Unreadable(int count) => string.Create(
            CultureInfo.CurrentCulture, $"{count} stored {(count == 1 ? "entry" : "entries")} could not be read; kept as they are.");
    }
}
