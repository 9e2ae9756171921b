using Foramen.Engine.Light;
using Foramen.Journal.Bodies;

namespace Foramen.Field.Texts;

public static partial class Words
{
    /// <summary>Reading tones.</summary>
    public static class Meter
    {
        public const string Light = "Colour of the light";
        public const string LightHint = "The meter sees green, the paper blue: the same reading is worth up to two stops more in blue shade than in low sun.";
        public const string Touch = "Touch a tone on the photograph";
        public const string TouchDetail = "Arrow keys move the ring, Enter reads.";
        public const string NotAnchored = "This photograph does not say how it was exposed. Touch a middle tone, type your meter’s reading of it, and every other touch is a reading too.";
        public const string NoPhotograph = "No photograph: type what your meter says.";
        public const string NoKit = "This sheet has no camera or no paper that can be used; choose them on the bench.";
        public const string Name = "Name of the tone";
        public const string Wanted = "How it should come out";
        public const string Reading = "Reading";
        public const string ReadingHint = "EV 12.3 · 3200 cd/m2 · 80000 lx · f/16 1/125 s ISO 100";
        public const string Add = "Add this tone";
        public const string AddReading = "Add a reading by hand";
        public const string Read = "Take this reading";
        public const string Remove = "Remove";
        public const string Tones = "Tones";
        public const string Ladder = "Against what the paper holds";
        public const string LadderHint = "Stops from the mid-tone, as the paper sees them and where the sheet sees them. The solid part is what the paper holds, the light part what a flash adds.";
        public const string NoTones = "Touch or type at least one tone that matters, such as the mid-tone.";
        public const string Cancel = "Not this one";
        public const string Photograph = "Photograph of the subject; the ring shows where a tone is read";

        public static string Suggested(int number) => $"tone {number}";

        public static string Rendering(WantedRendering rendering) => rendering switch
        {
            WantedRendering.OpenShadow => "open shadow",
            WantedRendering.TexturedHighlight => "textured highlight",
            WantedRendering.MayBurn => "may burn",
            WantedRendering.MayBlock => "may block",
            _ => "mid",
        };

        /// <summary>In one word or two, where there is little room.</summary>
        public static string ShortRendering(WantedRendering rendering) => rendering switch
        {
            WantedRendering.OpenShadow => "shadow",
            WantedRendering.TexturedHighlight => "highlight",
            _ => Rendering(rendering),
        };

        public static string LightName(LightColour light) => char.ToUpperInvariant(light.Name[0]) + light.Name[1..];

        public static string Luminance(double candelas, ReadingLimit? limit) => limit switch
        {
            ReadingLimit.AtLeast => $"at least {Show(candelas)} cd/m²",
            ReadingLimit.AtMost => $"at most {Show(candelas)} cd/m²",
            _ => $"{Show(candelas)} cd/m²",
        };

        private static string Show(double candelas)
            => candelas.ToString(candelas < 10 ? "0.0" : "#,0", System.Globalization.CultureInfo.CurrentCulture);
    }
}
