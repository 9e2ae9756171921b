using Foramen.Engine.Camera;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Print;

/// <summary>A print on a scan, with all that is needed to read densities from it. Immutable.</summary>
/// <param name="Scan">The scan or photograph.</param>
/// <param name="Corners">The sheet on it, rim and all.</param>
/// <param name="Scale">From light to reflectance.</param>
/// <param name="Light">How the light lies over it; null where it counts as even.</param>
public sealed record PrintSetting(ScanImage Scan, PrintCorners Corners, ReflectanceScale Scale, LightField? Light)
{
    /// <summary>What the light at a pixel is to be divided by, so that it is as in the middle of the picture.</summary>
    internal double UnevennessAt(double x, double y) => UnevennessAt(Light, x, y);

    /// <summary>The scale through patches of known density, beside the print or on it.</summary>
    /// <param name="scan">The scan or photograph.</param>
    /// <param name="light">How the light lies over it; null where it counts as even.</param>
    /// <param name="known">Patches on it.</param>
    /// <param name="ground">Density of the ground around the print, where it is known; only where the light is.</param>
    /// <exception cref="RefusalException">None, or their light does not follow their densities, or one is clipped or beyond the border.</exception>
    public static ReflectanceScale ScaleThrough(ScanImage scan, LightField? light, IReadOnlyList<KnownPatch> known, Density? ground = null)
    {
        List<(double, Density)> all = [.. known.Select(patch => (patch.LightOn(scan) / UnevennessAt(light, patch.Middle.X, patch.Middle.Y), patch.Density))];
        if (ground is { } density && light is not null)
        {
            all.Add((Math.Exp(light.LnInTheMiddle), density));
        }

        return ReflectanceScale.Through(all);
    }

    private static double UnevennessAt(LightField? light, double x, double y)
        => light is null ? 1 : Math.Exp(light.LnAt(x, y) - light.LnInTheMiddle);
}
