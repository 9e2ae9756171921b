using System.Globalization;

namespace Foramen.Field.Texts;

public static partial class Words
{
    /// <summary>About what is kept on the device.</summary>
    public static class Storage
    {
        public const string Ask = "Ask the browser to keep it";
        public const string AskWhy = "Until the browser promises to keep the journal, it may clear it when the device runs short of room. Installing Foramen on the home screen helps too.";
        public const string Kept = "The browser has promised to keep the journal.";
        public const string NotKept = "The browser has not promised to keep the journal. Hand on a copy from the Ledger now and then.";
        public const string NearlyFull = "The room on this device is nearly used up. Hand on a copy from the Ledger, then make room.";
        public const string TryAgain = "Try again";
        public const string NotSaved = "Not saved.";

        public const string Unavailable = "This browser keeps no data for this page (a private window, or storage switched off); open Foramen in an ordinary window.";
        public const string Full = "There is no room left on this device, so nothing was saved; make room and try again.";
        public const string Blocked = "Another tab holds an older version open; close the other tabs and try again.";
        public static string FailedAs(string said) => said.Length == 0 ? "The browser could not save this; try again." : $"The browser could not save this ({said}); try again.";

        public static string Conflicts(int count) => string.Create(
            CultureInfo.CurrentCulture, $"{(count == 1 ? "One thing" : $"{count} things")} in the journal cannot all be right. Nothing was dropped.");

        public static string Room(double usedBytes, double quotaBytes) => string.Create(
            CultureInfo.CurrentCulture, $"{usedBytes / 1e6:0.#} MB of {quotaBytes / 1e6:0} MB in use.");

        public static string Undecodable(string mediaType) =>
            $"This browser cannot read the picture ({mediaType}); choose a JPEG, PNG or WebP file.";
    }
}
