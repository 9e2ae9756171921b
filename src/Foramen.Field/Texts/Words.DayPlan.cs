using System.Globalization;
using Foramen.Engine.Exposure;
using Foramen.Field.Time;

namespace Foramen.Field.Texts;

public static partial class Words
{
    /// <summary>A day of sheets, and whether to wait for the sun.</summary>
    public static class DayPlan
    {
        public const string Title = "The day's plan";
        public const string Open = "Plan the day";
        public const string Make = "Plan it";
        public const string From = "From";
        public const string To = "All done by";
        public const string HourHint = "Such as 08:00";
        public const string Cloud = "Chance of cloud";
        public const string Sheets = "Sheets in the box";
        public const string Each = "Sheets at each place";
        public const string NoHour = "A time such as 08:00 is needed.";
        public const string EndsFirst = "The day ends before it begins.";
        public const string NoPlaces = "No place has coordinates and a bearing yet; complete one first.";
        public const string Nothing = "No sheet fits into this day: no window is long enough.";
        public const string LeftOut = "No room for";
        public const string Undescribed = "Not described enough";
        public const string Assumed = "Set-up 10 minutes, loading and flash 2, processing 10 for each sheet, walking 4 km in an hour along a straight line; under a clear sky.";
        public const string WaitTitle = "Should I wait?";
        public const string SunIs = "The sun is";
        public const string Out = "Out";
        public const string Hidden = "Behind cloud";
        public const string For = "Since";
        public const string Needs = "The exposure needs";
        public const string Wait = "I could wait";
        public const string Ask = "What are the odds?";
        public const string OpenNow = "Open now: sun to the end";
        public const string WaitFor = "Wait for an unbroken sun";
        public const string Gather = "Open now, cover in every cloud";
        public const string WaitWhy = "Suns and clouds are taken to last as long as today's did on average, mixed with a first guess of 5 minutes each; each ends as suddenly as it likes. No forecast.";

        public static string Seen(int suns, int clouds) => string.Create(
            CultureInfo.CurrentCulture, $"Today's tallies saw {suns} {(suns == 1 ? "sun" : "suns")} and {clouds} {(clouds == 1 ? "cloud" : "clouds")} from beginning to end.");

        public static string Mean(double sunSeconds, double cloudSeconds) => $"A sun lasts about {TimeText.Spoken(sunSeconds)}, a cloud about {TimeText.Spoken(cloudSeconds)}.";

        public static string Hope(int sheets, double hoped) => string.Create(
            CultureInfo.CurrentCulture, $"{sheets} {(sheets == 1 ? "sheet" : "sheets")}, {hoped:0.0} of them in sun on average");

        public static string Step(OutingStep step) => step.Kind switch
        {
            OutingStepKind.Walk => $"Walk to {step.Place}",
            OutingStepKind.SetUp => $"Set up at {step.Place}",
            OutingStepKind.Wait => "Wait for the light",
            OutingStepKind.Flash => $"Load and flash sheet {step.Sheet}",
            OutingStepKind.Expose => $"Expose sheet {step.Sheet}",
            _ => $"Process sheet {step.Sheet}",
        };

        public static string SunOdds(double fraction) => string.Create(CultureInfo.CurrentCulture, $"sun {100 * fraction:0} %");

        public static string Percent(double fraction) => string.Create(CultureInfo.CurrentCulture, $"{100 * fraction:0} %");
    }
}
