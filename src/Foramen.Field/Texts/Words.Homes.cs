using System.Globalization;
using Foramen.Journal.Sync;

namespace Foramen.Field.Texts;

public static partial class Words
{
    /// <summary>About the Home that keeps the record.</summary>
    public static class Homes
    {
        public const string Title = "Home";
        public const string None = "No Home keeps the journal behind this address. Hand on a copy from the Ledger now and then.";
        public const string Unknown = "Home has not been reached from here yet.";
        public const string Needed = "A Home is here. Pair this device with it, and its sheets are safe there too.";
        public const string Code = "Code";
        public const string CodeHint = "Shown at home, under Settings; good for ten minutes.";
        public const string CodeMissing = "Type the code that is shown at home.";
        public const string DeviceName = "This device's name";
        public const string DeviceHint = "So that you know it again at home.";
        public const string NameMissing = "Give this device a name.";
        public const string Pair = "Pair this device";
        public const string Leave = "End the pairing";
        public const string LeaveWhy = "The journal stays on both; only the way between them is closed.";
        public const string Meet = "Meet Home now";
        public const string Meeting = "Meeting Home…";
        public const string Waits = "Waits until the sheet in hand is done.";
        public const string AllAtHome = "Everything is at home.";
        public const string Away = "Home cannot be reached; it goes on by itself when it is there again.";
        public const string AddDevice = "Add a device";
        public const string Scan = "Scan this with the device, or open Home's address on it and type the code.";
        public const string Devices = "Paired devices";
        public const string NoDevices = "No device is paired yet.";
        public const string Remove = "Remove";
        public const string Removed = "removed";
        public const string LocalOnly = "Home serves this machine only. To pair phones, start it with --listen and --certificate, or with --address where a proxy stands before it.";

        public static string NotAtHome(int entries, int sheets) => sheets switch
        {
            0 when entries == 0 => AllAtHome,
            0 => entries == 1 ? "1 entry not yet at home." : string.Create(CultureInfo.CurrentCulture, $"{entries} entries not yet at home."),
            1 => "1 sheet not yet at home.",
            _ => string.Create(CultureInfo.CurrentCulture, $"{sheets} sheets not yet at home."),
        };

        public static string LastMet(string? when) => when is null ? "They have not met yet." : $"Last met {when}.";

        public static string DeviceLastMet(string name, string when) => $"{name}: last here {when}.";

        public static string Unsendable(int entries) => entries == 1
            ? "1 entry was not taken in at home: it cannot read it, or it is about somebody else's sheet. It stays on this device."
            : $"{entries} entries were not taken in at home: it cannot read them, or they are about somebody else's sheets. They stay on this device.";

        public static string Strange(int status) => $"Home answered with {status}; it may need an update.";

        public static string Trouble(HomeRefusedException trouble) => trouble.Why switch
        {
            HomeRefusal.Away => Away,
            HomeRefusal.CutShort => "The connection was cut; it goes on by itself where it was.",
            HomeRefusal.NotPaired => "Home does not know this device any more; pair it anew.",
            HomeRefusal.Busy => "Home is busy; this device tries again by itself.",
            HomeRefusal.Full => "Home has no room left; make room on its disk. Everything stays on this device.",
            _ => trouble.Message,
        };

        public static string RemoveDevice(string name) => $"Remove {name}";
    }
}
