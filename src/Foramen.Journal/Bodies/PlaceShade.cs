using Foramen.Engine.Light;
using Foramen.Engine.Quantities;

namespace Foramen.Journal.Bodies;

/// <summary>Something that stands in the sun's way at a place, as it is sighted from where its shadow falls.</summary>
public sealed record PlaceShade
{
    /// <summary>What it is.</summary>
    public string? Name { get; init; }

    /// <summary>Bearing of its left edge from true north, degrees clockwise, 0 to 360.</summary>
    public required double LeftDegrees { get; init; }

    /// <summary>Bearing of its right edge, degrees, 0 to 360; at most 170 clockwise of the left one.</summary>
    public required double RightDegrees { get; init; }

    /// <summary>Elevation of its top in the middle, degrees, 0.1 to 85.</summary>
    public required double TopDegrees { get; init; }

    /// <summary>Where its shadow falls; on the facade where nothing is said.</summary>
    public ShadeFalls? Falls { get; init; }

    /// <summary>Whether its shadow falls there.</summary>
    public bool FallsOn(ShadeFalls where) => Falls is ShadeFalls.OnBoth || (Falls ?? ShadeFalls.OnFacade) == where;

    /// <summary>As the Engine knows it.</summary>
    /// <exception cref="RefusalException">Angles out of range.</exception>
    public Obstacle ToObstacle() => Obstacle.Between(
        Name ?? "",
        Degrees(LeftDegrees, 0, 360, "the bearing of the left edge"),
        Degrees(RightDegrees, 0, 360, "the bearing of the right edge"),
        Degrees(TopDegrees, 0.1, 85, "the height of the top"));

    internal void Check()
    {
        BodyCheck.Name(Name, "the name of what stands in the sun's way");
        _ = ToObstacle();
    }

    // An angle itself refuses what is no number, in words of its own.
    private static Angle Degrees(double value, double min, double max, string what) => Angle.FromDegrees(Guard.Within(value, min, max, what, "°"));
}
