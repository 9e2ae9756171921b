using Foramen.Engine.Quantities;

namespace Foramen.Engine.Scene;

/// <summary>Foliage in wind, water with waves, a moored boat: to and fro about one place. Immutable.</summary>
public sealed record Stirring
{
    /// <summary>How far to each side.</summary>
    /// <exception cref="RefusalException">More than 1 km.</exception>
    public required Length Reach
    {
        get;
        init => field = Length.FromMetres(Guard.Within(value.Metres, 0, 1000, "the reach of the swaying", "m"));
    }

    /// <summary>Time of one swing to and fro.</summary>
    /// <exception cref="RefusalException">Not between 1 ms and 1e6 s.</exception>
    public required Duration Period
    {
        get;
        init => field = Duration.FromSeconds(Guard.Within(value.Seconds, 1e-3, 1e6, "the time of a swing", "s"));
    }

    /// <summary>How far away it is.</summary>
    /// <exception cref="RefusalException">Nearer than 10 cm.</exception>
    public required Length Distance
    {
        get;
        init => field = Length.FromMetres(ImageMotion.Far(value));
    }

    /// <summary>
    /// How wide a point is drawn out on the sheet: 2·reach·f/s after half a swing. In a shorter time the fastest part of the swing counts: 2·reach·sin(πt/T).
    /// </summary>
    public Length Blur(Length focalDistance, Duration exposure)
    {
        var part = exposure.Seconds >= Period.Seconds / 2 ? 1 : Math.Sin(Math.PI * exposure.Seconds / Period.Seconds);
        return ImageMotion.Size(Length.FromMetres(2 * Reach.Metres * part), Distance, focalDistance);
    }

    /// <summary>Whether detail of a given size is smoothed away: it is drawn out over more than its own size.</summary>
    public bool Smooths(Length detail, Length focalDistance, Duration exposure)
        => Blur(focalDistance, exposure) > ImageMotion.Size(detail, Distance, focalDistance);
}
