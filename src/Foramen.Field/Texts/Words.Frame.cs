using System.Globalization;
using Foramen.Engine.Camera;
using Foramen.Engine.Learning;
using Foramen.Field.Units;

namespace Foramen.Field.Texts;

public static partial class Words
{
    /// <summary>The Frame step: what the sheet will see.</summary>
    public static class Frame
    {
        public const string How = "How to frame";
        public const string FromPhoto = "On a photograph";
        public const string ByHand = "By hand";
        public const string PhotoAbout = "Hold the phone where the box will stand, level, and take in more than the sheet will. A photograph may also be skipped.";
        public const string Take = "Take a photograph";
        public const string TakeAgain = "Take another";
        public const string Choose = "Choose a file";
        public const string Reading = "Reading the photograph…";
        public const string WithoutPhoto = "Without a photograph";
        public const string Alt = "The photograph of the subject";
        public const string NoCamera = "This sheet's camera is not in the journal, so no frame can be drawn.";
        public const string NotHere = "The photograph is not on this device; take another, or frame by hand.";
        public const string NoExposure = "The file does not say how it was exposed; Meter will ask for one reading.";
        public const string NoField = "The file does not say how wide it sees (its focal length in terms of 36 × 24 mm).";
        public const string Field = "Angle the photograph covers, left to right";
        public const string FieldHint = "A phone's main camera covers about 67° held level, 53° held upright (26 mm in terms of 36 × 24 mm).";
        public const string FieldWhat = "the angle the photograph covers";

        public const string Format = "The sheet";
        public const string FormatLevel = "Level";
        public const string FormatUpright = "Upright";
        public const string Drag = "A drag on the photograph";
        public const string MoveFrame = "Moves the frame";
        public const string MarkSubject = "Marks the subject";
        public const string MoveKeys = "The frame on the photograph. Drag it or use the arrow keys; with Shift in larger steps.";
        public const string MarkKeys = "The subject on the photograph. Drag over it or use the arrow keys; with Shift they move its lower right corner.";
        public const string MotionKeys = "What moves on the photograph. Drag over it or use the arrow keys; with Shift they move its lower right corner.";
        public const string ClearMark = "Remove the mark";
        public const string Margins = "Room about the subject, of the sheet";
        public const string Left = "Left";
        public const string Right = "Right";
        public const string Above = "Above";
        public const string Below = "Below";
        public const string FarAside = "The subject lies so far aside that the sheet cannot see it.";
        public const string ByNumber = "Pan and tilt by number";
        public const string Pan = "Pan";
        public const string Tilt = "Tilt";
        public const string ToLeft = "left";
        public const string ToRight = "right";
        public const string Up = "up";
        public const string Down = "down";
        public const string Straight = "Straight along the photograph";

        public const string ShowLevel = "Show the level";
        public const string LevelWaits = "Waiting for the sensor…";
        public const string LevelRefused = "The browser was not allowed to read the sensor; use a spirit level.";
        public const string LevelMissing = "This device has no level; use a spirit level.";

        public const string HandAbout = "Something upright straight ahead, such as a house front.";
        public const string Distance = "Distance";
        public const string Height = "Its height";
        public const string Base = "Its base against the camera";
        public const string BaseHint = "Minus where it stands lower than the hole.";
        public const string DistanceWhat = "the distance";
        public const string HeightWhat = "the height";
        public const string BaseWhat = "the base";
        public const string Camera = "The camera";
        public const string CameraLevel = "Level";
        public const string CameraTilted = "Tilted to centre it";
        public const string Stand = "Stand at least";
        public const string Anywhere = "anywhere";
        public const string Nowhere = "it never fits level";
        public const string Convergence = "Uprights";

        public static string Aiming(AimingBelief aiming, int frames) => frames == 0
            ? $"A frame is taken to land {Whole(aiming.Percent)} % of a side off; judged sheets with a marked subject will say how far yours do."
            : string.Create(
                CultureInfo.CurrentCulture,
                $"Your frames land about {aiming.Percent:0.0} % of a side off, likely {aiming.LikelyPercent.Low:0.0} to {aiming.LikelyPercent.High:0.0} %, by {frames} judged {(frames == 1 ? "frame" : "frames")}.");

