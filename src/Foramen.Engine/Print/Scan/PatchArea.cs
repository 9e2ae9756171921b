namespace Foramen.Engine.Print;

/// <summary>A rectangle between corner marks, in parts of their width and height from the top left.</summary>
public readonly record struct PatchArea(double Left, double Top, double Right, double Bottom)
{
    /// <summary>The same with a margin left off on every side, in parts of its own size: edges of patches are soft.</summary>
    public PatchArea Inside(double margin)
    {
        var (x, y) = ((Right - Left) * margin, (Bottom - Top) * margin);
        return new PatchArea(Left + x, Top + y, Right - x, Bottom - y);
    }

    /// <summary>About a place, as wide and as high as said.</summary>
    public static PatchArea Around((double U, double V) place, double width, double height)
        => new(place.U - (width / 2), place.V - (height / 2), place.U + (width / 2), place.V + (height / 2));
}
