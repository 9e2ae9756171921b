namespace Foramen.Field.Texts;

public static partial class Words
{
    /// <summary>The settings page.</summary>
    public static class Choices
    {
        public const string Look = "Look";
        public const string Paper = "Paper";
        public const string PaperFor = "for sun";
        public const string Night = "Night";
        public const string NightFor = "for dusk";
        public const string Red = "Dim red";
        public const string RedFor = "for the dark";
        public const string RedCaution = "A phone is no safelight. Even dim red fogs paper: keep the screen away from bare sheets and turned down.";
        public const string Units = "Units";
        public const string Metric = "Metric";
        public const string MetricFor = "mm, m, °C";
        public const string Imperial = "Imperial";
        public const string ImperialFor = "in, ft, °F";
        public const string Signals = "Signals";
        public const string Sound = "Sound";
        public const string Vibration = "Vibration";
        public const string TrySignal = "Try the end signal";
        public const string Keeping = "Keeping";
        public const string NotKept = "This browser does not keep settings; they last until the page is closed.";
    }
}
