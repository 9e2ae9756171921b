using System.Globalization;
using Foramen.Engine.Exposure;
using Foramen.Field.Time;
using Foramen.Field.Units;
using Foramen.Journal.Kit;

namespace Foramen.Field.Texts;

public static partial class Words
{
    /// <summary>What moves: marked on the photograph, drawn on the print, touched in the tally.</summary>
    public static class Motions
    {
        public const string Title = "What moves";
        public const string About = "A long exposure turns walkers into nothing and wheels into discs. Mark what moves, and the predicted print shows it.";
        public const string Add = "Mark something that moves";
        public const string DragOverIt = "Drag over what moves, then say how.";
        public const string DragAgain = "Drag over it again, now that it is large.";
        public const string SeeCloser = "Look closer";
        public const string SeeAll = "Show the whole photograph";
        public const string PlaceMissing = "Mark where it is: drag over it on the photograph.";
        public const string Unfinished = "Keep what you are marking, or leave it, before you go on.";
        public const string Name = "What it is";
        public const string NameMissing = "Say what it is, in a word or two.";
        public const string How = "How it moves";
        public const string Keep = "Keep this";
        public const string Cancel = "Leave it";
        public const string Change = "Change";
        public const string Remove = "Remove";
        public const string Turn = "One turn takes";
        public const string Way = "It turns";
        public const string Clockwise = "With the clock";
        public const string Anticlockwise = "Against it";
        public const string Reach = "Sways to each side, of the mark’s width";
        public const string Swing = "To and fro takes";
        public const string Crossing = "Drifts through the mark in";
        public const string CrossingHint = "Watch a wisp or a leaf from one side of the mark to the other.";
        public const string Direction = "It goes";
        public const string Across = "Across";
        public const string UpOrDown = "Up or down";
        public const string WidthOf = "Width of one";
        public const string Speed = "Speed across your view";
        public const string Distance = "Distance";
        public const string Lighter = "Against what is behind";
        public const string Number = "How many during the exposure";
        public const string Candelas = "Light towards you";
        public const string CandelasHint = "A bulb of a lamp string gives some 10 cd, a cycle lamp 50, a car’s head lamp at its brightest 10\u00A0000 and more (common practice, no source).";
        public const string Part = "Only for a part of the exposure";
        public const string From = "Begins after";
        public const string To = "Stops after";
        public const string OfExposure = "% of it";
        public const string EndsBefore = "It stops before it begins; say a later part.";
        public const string FromWhat = "the part after which it begins";
        public const string ToWhat = "the part after which it stops";
        public const string TurnWhat = "the time of a turn";
        public const string ReachWhat = "how far it sways";
        public const string SwingWhat = "the time of a swing";
        public const string CrossingWhat = "the time to drift through";
        public const string WidthWhat = "the width of what passes";
        public const string SpeedWhat = "the speed";
        public const string NumberWhat = "the number";
        public const string CandelasWhat = "the lamp’s light";

        public const string OnPrint = "The print";
        public const string WithMotion = "With what moves";
        public const string AsStill = "As if all stood";
        public const string Limits = "What the photograph does not show is guessed: what is behind something that goes away is filled in from around it, and what shows between spokes turns with them. A wheel that is partly hidden is drawn as if it were not.";

        public const string Moves = "moves";
        public const string Stands = "stands";
        public const string Gone = "gone";
        public const string There = "there";
        public const string InTally = "What moves now";
        public const string InTallyHint = "Touch it when it starts or stops; the print is reckoned from that afterwards.";

        public static string HowWord(string how) => how switch
        {
            MotionHow.Turns => "Turns, as a wheel",
            MotionHow.GoesAway => "Goes away, or comes back",
            MotionHow.Passes => "Others pass here",
            MotionHow.Sways => "Sways, as leaves or waves",
            MotionHow.Flows => "Flows, as clouds or water",
            MotionHow.Lamp => "A lamp goes through",
            _ => how,
        };

        public static string HowHint(string how) => how switch
        {
            MotionHow.Turns => "The ellipse that fits into the mark turns.",
            MotionHow.GoesAway => "What the photograph shows here is gone while it moves: a walker, a barge, a lift bridge.",
            MotionHow.Passes => "People or cycles that the photograph does not show cross the mark.",
            MotionHow.Sways => "Everything in the mark goes to and fro.",
            MotionHow.Flows => "Everything in the mark drifts through it, and more of the same follows.",
            MotionHow.Lamp => "At dusk and night: along the middle of the mark.",
            _ => "",
        };

        public static string Stops(double stops) => Math.Abs(stops) < 0.05
            ? "as light"
            : string.Create(CultureInfo.CurrentCulture, $"{Math.Abs(stops):0.#} {(Math.Abs(stops) is > 0.95 and < 1.05 ? "stop" : "stops")} {(stops < 0 ? "darker" : "lighter")}");

        /// <summary>What is left of it on the print.</summary>
        public static string Left(string how, MotionVerdict verdict) => (how, verdict) switch
        {
            (MotionHow.Turns, MotionVerdict.Vanishes) => "an even disc",
            (MotionHow.Turns, MotionVerdict.Ghost) => "a disc with traces of spokes",
            (MotionHow.Turns, _) => "as if it stood",
            (MotionHow.GoesAway, MotionVerdict.Vanishes) => "nothing left",
            (MotionHow.GoesAway, MotionVerdict.Ghost) => "a ghost, seen through",
            (MotionHow.GoesAway, _) => "stays in the picture",
            (MotionHow.Passes, MotionVerdict.Vanishes) => "nothing left",
            (MotionHow.Passes, MotionVerdict.Ghost) => "a faint band",
            (MotionHow.Passes, _) => "stays in the picture",
            (MotionHow.Lamp, MotionVerdict.Vanishes) => "no trace",
            (MotionHow.Lamp, _) => "a line of light",
            (_, MotionVerdict.Vanishes) => "smooth",
            (_, MotionVerdict.Ghost) => "softened",
            _ => "as sharp as it stands",
        };

        public static string Turns(double turns) => string.Create(CultureInfo.CurrentCulture, $"{turns:0.#} {(Math.Abs(turns - 1) < 0.05 ? "turn" : "turns")}");

        public static string Differences(double still, double moved) => string.Create(
            CultureInfo.CurrentCulture, $"stands out by {moved:0.00} in density, {still:0.00} if it stood");

        public static string StandToShow(double seconds) => $"To be seen, one must stand still for {TimeText.Spoken(Math.Ceiling(seconds))}.";

        public static string HideBy(double? seconds, double? holeMillimetres, double? coverSeconds, double? flashFraction) => string.Join(' ', new[]
        {
            seconds is { } time ? $"Not seen from {TimeText.Spoken(Math.Ceiling(time))} on{(holeMillimetres is { } hole ? $", with a hole of {NumberText.Show(hole)} mm" : "")}." : null,
            coverSeconds is > 0.5 and { } cover ? $"Or cover the hole for {TimeText.Spoken(Math.Ceiling(cover))} while they pass." : null,
            flashFraction is > 0 and { } flash ? string.Create(CultureInfo.CurrentCulture, $"Or flash to {100 * flash:0}\u00A0% of the first visible tone.") : null,
        }.Where(line => line is not null));

        public static string NumberToShow(int number) => number > 10_000 ? "" : string.Create(CultureInfo.CurrentCulture, $"{number} such would leave a band.");

        public static string Touch(string how, bool moves) => (how == MotionHow.GoesAway, moves) switch
        {
            (true, true) => Gone,
            (true, false) => There,
            (false, true) => Moves,
            _ => Stands,
        };
    }
}