        public const string AimingLine = "The dotted line keeps that far inside the edge.";

        public static string ChanceOfCut(double chance) => chance < 0.005
            ? "With these margins hardly any is cut."
            : string.Create(CultureInfo.CurrentCulture, $"With these margins about {Math.Max(1, Math.Round(100 * chance)):0} in 100 are cut.");

        private static string Whole(double percent) => percent.ToString("0", CultureInfo.CurrentCulture);

        public static string StandLevelWhy(double percent) => $"So far away the subject fits a level camera with {NumberText.Show(percent)} % of the sheet to spare, and uprights stay parallel.";

        public static string StandTiltedWhy(double percent) => $"So far away the subject fits with {NumberText.Show(percent)} % of the sheet to spare at both ends, if the camera is tilted to centre it.";

        public static string Degrees(double degrees) => $"{NumberText.Show(Math.Round(degrees, 1) + 0.0, 1)}°";

        public static string Percent(double part) => $"{NumberText.Show(Math.Round(100 * part, 1) + 0.0, 1)}\u00A0%";

        public static string Aim(double pan, double tilt) => $"{Way(pan, "straight on", "to the left", "to the right")}, {Way(tilt, "level", "down", "up")}";

        public static string Level(double tilt, double roll) => $"{Way(tilt, "Level", "looks down", "looks up")}, {Way(roll, "upright", "turned to the left", "turned to the right")}";

        public static string NearEdge(double least, double percent) => least < 0
            ? $"{Percent(-least)} of the sheet's size is missing: the subject is cut off."
            : $"Only {Percent(least)} of the sheet to spare: pointing a box may be off by {NumberText.Show(percent)} %, and the subject be cut off.";

        public static string? Unreached(FrameOutline outline)
        {
            if (outline.Missing == 0)
            {
                return null;
            }

            var sides = new[]
            {
                (Word: "left", outline.MissingLeft), (Word: "right", outline.MissingRight), (Word: "top", outline.MissingTop), (Word: "bottom", outline.MissingBottom),
            }.Where(side => side.Item2 >= 0.999).Select(side => side.Word).ToList();
            var where = sides.Count == 0 ? "" : $" ({string.Join(", ", sides)})";
            return $"The photograph does not reach {Math.Max(1, Math.Round(100 * outline.Missing)):0}\u00A0% of the sheet{where}: what lies there is not known and is hatched.";
        }

        public static string Fits(FramingFit fit, double percent)
        {
            if (fit.LeastMargin * 100 >= percent)
            {
                return "It fits.";
            }

            var end = fit.MarginTop < fit.MarginBottom ? "top" : "base";
            return fit.Fits
                ? $"It fits, with only {Percent(fit.LeastMargin)} of the sheet to spare at the {end}: pointing a box may be off by more."
                : $"It does not fit: {Percent(-fit.LeastMargin)} of the sheet's height is missing at the {end}.";
        }

        public static string Narrower(double topOverBase) => Math.Abs(topOverBase - 1) < 0.0005
            ? "parallel"
            : topOverBase < 1 ? $"top {Percent(1 - topOverBase)} narrower" : $"base {Percent(1 - (1 / topOverBase))} narrower";

        public static string ConvergenceWhy(double? edgeLean) => edgeLean is not { } lean
            ? "On curved paper uprights bend when the camera is tilted."
            : Math.Abs(lean) < 0.05
                ? "Uprights stay parallel while the camera is level."
                : $"At the sheet's side an upright leans {Degrees(Math.Abs(lean))} {(lean > 0 ? "inwards" : "outwards")}.";

        private static string Way(double degrees, string none, string minus, string plus)
            => Math.Round(degrees, 1) switch { 0 => none, < 0 => $"{Degrees(-degrees)} {minus}", _ => $"{Degrees(degrees)} {plus}" };
    }
}
