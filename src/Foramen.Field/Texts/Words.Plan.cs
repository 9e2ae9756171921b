using System.Globalization;
using Foramen.Engine.Learning;
using Foramen.Field.Time;
using Foramen.Journal.Bodies;

namespace Foramen.Field.Texts;

public static partial class Words
{
    /// <summary>Deciding time and flash.</summary>
    public static class Plan
    {
        public const string NoTones = "Read at least one tone first; the plan places tones.";
        public const string Working = "Working out the print…";
        public const string Print = "The predicted print";
        public const string NoPrint = "Without a photograph whose luminances are known there is no print to show; the numbers stand all the same.";
        public const string Time = "Open the hole for";
        public const string Flash = "Flash before it";
        public const string NoFlash = "no flash";
        public const string Odds = "Odds of a keeper";
        public const string OddsWhy = "A keeper has every tone that matters inside its band. Nothing in it is cut off, blurred or spoilt. The odds come from what is known of paper, meter, light, hole and bath; most spreads are assumptions until your own sheets say otherwise.";
        public const string Recommended = "Back to the recommendation";
        public const string Keep = "Keep this plan";
        public const string Tones = "How the tones come out";
        public const string FlashAt = "What the flash is pointed at";
        public const string FlashAtHint = "Meter the surface and type the reading. Never point at the sun.";
        public const string Assumed = "assumed: a white card in the light of the mid-tone";
        public const string Two = "A second sheet?";
        public const string Mask = "Mask in the light";
        public const string NoMask = "none";
        public const string MaskOnly = "The mask is in the print only; odds and tones are worked out without it.";
        public const string Lost = "What is lost";

        public static string TimeShown(double seconds)
            => seconds < 10 ? string.Create(CultureInfo.CurrentCulture, $"{seconds:0.0} s") : TimeText.Spoken(seconds);

        public static string FlashShown(double seconds, double fraction) => seconds <= 0
            ? NoFlash
            : string.Create(CultureInfo.CurrentCulture, $"{TimeShown(seconds)} · {100 * fraction:0}\u00A0%");

        public static string FlashHas(double seconds, double fraction)
            => string.Create(CultureInfo.CurrentCulture, $"The sheet already has its flash: {TimeShown(seconds)} · {100 * fraction:0}\u00A0%. Only the time is left to plan.");

        public static string FlashGain(double stops)
            => string.Create(CultureInfo.CurrentCulture, $"Percent of the first visible tone. Shows tones {stops:0.0} stops fainter.");

        public static string MostlyLostTo(OddsPart part) => $"most is lost to {Learned.Part(part)}";

        public static string Without(OddsPart part, double odds) => string.Create(CultureInfo.CurrentCulture, $"With nothing lost to {Learned.Part(part)}: {100 * odds:0} %");

        public static string Spread(double stops) => string.Create(CultureInfo.CurrentCulture, $"The exposure is known to ± {stops:0.0} stops (1 sd).");

        public static string Fate(ToneFate fate) => fate switch
        {
            ToneFate.TooDark => "too dark",
            ToneFate.TooLight => "too light",
            ToneFate.Burnt => "burnt",
            ToneFate.Blocked => "blocked",
            _ => "as wanted",
        };

        public static string Density(double density, double spread) => string.Create(CultureInfo.CurrentCulture, $"density {density:0.00} ± {spread:0.00}");

        public static string Held(bool mirrored) => mirrored
            ? "As you will hold it: a direct positive shows the scene mirrored, left for right."
            : "As you will hold it: the print made from the negative.";

        public static string Unknown(double share) => string.Create(CultureInfo.CurrentCulture, $"{100 * share:0}\u00A0% of the sheet lies outside the photograph and is hatched.");

        public static string TwoSheets(double first, double second, double odds)
            => string.Create(CultureInfo.CurrentCulture, $"{TimeShown(first)} and {TimeShown(second)}: {100 * odds:0} % that one of the two is a keeper.");

        public static string Percent(double fraction) => string.Create(CultureInfo.CurrentCulture, $"{100 * fraction:0}\u00A0%");
    }
}
