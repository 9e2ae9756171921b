using Foramen.Engine.Quantities;

namespace Foramen.Engine.Camera;

/// <summary>
/// A point of the sheet, or a shift across it: x to the right and y upwards as the finished picture is looked at, from the sheet's middle. On
/// curved paper x runs along the curve.
/// </summary>
/// <remarks>Each within ± 50 000 mm; anything else is refused. The default value is the middle. Immutable.</remarks>
public readonly record struct SheetPoint
{
    /// <summary>Largest distance from the middle accepted, in millimetres.</summary>
    public const double MaxMillimetres = 50_000;

    private SheetPoint(double x, double y)
    {
        XMillimetres = x;
        YMillimetres = y;
    }

    /// <summary>The middle of the sheet.</summary>
    public static SheetPoint Middle => default;

    /// <summary>To the right of the middle, mm.</summary>
    public double XMillimetres { get; }

    /// <summary>Above the middle, mm.</summary>
    public double YMillimetres { get; }

    /// <summary>From millimetres to the right of the middle and above it.</summary>
    /// <exception cref="RefusalException">Not finite numbers in the range.</exception>
    public static SheetPoint FromMillimetres(double x, double y)
        => new(
            Guard.Within(x, -MaxMillimetres, MaxMillimetres, "the place across the sheet", "mm"),
            Guard.Within(y, -MaxMillimetres, MaxMillimetres, "the place up the sheet", "mm"));

    /// <summary>In millimetres, x then y.</summary>
    public override string ToString() => FormattableString.Invariant($"{XMillimetres:0.##}, {YMillimetres:0.##} mm");
}
