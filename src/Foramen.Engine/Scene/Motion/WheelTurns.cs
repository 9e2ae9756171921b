using Foramen.Engine.Quantities;

namespace Foramen.Engine.Scene;

/// <summary>The ellipse that fits into the region is a wheel and turns at an even rate; seen at an angle it turns within its ellipse. Begins as the photograph shows it. Immutable.</summary>
public sealed record WheelTurns : RegionMotion
{
    /// <summary>Time of one turn.</summary>
    /// <exception cref="RefusalException">Not between 1 ms and 1e7 s.</exception>
    public required Duration TurnTime
    {
        get;
        init => field = Duration.FromSeconds(Guard.Within(value.Seconds, 1e-3, Duration.Max, "the time of a turn", "s"));
    }

    /// <summary>Whether it turns as the hands of a clock do, on the photograph.</summary>
    public bool Clockwise { get; init; } = true;

    /// <summary>Degrees turned through in a time; may pass a full turn many times.</summary>
    public double DegreesIn(Duration time) => 360 * time.Seconds / TurnTime.Seconds;
}
