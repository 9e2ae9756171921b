using System.Globalization;
using Foramen.Journal.Bodies;
using Foramen.Journal.Kit;

namespace Foramen.Field.Texts;

public static partial class Words
{
    /// <summary>The card of one sheet.</summary>
    public static class Cards
    {
        public const string Title = "Sheet card";
        public const string Hint = "This sheet on paper: print this page, or save it as a PDF.";
        public const string WithPlace = "Say where it was made";
        public const string PlaceHint = "On the card, and in the picture that is handed on. Left out unless you tick it.";
        public const string HandOnPicture = "Hand on the picture";
        public const string PictureHint = "Time, f-number and date are written into it; what the phone wrote into it, its own place too, is taken out.";
        public const string NotHere = "The picture is not on this device.";
        public const string Subject = "The subject, as photographed";
        public const string Made = "How it was made";
        public const string Tones = "Tones";
        public const string Tone = "Tone";
        public const string Wanted = "Wanted";
        public const string PlannedDensity = "Density planned";
        public const string CameOut = "Came out";
        public const string Verdict = "Verdict";
        public const string NotJudged = "Not judged yet";
        public const string Day = "Hole opened";
        public const string Outing = "Outing";
        public const string Place = "Place";
        public const string Light = "Light";
        public const string Flash = "Flash";
        public const string Planned = "Time planned";
        public const string Open = "Time open";
        public const string Odds = "Odds stated";

        public static string? CameraLine(CameraDefinition? camera) => camera is null
            ? null
            : string.Create(
                CultureInfo.CurrentCulture,
                $"{camera.Name} · hole {camera.HoleDiameterMillimetres:0.00#} mm, {camera.FocalDistanceMillimetres:0.#} mm to the paper, f/{camera.FocalDistanceMillimetres / camera.HoleDiameterMillimetres:0}");

        public static string? PaperLine(PaperDefinition? paper) => paper is null ? null : $"{paper.Name} · {(paper.Kind == "negative" ? "paper negative" : "direct positive")}";

        public static string? Where(PlaceDefined? place) => place is null ? null : place is { LatitudeDegrees: { } latitude, LongitudeDegrees: { } longitude }
            ? string.Create(CultureInfo.CurrentCulture, $"{place.Name} · {Math.Abs(latitude):0.####}° {(latitude < 0 ? "S" : "N")}, {Math.Abs(longitude):0.####}° {(longitude < 0 ? "W" : "E")}")
            : place.Name;

        public static string Bath(BathKind bath) => bath switch
        {
            BathKind.Developer => "Developed",
            BathKind.Rinse => "Rinsed",
            BathKind.Stop => "Stopped",
            BathKind.Fix => "Fixed",
            _ => "Washed",
        };

        public static string Rendering(WantedRendering wanted) => wanted switch
        {
            WantedRendering.OpenShadow => "dark, with detail",
            WantedRendering.Mid => "in the middle",
            WantedRendering.TexturedHighlight => "light, with detail",
            WantedRendering.MayBurn => "may burn",
            _ => "may block",
        };

        public static string Outcome(JudgedTone? judged) => judged switch
        {
            null => "",
            { Fate: ToneFate.Burnt } => "burnt out",
            { Fate: ToneFate.Blocked } => "blocked up",
            { LighterByStops: > 0.05 } => string.Create(CultureInfo.CurrentCulture, $"{judged.LighterByStops:0.0} stops too light"),
            { LighterByStops: < -0.05 } => string.Create(CultureInfo.CurrentCulture, $"{-judged.LighterByStops:0.0} stops too dark"),
            _ => "as wanted",
        } + (judged?.MeasuredDensity is { } density ? string.Create(CultureInfo.CurrentCulture, $" (density {density:0.00})") : "");

        public static string Density(double? density) => density?.ToString("0.00", CultureInfo.CurrentCulture) ?? "";

        public static string Wrong(IReadOnlyList<MishapCause> causes) => $"What went wrong: {string.Join(", ", causes.Select(cause => Judge.Cause(cause).ToLowerInvariant()))}.";
    }
}
