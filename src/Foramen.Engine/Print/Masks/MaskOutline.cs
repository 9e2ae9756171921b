using Foramen.Engine.Quantities;

namespace Foramen.Engine.Print;

/// <summary>
/// The outline of a mask's shape: rings of places, right and up, about its middle, two units high or wide at most; what is wound about counts as inside (the nonzero
/// rule). Immutable.
/// </summary>
public sealed record MaskOutline
{
    private const int EllipsePoints = 180;
    private const int MostPoints = 40_000;

    private MaskOutline(IReadOnlyList<IReadOnlyList<(double X, double Y)>> rings, double width, double height)
        => (Rings, Width, Height) = (rings, width, height);

    /// <summary>The rings.</summary>
    public IReadOnlyList<IReadOnlyList<(double X, double Y)>> Rings { get; }

    /// <summary>Its width in its own units.</summary>
    public double Width { get; }

    /// <summary>Its height in its own units.</summary>
    public double Height { get; }

    /// <summary>An ellipse.</summary>
    /// <param name="heightOverWidth">0.02 to 50.</param>
    /// <exception cref="RefusalException">Outside the range.</exception>
    public static MaskOutline Ellipse(double heightOverWidth)
    {
        Guard.Within(heightOverWidth, 0.02, 50, "the ellipse's height over its width");
        return Of([[.. Enumerable.Range(0, EllipsePoints).Select(i => (Math.Cos(2 * Math.PI * i / EllipsePoints), heightOverWidth * Math.Sin(2 * Math.PI * i / EllipsePoints)))]]);
    }

    /// <summary>A line of text in the stencil alphabet.</summary>
    /// <exception cref="RefusalException">Empty, too long, or a letter the alphabet lacks.</exception>
    public static MaskOutline Text(string text) => Of(MaskAlphabet.Rings(text));

    /// <summary>The data of an SVG path (its <c>d</c> attribute), curves included; y runs downwards there.</summary>
    /// <exception cref="RefusalException">Not path data, too much of it, or nothing enclosed.</exception>
    public static MaskOutline SvgPath(string data) => Of([.. SvgPathData.Rings(data).Select(ring => ring.Select(place => (place.X, -place.Y)).ToList())]);

    private static MaskOutline Of(IReadOnlyList<IReadOnlyList<(double X, double Y)>> rings)
    {
        var places = rings.SelectMany(ring => ring).ToList();
        if (places.Count is < 3 or > MostPoints)
        {
            throw new RefusalException($"The mask's outline has {places.Count} places; it should have 3 to {MostPoints}.");
        }

        var (left, right) = (places.Min(place => place.X), places.Max(place => place.X));
        var (low, high) = (places.Min(place => place.Y), places.Max(place => place.Y));
        var size = Math.Max(right - left, high - low);
        if (!(right - left > 1e-3 * size) || !(high - low > 1e-3 * size) || !double.IsFinite(size))
        {
            throw new RefusalException("The mask's outline encloses nothing; it should have a width and a height.");
        }

        var scale = 2 / size;
        return new MaskOutline(
            [.. rings.Select(ring => ring.Select(place => ((place.X - ((left + right) / 2)) * scale, (place.Y - ((low + high) / 2)) * scale)).ToList())],
            (right - left) * scale,
            (high - low) * scale);
    }
}
