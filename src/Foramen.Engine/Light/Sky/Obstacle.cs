using System.Globalization;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Light;

/// <summary>
/// Something that can stand between a spot and the sun: a flat upright thing, square to the line from the spot to its middle. The spot is where
/// the shadow matters: the facade, or the hole. Immutable.
/// </summary>
public sealed record Obstacle
{
    private Obstacle(string name, Angle bearing, Length distance, Length width, Length height)
    {
        (Name, Bearing, Distance, Width, Height) = (name, bearing, distance, width, height);
        halfWidthDegrees = Math.Atan2(width.Metres / 2, distance.Metres) * (180 / Math.PI);
    }

    private readonly double halfWidthDegrees;

    /// <summary>What it is.</summary>
    public string Name { get; }

    /// <summary>Bearing of its middle from the spot, from true north through east.</summary>
    public Angle Bearing { get; }

    /// <summary>From the spot to its middle.</summary>
    public Length Distance { get; }

    /// <summary>How wide it is.</summary>
    public Length Width { get; }

    /// <summary>How high its top is above the spot.</summary>
    public Length Height { get; }

    /// <summary>An obstacle.</summary>
    /// <param name="name">What it is.</param>
    /// <param name="bearing">Of its middle, 0° to 360°.</param>
    /// <param name="distance">0.1 m to 100 km.</param>
    /// <param name="width">0 to 100 km.</param>
    /// <param name="height">Of its top above the spot, 0 to 10 km.</param>
    /// <exception cref="RefusalException">Outside the ranges.</exception>
    public static Obstacle Of(string name, Angle bearing, Length distance, Length width, Length height)
    {
        Guard.Within(bearing.Degrees, 0, 360, "the obstacle's bearing", "°");
        Guard.Within(distance.Metres, 0.1, 100_000, "the obstacle's distance", "m");
        Guard.Within(width.Metres, 0, 100_000, "the obstacle's width", "m");
        Guard.Within(height.Metres, 0, 10_000, "the obstacle's height", "m");
        return new Obstacle(string.IsNullOrWhiteSpace(name) ? "obstacle" : name.Trim(), bearing, distance, width, height);
    }

    /// <summary>An obstacle as it is sighted from the spot, without knowing how far it is: between two bearings, up to a height in its middle.</summary>
    /// <param name="name">What it is.</param>
    /// <param name="left">Bearing of its left edge, 0° to 360°.</param>
    /// <param name="right">Bearing of its right edge, 0° to 360°; 0.1° to 170° clockwise of the left one.</param>
    /// <param name="top">Elevation of its top in the middle, 0.1° to 85°.</param>
    /// <exception cref="RefusalException">Outside the ranges.</exception>
    public static Obstacle Between(string name, Angle left, Angle right, Angle top)
    {
        Guard.Within(left.Degrees, 0, 360, "the bearing of the left edge", "°");
        Guard.Within(right.Degrees, 0, 360, "the bearing of the right edge", "°");
        Guard.Within(top.Degrees, 0.1, 85, "the height of the top", "°");
        // Bearings that were added up are off by their rounding; a span of just 170° is none of more.
        var span = Math.Round((right.Degrees - left.Degrees + 360) % 360, 9);
        if (span is < 0.1 or > 170)
        {
            throw new RefusalException(string.Create(
                CultureInfo.InvariantCulture,
                $"From the left edge clockwise to the right edge it is {span:0.#}°; it should be 0.1° to 170°. Have the two edges changed places?"));
        }

        // Only the angles matter, so any distance does.
        const double metres = 100;
        return Of(
            name,
            Angle.FromDegrees((left.Degrees + (span / 2)) % 360),
            Length.FromMetres(metres),
            Length.FromMetres(2 * metres * Math.Tan(span / 2 * (Math.PI / 180))),
            Length.FromMetres(metres * Math.Tan(top.Radians)));
    }

    /// <summary>Whether it hides a place in the sky.</summary>
    public bool Hides(SkyPosition position) => ClearanceDegrees(position) < 0;

    /// <summary>Whether any of several hides a place in the sky; none does where none is given.</summary>
    internal static bool AnyHides(IReadOnlyList<Obstacle>? obstacles, SkyPosition position)
    {
        // Asked at every step of a search: without an enumerator to make.
        for (var i = 0; i < (obstacles?.Count ?? 0); i++)
        {
            if (obstacles![i].Hides(position))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>How far a place in the sky is clear of it, degrees sideways or upwards, whichever is more; negative behind it.</summary>
    internal double ClearanceDegrees(SkyPosition position)
    {
        var aside = Math.IEEERemainder(position.Azimuth.Degrees - Bearing.Degrees, 360);
        var top = Math.Atan2(Height.Metres * Math.Max(0, Math.Cos(aside * (Math.PI / 180))), Distance.Metres) * (180 / Math.PI);
        return Math.Max(Math.Abs(aside) - halfWidthDegrees, position.Elevation.Degrees - top);
    }
}
