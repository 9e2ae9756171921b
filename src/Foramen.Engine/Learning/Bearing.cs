using Foramen.Engine.Scene;

namespace Foramen.Engine.Learning;

/// <summary>Which beliefs bear on what. One place, so that learning and foretelling cannot disagree.</summary>
internal static class Bearing
{
    /// <summary>Sheets in the bottle that the belief of ageing is stated for.</summary>
    private const double AgeingSheets = 10;

    // A developer tires in no straight line: some lose much at first, some hold and then fall. Each stretch has its own rate.
    private static readonly (string Name, double From, double To)[] Stretches = [("sheets 1 to 5", 0, 5), ("sheets 6 to 10", 5, 10), ("sheets from 11 on", 10, double.PositiveInfinity)];

    /// <summary>What bears on all tones of a sheet alike, and by how much.</summary>
    public static IReadOnlyList<(BeliefKey Key, double Load)> OnSheet(SheetConditions conditions, double doublings)
    {
        // A list and not an iterator: an iterator asks which thread it is on, and this room does not look at the machine.
        var bearing = new List<(BeliefKey, double)>(8)
        {
            (new(BeliefKind.Speed, conditions.Box), 1),
            (new(BeliefKind.Failure, conditions.Box), doublings),
        };
        foreach (var (name, from, to) in Stretches)
        {
            if (conditions.SheetsInBottle > from)
            {
                bearing.Add((new(BeliefKind.Ageing, name), (Math.Min(conditions.SheetsInBottle, to) - from) / AgeingSheets));
            }
        }

        if (conditions.Camera is { } camera)
        {
            bearing.Add((new(BeliefKind.Camera, camera), 1));
        }

        if (conditions.Metered)
        {
            bearing.Add((new(BeliefKind.Meter, ""), 1));
        }

        if (conditions.Sky is { } sky)
        {
            bearing.Add((new(BeliefKind.Light, sky), 1));
        }

        return bearing;
    }

    /// <summary>What bears on a single tone besides.</summary>
    public static BeliefKey? OnTone(string box, Rendering rendering) => rendering switch
    {
        Rendering.OpenShadow => new(BeliefKind.ShadowEnd, box),
        Rendering.TexturedHighlight => new(BeliefKind.HighlightEnd, box),
        _ => null,
    };

    /// <summary>The conditions that a piece of evidence arose under.</summary>
    public static SheetConditions Conditions(this Evidence evidence) => new()
    {
        Box = evidence.Box,
        Camera = evidence.Camera,
        Sky = evidence.Sky,
        Metered = evidence.Metered,
        SheetsInBottle = evidence.SheetsInBottle,
        LabelSpread = evidence.LabelSpread,
        FailureSpread = evidence.FailureSpread,
    };
}
