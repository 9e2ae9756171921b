using Foramen.Engine.Learning;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;

namespace Foramen.Engine.Tests.Learning;

/// <summary>Evidence of an invented box, and priors that leave one unknown at a time.</summary>
internal static class LearningExamples
{
    public static readonly DateTimeOffset Now = new(2026, 5, 9, 18, 0, 0, TimeSpan.Zero);

    public static readonly BeliefKey Speed = new(BeliefKind.Speed, "box");

    public static SheetConditions Strip { get; } = new() { Box = "box", Metered = false };

    /// <summary>A strip in known light: only the box's speed (and failure, away from the label's time) bears on it.</summary>
    public static Evidence StripOf(string id, double seen, double spread = 0.25, double doublings = 0, double scatter = 0.01) => new()
    {
        Id = id,
        Kind = EvidenceKind.Strip,
        At = Now,
        Box = "box",
        Metered = false,
        Doublings = doublings,
        Scatter = Stops.FromValue(scatter),
        Tones = [Tone(seen, spread)],
    };

    public static Evidence Sheet(string id, double seen, string sky = "noon", double daysAgo = 0, ObservedLimit limit = ObservedLimit.Exact) => new()
    {
        Id = id,
        Kind = EvidenceKind.JudgedSheet,
        At = Now.AddDays(-daysAgo),
        Box = "box",
        Camera = "Box A",
        Sky = sky,
        Doublings = id.Sum(letter => letter) % 8 / 2.0,
        SheetsInBottle = id.Length,
        Tones = [Tone(seen, 0.35, limit), Tone(seen, 0.35, limit) with { Name = "doorway", Rendering = Rendering.OpenShadow }],
    };

    public static ToneEvidence Tone(double seen, double spread, ObservedLimit limit = ObservedLimit.Exact) => new()
    {
        Name = "wall",
        Rendering = Rendering.Mid,
        Foretold = Stops.Zero,
        Seen = Stops.FromValue(seen),
        Limit = limit,
        Spread = Stops.FromValue(spread),
        Judging = Stops.FromValue(spread * 0.9),
        BandLow = Stops.FromValue(-0.5),
        BandHigh = Stops.FromValue(0.5),
    };
}
