namespace Foramen.Field.Texts;

public static partial class Words
{
    /// <summary>Words of the controls.</summary>
    public static class Controls
    {
        public const string Less = "less";
        public const string More = "more";
        public const string LadderTitle = "Tones against what paper and flash can hold, in stops";
        public const string Lighter = "lighter";
        public const string Darker = "darker";
    }
}
