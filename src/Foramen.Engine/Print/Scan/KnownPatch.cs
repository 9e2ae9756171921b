using Foramen.Engine.Camera;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Print;

/// <summary>A patch of known density on a scan: a step of a tablet, a grey card, the ground itself, or paper that saw no light.</summary>
/// <param name="Middle">Where its middle is.</param>
/// <param name="RadiusPixels">How far around it is even, pixels, 1 to 2000.</param>
/// <param name="Density">Its density.</param>
public sealed record KnownPatch(PixelPoint Middle, double RadiusPixels, Density Density)
{
    private const double MostClipped = 0.02;

    /// <summary>Its light on the scan.</summary>
    /// <exception cref="RefusalException">It reaches beyond the border, or is clipped.</exception>
    internal double LightOn(ScanImage scan)
    {
        // Half a square's side, so that its corners stay within the radius.
        var half = Guard.Within(RadiusPixels, 1, 2000, "the patch's radius", "pixels") / Math.Sqrt(2);
        var (x, y) = (Middle.X, Middle.Y);
        if (x - half < 0 || y - half < 0 || x + half > scan.Width || y + half > scan.Height)
        {
            throw new RefusalException(FormattableString.Invariant($"The known patch at {x:0}, {y:0} reaches beyond the picture's border; name one that lies whole inside it."));
        }

        var map = Homography.Through(
            PixelPoint.At(x - half, y - half), PixelPoint.At(x + half, y - half), PixelPoint.At(x + half, y + half), PixelPoint.At(x - half, y + half));
        return PatchLight.Of(scan, map, new PatchArea(0, 0, 1, 1)) switch
        {
            { ClippedLight: > MostClipped } => throw new RefusalException(FormattableString.Invariant($"The known patch at {x:0}, {y:0} is clipped to white; take the picture again darker.")),
            { ClippedDark: > MostClipped } => throw new RefusalException(FormattableString.Invariant($"The known patch at {x:0}, {y:0} is clipped to black; take the picture again lighter.")),
            var light => light.Mean,
        };
    }
}
