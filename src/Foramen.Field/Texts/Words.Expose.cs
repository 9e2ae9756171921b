using System.Globalization;
using Foramen.Field.Device;
using Foramen.Journal.Bodies;

namespace Foramen.Field.Texts;

public static partial class Words
{
    /// <summary>The Expose step: the tally.</summary>
    public static class Expose
    {
        public const string Open = "Open the hole";
        public const string Close = "Hole is closed";
        public const string Reopen = "Open it again";
        public const string Left = "left in this light";
        public const string Over = "over";
        public const string Done = "Close the hole now";
        public const string Closed = "Closed";
        public const string Planned = "Planned";
        public const string OpenFor = "Open for";
        public const string OpenDetail = "The tally starts with this touch";
        public const string MeteredIn = "The light when you metered";
        public const string LightNow = "Light";
        public const string CoveredMark = "– –";
        public const string Light = "The light now";
        public const string NewReading = "New reading";
        public const string ChangeLabel = "Light against the metered light";
        public const string ChangeUnit = "stops";
        public const string ChangeHint = "Minus is darker: −2 for a quarter of the light.";
        public const string Take = "Take this reading";
        public const string NoPlan = "Make a plan first; the tally counts towards its time.";
        public const string Returned = "You were away. What did the light do meanwhile?";
        public const string Same = "Stayed the same";
        public const string WhenAgo = "How long ago did it change?";
        public const string ClockBack = "The clock of this device was set back during the exposure. The tally counts that stretch as nothing, so the hole has been open longer than it shows; judge by your watch.";
        public const string Spread = "The estimate itself: the light, the paper and the failure of slow light are never known exactly.";
        public const string Sun = "Never look at the sun through the hole, a tube or any sighting aid.";

        public static string Word(LightWord word) => word switch
        {
            LightWord.Sun => "Sun",
            LightWord.ThinCloud => "Thin cloud",
            LightWord.Cloud => "Cloud",
            LightWord.Covered => "Covered",
            _ => "Reading",
        };

        public static string StopsOf(double stops) => Math.Abs(stops) < 0.05
            ? "as metered"
            : string.Create(CultureInfo.CurrentCulture, $"{(stops > 0 ? "+" : "−")}{Math.Abs(stops):0.#} {(Math.Abs(Math.Abs(stops) - 1) < 0.05 ? "stop" : "stops")}");

        public static string Announce(string left) => $"{left} left";

        public static string Progress(double progress) => string.Create(CultureInfo.CurrentCulture, $"{100 * progress:0} % of the plan");

        public static string Awake(WakeState state) => state switch
        {
            WakeState.Held => "Screen stays awake",
            WakeState.Refused => "The browser lets the screen sleep; touch it now and then. Nothing is lost if it sleeps.",
            WakeState.Missing => "This browser cannot keep the screen awake; touch it now and then. Nothing is lost if it sleeps.",
            _ => "",
        };

        public static string OverOrUnder(double stops) => Math.Abs(stops) < 0.05
            ? "On the plan."
            : string.Create(CultureInfo.CurrentCulture, $"{Math.Abs(stops):0.0} stops {(stops > 0 ? "over" : "under")} the plan.");
    }
}
