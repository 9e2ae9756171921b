using Foramen.Engine.Quantities;

namespace Foramen.Engine.Scene;

/// <summary>A star, the moon or the sun that goes across the picture during an exposure. Immutable.</summary>
public sealed record SkyBody
{
    // Light of a star of magnitude 0 outside the air; from memory, as handbooks of astrophysics give it (magnitude −13.98 is one lux).
    private const double LuxOfMagnitudeZero = 2.54e-6;

    private SkyBody(string name, Illuminance light, Angle diameter) => (Name, Light, Diameter) = (name, light, diameter);

    /// <summary>What it is.</summary>
    public string Name { get; }

    /// <summary>Its light on a surface square to it.</summary>
    public Illuminance Light { get; }

    /// <summary>How wide it is in the sky; nothing for a star.</summary>
    public Angle Diameter { get; }

    /// <summary>The full moon high in clear air: a quarter of a lux, half a degree (both from memory; a half moon gives about a tenth of that).</summary>
    public static SkyBody FullMoon { get; } = new("the full moon", Illuminance.FromLux(0.25), Angle.FromDegrees(0.518));

    /// <summary>The sun high in clear air: a hundred thousand lux, 0.533° (both from memory).</summary>
    public static SkyBody Sun { get; } = new("the sun", Illuminance.FromLux(1e5), Angle.FromDegrees(0.533));

    /// <summary>A star, by its magnitude: E = 2.54·10⁻⁶·10^(−0.4·m) lx (from memory), nothing lost to the air.</summary>
    /// <param name="magnitude">−5 (the brightest planet at its best) to 8.</param>
    /// <exception cref="RefusalException">Outside the range.</exception>
    public static SkyBody Star(double magnitude)
        => new("a star", Illuminance.FromLux(LuxOfMagnitudeZero * Math.Pow(10, -0.4 * Guard.Within(magnitude, -5, 8, "the star’s magnitude"))), Angle.Zero);

    /// <summary>How wide its image is near the axis: the hole's spot and its own disc together, √(d_s² + (f·δ)²).</summary>
    /// <param name="spot">The spot's diameter.</param>
    /// <param name="focalDistance">From the hole to the paper.</param>
    public Length ImageDiameter(Length spot, Length focalDistance)
        => Length.FromMetres(double.Hypot(spot.Metres, focalDistance.Metres * Diameter.Radians));

    /// <summary>Light of its image near the axis, E·(d/D)²: the hole lets in E on its area, and the image spreads it.</summary>
    /// <param name="hole">The hole's diameter.</param>
    /// <param name="spot">The spot's diameter, at least 10 µm.</param>
    /// <param name="focalDistance">From the hole to the paper.</param>
    /// <exception cref="RefusalException">Outside the range.</exception>
    public Illuminance InImage(Length hole, Length spot, Length focalDistance)
    {
        Guard.Within(spot.Millimetres, 0.01, 100, "the spot’s diameter", "mm");
        return Illuminance.FromLux(Math.Min(Illuminance.Max, Light.Lux * Math.Pow(hole.Metres / ImageDiameter(spot, focalDistance).Metres, 2)));
    }

    /// <summary>How long its image lies on a point of its trail: D/(f·ω), with the turn of the sky ω = 15.04°·cos δ an hour; no longer than the exposure.</summary>
    /// <param name="spot">The spot's diameter.</param>
    /// <param name="focalDistance">From the hole to the paper.</param>
    /// <param name="declination">−90° to 90°.</param>
    /// <param name="exposure">The exposure.</param>
    /// <exception cref="RefusalException">Outside a range.</exception>
    /// <remarks>The moon goes back among the stars by a thirtieth of that, which is left out.</remarks>
    public Duration OnPoint(Length spot, Length focalDistance, Angle declination, Duration exposure)
    {
        var each = focalDistance.Metres * SkyTrail.OfStar(declination, Duration.FromSeconds(1)).Radians;
        return each <= 0 ? exposure : Duration.FromSeconds(Math.Min(exposure.Seconds, ImageDiameter(spot, focalDistance).Metres / each));
    }
}
