using Foramen.Engine.Quantities;

namespace Foramen.Engine.Camera;

/// <summary>How the paper lies: flat and square to the hole's axis, or along the inside of a round wall whose axis is vertical. Immutable.</summary>
public sealed record PaperShape
{
    private PaperShape(Length? wallRadius) => WallRadius = wallRadius;

    /// <summary>Flat paper, square to the hole's axis.</summary>
    public static PaperShape Flat { get; } = new((Length?)null);

    /// <summary>Radius of the wall the paper lies along; null for flat paper.</summary>
    public Length? WallRadius { get; }

    /// <summary>Paper along the inside of a round wall. The hole may be anywhere between the wall opposite and the paper.</summary>
    /// <param name="wallRadius">5 mm to 20 m.</param>
    /// <exception cref="RefusalException">Outside the range.</exception>
    public static PaperShape Curved(Length wallRadius)
    {
        Guard.Within(wallRadius.Millimetres, 5, 20_000, "the radius of the wall the paper lies on", "mm");
        return new PaperShape(wallRadius);
    }
}
