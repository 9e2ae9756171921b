using Foramen.Engine.Light;
using Foramen.Engine.Quantities;

namespace Foramen.Exchange.Places;

/// <summary>Something that may hide the sun, as a place file has it.</summary>
/// <param name="Name">What it is.</param>
/// <param name="BearingDeg">Of its middle, from true north, degrees.</param>
/// <param name="DistanceMetres">To its middle.</param>
/// <param name="WidthMetres">How wide.</param>
/// <param name="HeightMetres">How high its top is above the spot.</param>
public sealed record ShadeRecord(string? Name, double BearingDeg, double DistanceMetres, double WidthMetres, double HeightMetres)
{
    /// <summary>The obstacle.</summary>
    /// <exception cref="RefusalException">Numbers out of range.</exception>
    public Obstacle ToObstacle() => Obstacle.Of(
        Name ?? "obstacle",
        Angle.FromDegrees(Guard.Within(BearingDeg, 0, 360, "the obstacle's bearing", "°")),
        Metres(DistanceMetres, "the obstacle's distance"),
        Metres(WidthMetres, "the obstacle's width"),
        Metres(HeightMetres, "the obstacle's height"));

    private static Length Metres(double value, string what) => Length.FromMetres(Guard.Within(value, 0, 100_000, what, "m"));
}
