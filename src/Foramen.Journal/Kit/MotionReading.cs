using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;

namespace Foramen.Journal.Kit;

/// <summary>From a moving region as written down to one the Engine can compute with.</summary>
public static class MotionReading
{
    /// <summary>The region.</summary>
    /// <exception cref="RefusalException">A value is missing, unknown or outside its range.</exception>
    public static MovingRegion ToRegion(this MotionDefinition definition) => new(
        definition.Name,
        RectangleInPhotograph.FromFractions(definition.Left, definition.Top, definition.Width, definition.Height),
        Motion(definition));

    /// <summary>When it is expected to move in an exposure.</summary>
    /// <param name="definition">The region.</param>
    /// <param name="exposure">More than nothing.</param>
    /// <exception cref="RefusalException">It stops before it begins, or there is no exposure.</exception>
    public static MotionCourse Expected(this MotionDefinition definition, Duration exposure)
        => MotionCourse.Between(exposure, definition.MovesFrom ?? 0, definition.MovesTo ?? 1);

    private static RegionMotion Motion(MotionDefinition definition) => definition.How switch
    {
        MotionHow.Turns => new WheelTurns { TurnTime = Seconds(definition.TurnSeconds, "the time of a turn"), Clockwise = definition.Anticlockwise is not true },
        MotionHow.Sways => new SwaysInPlace { ReachOfWidth = Said(definition.ReachOfWidth, "how far it sways"), Period = Seconds(definition.SwingSeconds, "the time of a swing") },
        MotionHow.Flows => new FlowsThrough { Crossing = Seconds(definition.CrossingSeconds, "the time to drift through"), Upright = definition.Upright is true },
        MotionHow.GoesAway => new GoesAway(),
        MotionHow.Passes => new PassesThrough(new Passers
        {
            Width = Length.FromMetres(Said(definition.WidthMetres, "the width of what passes")),
            Speed = Speed(definition),
            Distance = Distance(definition),
            LuminanceRatio = Said(definition.LuminanceRatio, "the luminance against the background"),
            Number = definition.Number ?? 1,
        }),
        MotionHow.Lamp => new LampPasses(new PassingLamp
        {
            Intensity = LuminousIntensity.FromCandelas(Said(definition.Candelas, "the lamp’s light")),
            Speed = Speed(definition),
            Distance = Distance(definition),
            Number = definition.Number ?? 1,
        }),
        _ => throw new RefusalException($"How “{definition.Name}” moves is “{definition.How}”; it should be turns, passes, goesAway, sways, flows or lamp."),
    };

    private static MotionSpeed Speed(MotionDefinition definition) => MotionSpeed.FromMetresPerSecond(Said(definition.SpeedMetresPerSecond, "the speed"));

    private static Length Distance(MotionDefinition definition) => Length.FromMetres(Said(definition.DistanceMetres, "the distance"));

    private static Duration Seconds(double? seconds, string what)
        => Duration.FromSeconds(Guard.Within(Said(seconds, what), 1e-3, Duration.Max, what, "s"));

    private static double Said(double? value, string what)
        => value ?? throw new RefusalException($"{char.ToUpperInvariant(what[0])}{what[1..]} is missing; say it.");
}
