using Foramen.Engine.Quantities;

namespace Foramen.Engine.Scene;

/// <summary>A place in an upright photograph, in fractions of its width from the left and of its height from the top. Immutable.</summary>
public readonly record struct PhotographPosition
{
    private PhotographPosition(double x, double y)
    {
        X = x;
        Y = y;
    }

    /// <summary>Fraction of the width from the left edge, 0 to 1.</summary>
    public double X { get; }

    /// <summary>Fraction of the height from the top edge, 0 to 1.</summary>
    public double Y { get; }

    /// <summary>From fractions.</summary>
    /// <param name="x">From the left, 0 to 1.</param>
    /// <param name="y">From the top, 0 to 1.</param>
    /// <exception cref="RefusalException">Outside the photograph.</exception>
    public static PhotographPosition FromFractions(double x, double y) => new(
        Guard.Within(x, 0, 1, "the place's fraction of the photograph's width"),
        Guard.Within(y, 0, 1, "the place's fraction of the photograph's height"));
}
