namespace Foramen.Field.Texts;

public static partial class Words
{
    /// <summary>About new versions and the network.</summary>
    public static class Update
    {
        public const string Ready = "A new version is ready.";
        public const string Use = "Start it now";
        public const string NotNow = "It can start when no sheet is running.";
        public const string Offline = "Works without a network";
        public const string NotYetOffline = "Still loading for use without a network; keep the page open a little.";
    }
}
