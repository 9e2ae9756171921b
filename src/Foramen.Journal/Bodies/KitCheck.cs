using Foramen.Engine.Quantities;
using Foramen.Journal.Kit;

namespace Foramen.Journal.Bodies;

/// <summary>
/// Keeps NaN and the absurd out of kit. The ranges are wide on purpose: the Engine's rooms Camera and Paper know what can be worked with, and
/// a journal must not lose a description over it.
/// </summary>
internal static class KitCheck
{
    private const double MaxMillimetres = 10_000;
    private const int MaxPath = 200_000;

    public static void Camera(CameraDefinition camera)
    {
        BodyCheck.Required(camera.Name, "the camera's name");
        Guard.Within(camera.HoleDiameterMillimetres, 0.001, 100, "the hole's diameter", "mm");
        BodyCheck.Optional(camera.HoleDiameterRelativeSd, 0, 1, "the spread of the hole's diameter");
        BodyCheck.Optional(camera.HoleThicknessMillimetres, 0, 100, "the thickness of the hole's edge", "mm");
        Guard.Within(camera.FocalDistanceMillimetres, 0.1, MaxMillimetres, "the focal distance", "mm");
        Guard.Within(camera.SheetWidthMillimetres, 0.1, MaxMillimetres, "the sheet's width", "mm");
        Guard.Within(camera.SheetHeightMillimetres, 0.1, MaxMillimetres, "the sheet's height", "mm");
        BodyCheck.Optional(camera.FocalDistanceRelativeSd, 0, 1, "the spread of the focal distance");
        OneOf(camera.PaperShape, "the paper's shape", "flat", "curved");
        BodyCheck.Optional(camera.WallRadiusMillimetres, 0.1, MaxMillimetres, "the wall's radius", "mm");
        BodyCheck.Optional(camera.HoleOffsetXMillimetres, -MaxMillimetres, MaxMillimetres, "the hole's offset", "mm");
        BodyCheck.Optional(camera.HoleOffsetYMillimetres, -MaxMillimetres, MaxMillimetres, "the hole's offset", "mm");
        BodyCheck.Note(camera.Note);
    }

    public static void Paper(PaperDefinition paper)
    {
        BodyCheck.Required(paper.Name, "the paper's name");
        OneOf(paper.Kind, "the kind of paper", "negative", "directPositive");
        BodyCheck.Optional(paper.DMin, 0, 6, "the lightest density");
        BodyCheck.Optional(paper.DMax, 0, 6, "the darkest density");
        BodyCheck.Optional(paper.IsoRange, 1, 1000, "the ISO range");
        BodyCheck.Optional(paper.Asymmetry, 0.01, 100, "the asymmetry of the curve");
        BodyCheck.Optional(paper.Speed.IsoSpeed, 0.001, 1e6, "the ISO paper speed");
        BodyCheck.Optional(paper.Speed.ExposureIndex, 1e-4, 1e5, "the exposure index");
        BodyCheck.Optional(paper.Speed.AtSeconds, 1e-4, BodyCheck.DaySeconds, "the time the exposure index was found at", "s");
        BodyCheck.Optional(paper.Speed.LightKelvin, 1000, 100_000, "the colour temperature", "K");
        BodyCheck.Optional(paper.Speed.SdStops, 0, 10, "the spread of the speed", "stops");
        OneOf(paper.Sensitivity, "the paper's sensitivity", "blue", "variableContrast");
        if (paper.Failure is { } failure)
        {
            OneOf(failure.Law, "the law of failure", "schwarzschild", "additivePower", "table");
            BodyCheck.Optional(failure.Exponent, 0.01, 10, "the exponent of failure");
            BodyCheck.Optional(failure.ExponentSd, 0, 10, "the spread of the exponent");
            BodyCheck.Optional(failure.ExtraSecondsAtOneSecond, 0, 1000, "the seconds added", "s");
            BodyCheck.Count(failure.Rows, 1000, "rows of failure");
            foreach (var number in failure.Rows?.SelectMany(row => row) ?? [])
            {
                Guard.Within(number, 0, 1e9, "a time of the table of failure", "s");
            }
        }

        BodyCheck.Note(paper.Note);
    }

