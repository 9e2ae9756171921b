using Foramen.Engine.Exposure;
using Foramen.Engine.Paper;
using Foramen.Engine.Print;
using Foramen.Engine.Scene;
using Foramen.Field.Texts;
using Foramen.Journal.Kit;

namespace Foramen.Field.Sheets.Motions;

/// <summary>What is left of a moving region on the print, and what would hide or show it.</summary>
/// <param name="Name">What it is.</param>
/// <param name="How">One of <see cref="MotionHow"/>.</param>
/// <param name="Trace">What is left.</param>
/// <param name="Turns">Turns in the exposure; null for what does not turn.</param>
/// <param name="Ways">Sentences on what would hide or show it.</param>
public sealed record MotionLine(string Name, string How, RegionTrace Trace, double? Turns, IReadOnlyList<string> Ways)
{
    /// <summary>A line.</summary>
    public static MotionLine Of(
        MotionDefinition definition,
        MovingRegion region,
        MotionCourse course,
        RegionTrace trace,
        SheetImage still,
        PaperResponse response,
        SheetExposure exposure,
        FlashSetup flash,
        bool flashIsGiven) => new(
            definition.Name,
            definition.How,
            trace,
            region.Motion is WheelTurns wheel ? wheel.DegreesIn(course.Moving) / 360 : null,
            region.Motion is PassesThrough passes ? WaysFor(trace.Verdict, passes.Passers, region.Place, still, response, exposure, flash, flashIsGiven) : []);

    private static List<string> WaysFor(
        MotionVerdict verdict, Passers passers, RectangleInPhotograph place, SheetImage still, PaperResponse response, SheetExposure exposure, FlashSetup flash, bool flashIsGiven)
    {
        var middle = PhotographPosition.FromFractions((place.TopLeft.X + place.BottomRight.X) / 2, (place.TopLeft.Y + place.BottomRight.Y) / 2);
        if (still.LightFor(middle) is not { Lux: > 1e-9 } background
            || new MotionOnPaper(response, background, exposure, flash).WaysFor(passers, still.Projection.Camera) is not { } ways)
        {
            return [];
        }

        string?[] lines =
        [
            verdict == MotionVerdict.Vanishes ? null : Words.Motions.HideBy(ways.TimeToHide?.Seconds, ways.HoleToHide?.Millimetres, ways.CoverHoleFor?.Seconds, flashIsGiven ? null : ways.FlashFractionToHide),
            ways.StandStillToShow is { } stand ? Words.Motions.StandToShow(stand.Seconds) : null,
            ways.NumberToShow is { } number ? Words.Motions.NumberToShow(number) : null,
        ];
        return [.. lines.OfType<string>().Where(line => line.Length > 0)];
    }
}
