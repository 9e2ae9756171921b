using Foramen.Engine.Quantities;

namespace Foramen.Engine.Scene;

/// <summary>A wheel, a crank wheel, the sails of a mill: even spokes that turn at an even rate in a plane square to the line of sight. Immutable.</summary>
public sealed record Turning
{
    /// <summary>Time of one turn.</summary>
    /// <exception cref="RefusalException">Not between 1 ms and 1e7 s.</exception>
    public required Duration TurnTime
    {
        get;
        init => field = Duration.FromSeconds(Guard.Within(value.Seconds, 1e-3, Duration.Max, "the time of a turn", "s"));
    }

    /// <summary>From the hub to the rim.</summary>
    /// <exception cref="RefusalException">Not between 1 mm and 1 km.</exception>
    public required Length Radius
    {
        get;
        init => field = Length.FromMetres(Guard.Within(value.Metres, 1e-3, 1000, "the wheel’s radius", "m"));
    }

    /// <summary>How far away it is.</summary>
    /// <exception cref="RefusalException">Nearer than 10 cm.</exception>
    public required Length Distance
    {
        get;
        init => field = Length.FromMetres(ImageMotion.Far(value));
    }

    /// <summary>Even spokes, 1 (a crank) to 1000.</summary>
    /// <exception cref="RefusalException">Outside the range.</exception>
    public required int Spokes
    {
        get;
        init => field = (int)Guard.Within(value, 1, 1000, "the number of spokes");
    }

    /// <summary>Part of the circle that spokes fill, at the radius looked at, 0 to 1.</summary>
    /// <exception cref="RefusalException">Outside the range.</exception>
    public required double Fill
    {
        get;
        init => field = Guard.Within(value, 0, 1, "the part that spokes fill");
    }

    /// <summary>A spoke's luminance over that of what shows between them, 0 to 10 000.</summary>
    /// <exception cref="RefusalException">Outside the range.</exception>
    public required double LuminanceRatio
    {
        get;
        init => field = Guard.Within(value, 0, 10_000, "the luminance against the background");
    }

    /// <summary>Turns in a time.</summary>
    public double TurnsIn(Duration time) => time.Seconds / TurnTime.Seconds;

    /// <summary>Degrees turned through in a time: 360°·t/T; may pass a full turn many times.</summary>
    public double ArcDegrees(Duration time) => 360 * TurnsIn(time);

    /// <summary>Time for that.</summary>
    public Duration TimeForFullDisc => Duration.FromSeconds(TurnTime.Seconds / Spokes);

    /// <summary>How long the streak of one point at the rim is on the sheet near the axis: the arc it goes, at most the whole circle.</summary>
    public Length StreakAtRim(Length focalDistance, Duration time)
        => ImageMotion.Size(Length.FromMetres(Math.Min(1, TurnsIn(time)) * 2 * Math.PI * Radius.Metres), Distance, focalDistance);

    /// <summary>
    /// Part of the time for which points of one circle are covered by spokes: the least covered, all of them on average, the most covered. All are equal to
    /// <see cref="Fill"/> after whole numbers of spokes have gone by, and nearly so after many.
    /// </summary>
    /// <param name="time">How long it turns, more than nothing.</param>
    /// <exception cref="RefusalException">No time.</exception>
    public (double Least, double Mean, double Most) SpokeShare(Duration time)
    {
        Guard.Within(time.Seconds, 1e-3, Duration.Max, "the exposure", "s");
        var periods = TurnsIn(time) * Spokes;
        var whole = Math.Floor(periods);
        var rest = periods - whole;
        return (
            ((whole * Fill) + Math.Max(0, rest - (1 - Fill))) / periods,
            Fill,
            ((whole * Fill) + Math.Min(rest, Fill)) / periods);
    }

    /// <summary>What spokes do to a point of what shows between them while it turns.</summary>
    public Covering During(Duration time)
    {
        var most = SpokeShare(time).Most;
        return Covering.Of(Math.Clamp(most, 0, 1), LuminanceRatio, Duration.FromSeconds(Math.Min(time.Seconds, TimeForFullDisc.Seconds * Fill)));
    }

    /// <summary>Whether it turns so slowly that the rim's image moves by less than a given length: then it looks as if it stood.</summary>
    public bool LooksStill(Length focalDistance, Duration time, Length leastSeen) => StreakAtRim(focalDistance, time) < leastSeen;
}