    public static void Developer(DeveloperDefinition developer)
    {
        BodyCheck.Optional(developer.TimeSeconds, 1, 3600, "the development time", "s");
        BodyCheck.Optional(developer.MinimumSeconds, 1, 3600, "the shortest development time", "s");
        BodyCheck.Optional(developer.Q10, 1, 5, "the temperature coefficient");
        BodyCheck.Optional(developer.CapacitySquareMetresPerLitre, 0.2, 70, "the developer's capacity", "m²/l");
        BodyCheck.Optional(developer.ActivityLimit, 0.3, 0.95, "the activity at which the developer is replaced");
        BodyCheck.Optional(developer.AppearanceFactor, 2, 60, "the appearance factor");
        BodyCheck.Optional(developer.OpenLossPerHour, 0, 1, "the loss per hour in the open");
        BodyCheck.Optional(developer.ClosedLossPerDay, 0, 1, "the loss per day in a closed bottle");
        BodyCheck.Optional(developer.KnownDays, 0, 100, "the age up to which the developer is known", "days");
    }

    public static void Fixer(FixerDefinition fixer)
    {
        OneOf(fixer.Kind, "the kind of fixer", "ammoniumStrong", "ammoniumPaper", "sodium");
        BodyCheck.Optional(fixer.SilverLimitGramsPerLitre, 0.01, 20, "the silver a fixer may hold", "g/l");
        BodyCheck.Optional(fixer.AreaLimitSquareMetresPerLitre, 0.01, 100, "the area a fixer may take", "m²/l");
    }

    public static void Mask(MaskDefinition mask)
    {
        BodyCheck.Required(mask.Name, "the mask's name");
        OneOf(mask.Shape, "the mask's shape", "text", "ellipse", "path");
        OneOf(mask.Sense, "what the mask does", "blocks", "passes");
        OneOf(mask.Place, "the mask's place", "tray", "beforeHole");
        BodyCheck.Name(mask.Text, "the mask's text");
        if (mask.Path is { Length: > MaxPath })
        {
            throw new RefusalException($"The mask's path has {mask.Path.Length} characters; at most {MaxPath} are allowed.");
        }

        BodyCheck.Optional(mask.HeightOverWidth, 0.001, 1000, "the ellipse's height over its width");
        Guard.Within(mask.WidthMillimetres, 0.01, MaxMillimetres, "the mask's width", "mm");
        BodyCheck.Optional(mask.XMillimetres, -MaxMillimetres, MaxMillimetres, "the mask's place", "mm");
        BodyCheck.Optional(mask.YMillimetres, -MaxMillimetres, MaxMillimetres, "the mask's place", "mm");
        BodyCheck.Optional(mask.TurnDegrees, -360, 360, "the mask's turn", "°");
        Guard.Within(mask.DistanceMillimetres, 0, MaxMillimetres, "the mask's distance", "mm");
    }

    public static void Motion(MotionDefinition motion)
    {
        const double MaxSeconds = 1e8;
        BodyCheck.Required(motion.Name, "the name of what moves");
        OneOf(motion.How, "how it moves", [.. MotionHow.All]);
        Guard.Within(motion.Left, 0, 1, "the region's left edge");
        Guard.Within(motion.Top, 0, 1, "the region's upper edge");
        Guard.Within(motion.Width, 0, 1, "the region's width");
        Guard.Within(motion.Height, 0, 1, "the region's height");
        BodyCheck.Optional(motion.TurnSeconds, 0, MaxSeconds, "the time of a turn", "s");
        BodyCheck.Optional(motion.ReachOfWidth, 0, 10, "how far it sways");
        BodyCheck.Optional(motion.SwingSeconds, 0, MaxSeconds, "the time of a swing", "s");
        BodyCheck.Optional(motion.CrossingSeconds, 0, MaxSeconds, "the time to drift through", "s");
        BodyCheck.Optional(motion.WidthMetres, 0, 1e5, "the width of what passes", "m");
        BodyCheck.Optional(motion.SpeedMetresPerSecond, 0, 1e5, "the speed", "m/s");
        BodyCheck.Optional(motion.DistanceMetres, 0, 1e6, "the distance", "m");
        BodyCheck.Optional(motion.LuminanceRatio, 0, 1e6, "the luminance against the background");
        BodyCheck.Optional(motion.Number, 0, 1e6, "the number");
        BodyCheck.Optional(motion.Candelas, 0, 1e9, "the lamp's light", "cd");
        BodyCheck.Optional(motion.MovesFrom, 0, 1, "the part of the exposure after which it begins");
        BodyCheck.Optional(motion.MovesTo, 0, 1, "the part of the exposure after which it stops");
    }

    private static void OneOf(string? word, string what, params string[] words)
    {
        if (word is not null && !words.Contains(word))
        {
            var shown = word.Length <= 40 ? word : word[..40] + "…";
            throw new RefusalException($"{char.ToUpperInvariant(what[0])}{what[1..]} is “{shown}”; it should be {string.Join(" or ", words)}.");
        }
    }
}
