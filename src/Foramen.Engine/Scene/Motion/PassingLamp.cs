using Foramen.Engine.Quantities;

namespace Foramen.Engine.Scene;

/// <summary>A lamp too small to be drawn as anything but the hole's spot: a head lamp, a cycle lamp, a string of bulbs. Immutable.</summary>
public sealed record PassingLamp
{
    /// <summary>Light it sends towards the camera.</summary>
    public required LuminousIntensity Intensity { get; init; }

    /// <summary>How far away it is.</summary>
    /// <exception cref="RefusalException">Nearer than 10 cm.</exception>
    public required Length Distance
    {
        get;
        init => field = Length.FromMetres(ImageMotion.Far(value));
    }

    /// <summary>How fast it goes across the line of sight; zero for one that stands.</summary>
    public required MotionSpeed Speed { get; init; }

    /// <summary>How many go the same way, one after another, 1 to 100 000.</summary>
    /// <exception cref="RefusalException">Outside the range.</exception>
    public int Number
    {
        get;
        init => field = (int)Guard.Within(value, 1, 100_000, "the number of lamps");
    }

    = 1;

    /// <summary>Light in its spot on the sheet near the axis: (I/r²)·(d/dₛ)², by the photometric distance law and because the spot holds what the hole lets in.</summary>
    /// <param name="hole">The hole's diameter.</param>
    /// <param name="spot">The spot's diameter, at least 10 µm.</param>
    /// <exception cref="RefusalException">Outside a range.</exception>
    public Illuminance InSpot(Length hole, Length spot)
    {
        var wide = Guard.Within(spot.Millimetres, 0.01, 100, "the spot’s diameter", "mm");
        return Illuminance.FromLux(Math.Min(
            Illuminance.Max, Intensity.Candelas / (Distance.Metres * Distance.Metres) * Math.Pow(hole.Millimetres / wide, 2)));
    }

    /// <summary>How long its spot stays on a point of the sheet, all lamps together: dₛ·s/(f·v) each; the whole exposure where it stands or creeps.</summary>
    public Duration OnPoint(Length spot, Length focalDistance, Duration exposure)
    {
        var once = ImageMotion.StillFor(spot, Speed, Distance, focalDistance)?.Seconds ?? exposure.Seconds;
        return Duration.FromSeconds(Math.Min(exposure.Seconds, once * Number));
    }

    /// <summary>How long its streak is on the sheet; zero where it stands.</summary>
    public Length Streak(Length focalDistance, Duration exposure) => ImageMotion.Path(Speed, Distance, focalDistance, exposure);
}
