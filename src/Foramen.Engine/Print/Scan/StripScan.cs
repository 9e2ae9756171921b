using Foramen.Engine.Camera;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Print;

/// <summary>
/// The densities of a strip on a scan or a photograph. Four corner marks say where it is; the patches stand side by side between them, least exposed on the left; along
/// the top an edge may be paper white, and corrects uneven light.
/// </summary>
/// <remarks>Limits: trust scans to about density 1.7, for glossy blacks read too light by flare (common practice, no source); automatic corrections must be off.</remarks>
public sealed record StripScan
{
    private const double PatchMargin = 0.2;
    private const double MostClipped = 0.02;

    private StripScan(IReadOnlyList<Density> densities) => Densities = densities;

    /// <summary>Density of each patch, least exposed first.</summary>
    public IReadOnlyList<Density> Densities { get; }

    /// <summary>Reads a strip.</summary>
    /// <param name="scan">The scan; of a coloured one its luma counts.</param>
    /// <param name="map">Its corner marks.</param>
    /// <param name="patches">How many patches, 3 to 100.</param>
    /// <param name="kind">Negative-working or direct-positive: says which way the patches must run.</param>
    /// <param name="known">Areas of known density: a step tablet, or paper white and full black.</param>
    /// <param name="whiteEdge">Part of the height along the top that is paper white, 0 for none.</param>
    /// <exception cref="RefusalException">Clipped, upside down, mirrored, beyond the border, or without known patches.</exception>
    public static StripScan Read(
        ScanImage scan, Homography map, int patches, PaperKind kind, IReadOnlyList<(PatchArea Area, Density Density)> known, double whiteEdge = 0)
    {
        Guard.Within(patches, 3, 100, "the number of patches");
        Guard.Within(whiteEdge, 0, 0.5, "the white edge's part of the height");
        double[] Lights(UnevenLight even)
            => [.. Enumerable.Range(0, patches).Select(i => LightOf(scan, map, new PatchArea(i / (double)patches, whiteEdge, (i + 1) / (double)patches, 1).Inside(PatchMargin), even))];

        // Which way round comes first, and without the edge: a strip that is turned has its edge and its known patches in the wrong places too.
        RefuseTurned(Lights(UnevenLight.None), kind);
        var even = whiteEdge > 0 ? UnevenLight.Along(scan, map, new PatchArea(0, 0, 1, whiteEdge).Inside(0.1)) : UnevenLight.None;
        var lights = Lights(even);
        var scale = ReflectanceScale.Through([.. known.Select(one => (LightOf(scan, map, one.Area, even), one.Density))]);
        return new StripScan([.. lights.Select(scale.DensityOf)]);
    }

    private static double LightOf(ScanImage scan, Homography map, PatchArea area, UnevenLight even)
    {
        var light = PatchLight.Of(scan, map, area);
        return light switch
        {
            { ClippedLight: > MostClipped } => throw new RefusalException("A light patch is clipped in the scan; scan again darker, with every automatic correction off."),
            { ClippedDark: > MostClipped } => throw new RefusalException("A dark patch is clipped in the scan; scan again lighter, with every automatic correction off."),
            _ => light.Mean / even.At((area.Left + area.Right) / 2),
        };
    }

    private static void RefuseTurned(double[] lights, PaperKind kind)
    {
        var middle = (lights.Length - 1) / 2.0;
        var trend = lights.Select((light, i) => (i - middle) * Math.Log(Math.Max(1e-4, light))).Sum();
        if (trend > 0 == (kind == PaperKind.NegativeWorking))
        {
            throw new RefusalException("The patches run the wrong way against the corner marks, so the scan is upside down or mirrored; name the corners with the least exposed patch on the left.");
        }
    }
}
