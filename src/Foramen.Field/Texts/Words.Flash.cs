using System.Globalization;

namespace Foramen.Field.Texts;

public static partial class Words
{
    /// <summary>The Flash step.</summary>
    public static class Flash
    {
        public const string NoPlan = "Make a plan first; it says whether the sheet gets a flash, and how long.";
        public const string None = "This plan has no flash.";
        public const string Planned = "Planned flash";
        public const string PointAt = "Point the hole at";
        public const string PointedAt = "Pointed at";
        public const string Bright = "As bright as";
        public const string EvUnit = "EV at ISO 100";
        public const string Sun = "Never point the hole at the sun, and never look at the sun through a hole or a tube. Keep the sun off the front of the camera.";
        public const string TooShort = "This flash is too short for a hand. Point at something darker, such as a card in shade, and meter it.";
        public const string Start = "Start the flash";
        public const string StartDetail = "Uncover the hole with this touch";
        public const string Covered = "Hole is covered";
        public const string CoverNow = "Cover the hole now";
        public const string KeepStill = "Stay on the even surface until the end; the camera itself may move.";
        public const string WasOnTime = "I covered it on time";
        public const string Given = "flash given";
        public const string Unknown = "?";
        public const string PlanForIt = "Plan the exposure for this flash";
        public const string Skip = "Go on without a flash";

        public const string Card = "Card";
        public const string Wall = "Plain wall";
        public const string Cloud = "Clouded sky";
        public const string CardHowTo = "Hold a plain white or grey card before the hole so that it fills the whole view, evenly lit, without your shadow on it.";
        public const string WallHowTo = "Go so near to a plain, evenly lit wall that nothing else is in view.";
        public const string CloudHowTo = "Point up at a wholly clouded sky, with no roof or branch in view.";

        public static string Ev(double value) => value.ToString("0.0", CultureInfo.CurrentCulture).Replace('-', '−');

        public static string BrightWhy(double candelas) => string.Create(
            CultureInfo.CurrentCulture,
            $"The flash time was worked out for a surface of {candelas:0.##} cd/m². One step more on the meter wants half the time, one less twice.");

        public static string Rest(double seconds) => $"Give the rest, {Plan.TimeShown(seconds)}";

        public static string OffPlan(double given, double planned, bool canGiveRest) => string.Create(
            CultureInfo.CurrentCulture,
            $"The sheet got {Plan.TimeShown(given)} of flash, not {Plan.TimeShown(planned)} ({Math.Abs(Math.Log2(given / planned)):0.0} stops {(given > planned ? "more" : "less")}). {WhatNow(given > planned, canGiveRest)}");

        public static string After(double planned) => planned > 0
            ? $"Planned: {Plan.TimeShown(planned)}. Keep the hole covered until the camera stands and is aimed."
            : "Keep the hole covered until the camera stands and is aimed.";

        private static string WhatNow(bool more, bool canGiveRest) => more ? "It cannot be taken off: plan the exposure for it, or load a fresh sheet."
            : canGiveRest ? "Give the rest on the same surface, or plan the exposure for what it has."
            : "Plan the exposure for what it has.";
    }
}
