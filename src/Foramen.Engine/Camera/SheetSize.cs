using Foramen.Engine.Quantities;

namespace Foramen.Engine.Camera;

/// <summary>Width and height of the picture area of a sheet as it lies in the camera; on curved paper the width runs along the curve.</summary>
/// <remarks>Each 2 mm to 20 m; anything else is refused. Immutable.</remarks>
public readonly record struct SheetSize
{
    private SheetSize(Length width, Length height)
    {
        Width = width;
        Height = height;
    }

    /// <summary>From side to side.</summary>
    public Length Width { get; }

    /// <summary>From the lower edge to the upper.</summary>
    public Length Height { get; }

    /// <summary>From millimetres.</summary>
    /// <exception cref="RefusalException">Outside 2 mm to 20 m.</exception>
    public static SheetSize FromMillimetres(double width, double height)
        => new(
            Length.FromMillimetres(Guard.Within(width, 2, 20_000, "the sheet's width", "mm")),
            Length.FromMillimetres(Guard.Within(height, 2, 20_000, "the sheet's height", "mm")));

    /// <summary>From lengths.</summary>
    /// <exception cref="RefusalException">Outside 2 mm to 20 m.</exception>
    public static SheetSize FromLengths(Length width, Length height) => FromMillimetres(width.Millimetres, height.Millimetres);

    /// <summary>Width × height in millimetres.</summary>
    public override string ToString() => FormattableString.Invariant($"{Width.Millimetres:0.##} × {Height.Millimetres:0.##} mm");
}
