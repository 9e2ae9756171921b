using Foramen.Engine.Quantities;

namespace Foramen.Engine.Scene;

/// <summary>Walkers, cyclists, boats: alike things that cross the picture one after another. Immutable.</summary>
public sealed record Passers
{
    /// <summary>How wide one is along its way.</summary>
    /// <exception cref="RefusalException">Not between 1 mm and 1 km.</exception>
    public required Length Width
    {
        get;
        init => field = Length.FromMetres(Guard.Within(value.Metres, 1e-3, 1000, "the width of what passes", "m"));
    }

    /// <summary>How fast they go across the line of sight; zero for what stands still.</summary>
    public required MotionSpeed Speed { get; init; }

    /// <summary>How far away they pass.</summary>
    /// <exception cref="RefusalException">Nearer than 10 cm.</exception>
    public required Length Distance
    {
        get;
        init => field = Length.FromMetres(ImageMotion.Far(value));
    }

    /// <summary>Their luminance over that of the background, 0 to 10 000.</summary>
    /// <exception cref="RefusalException">Outside the range.</exception>
    public required double LuminanceRatio
    {
        get;
        init => field = Guard.Within(value, 0, 10_000, "the luminance against the background");
    }

    /// <summary>How many pass during the exposure, 1 to 100 000.</summary>
    /// <exception cref="RefusalException">Outside the range.</exception>
    public int Number
    {
        get;
        init => field = (int)Guard.Within(value, 1, 100_000, "the number that pass");
    }

    = 1;

    /// <summary>Whether they stand still: then they stay in the picture as what they are.</summary>
    public bool StandStill => Speed.MetresPerSecond <= 0;

    /// <summary>How long one covers a point of the background: width over speed, whatever the distance; null where they stand still.</summary>
    public Duration? Dwell => StandStill ? null : Duration.FromSeconds(Math.Min(Duration.Max, Width.Metres / Speed.MetresPerSecond));

    /// <summary>How long a point of the background is covered in all; null where they stand still.</summary>
    public Duration? Covered => Dwell is { } dwell ? Duration.FromSeconds(Math.Min(Duration.Max, Number * dwell.Seconds)) : null;

    /// <summary>What they do to a point of their way during an exposure; all pass within it.</summary>
    /// <param name="exposure">More than nothing.</param>
    /// <exception cref="RefusalException">No exposure.</exception>
    public Covering During(Duration exposure)
    {
        var seconds = Guard.Within(exposure.Seconds, 1e-3, Duration.Max, "the exposure", "s");
        return Covered is { } covered
            ? Covering.Of(Math.Min(1, covered.Seconds / seconds), LuminanceRatio, Duration.FromSeconds(Math.Min(seconds, Dwell!.Value.Seconds)))
            : Covering.Of(1, LuminanceRatio, exposure, softEdged: false);
    }

    /// <summary>How far the image of one goes across the sheet in a time.</summary>
    public Length ImagePath(Length focalDistance, Duration time) => ImageMotion.Path(Speed, Distance, focalDistance, time);
}
