namespace Foramen.Field.Texts;

public static partial class Words
{
    /// <summary>What every step that counts time down says.</summary>
    public static class Timed
    {
        public const string Left = "left";
        public const string Over = "over";
        public const string ClockBack = "The clock of this device was set back, so the time so far is not known; go by your watch.";

        public static string Announce(string left) => $"{left} left";
    }
}
