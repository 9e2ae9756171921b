using Foramen.Cli.Scans;
using Foramen.Engine.Paper;
using Foramen.Engine.Print;
using Foramen.Engine.Quantities;
using Foramen.Imaging;

namespace Foramen.Cli.Strips;

/// <summary>Densities of a strip out of a scan, with its corner marks and known areas as they are named at the prompt.</summary>
internal static class StripScanInput
{
    /// <summary>The densities, least exposed first.</summary>
    /// <param name="path">The scan.</param>
    /// <param name="corners">Four places in pixels: top left, top right, bottom right, bottom left.</param>
    /// <param name="known">Areas of known density in parts: "left,top,right,bottom=density", between semicolons.</param>
    /// <param name="patches">How many patches.</param>
    /// <param name="kind">Which way they must run.</param>
    /// <param name="whiteEdge">Part of the height along the top that is paper white.</param>
    /// <exception cref="RefusalException">What cannot be read, or a scan that cannot be used.</exception>
    public static IReadOnlyList<double?> Read(string path, string? corners, string? known, int patches, PaperKind kind, double whiteEdge)
    {
        if (corners is null || known is null)
        {
            throw new RefusalException("A scan needs its corner marks (--corners \"x,y x,y x,y x,y\") and at least one area of known density (--known \"0,0,1,0.2=0.07\").");
        }

        var (scan, _) = ScanReader.Read(path);
        var marks = ScanPoints.Four(corners);
        var read = StripScan.Read(scan, Homography.Through(marks[0], marks[1], marks[2], marks[3]), patches, kind, Known(known), whiteEdge);
        return [.. read.Densities.Select(density => (double?)Math.Round(density.Value, 3))];
    }

    private static List<(PatchArea Area, Density Density)> Known(string text)
    {
        var areas = new List<(PatchArea, Density)>();
        foreach (var one in text.Split(';', StringSplitOptions.RemoveEmptyEntries))
        {
            if (one.Split('=') is not [var place, var density] || place.Split(',') is not [var left, var top, var right, var bottom])
            {
                throw new RefusalException($"The known area is “{one.Trim()}”; write its place in parts of the strip and its density, such as \"0,0,1,0.2=0.07\".");
            }

            double Part(string part) => Guard.Within(QuantityText.Number(part, "a known area's place"), -5, 5, "a known area's place");
            areas.Add((new PatchArea(Part(left), Part(top), Part(right), Part(bottom)), Density.FromValue(QuantityText.Number(density, "a known density"))));
        }

        return areas;
    }
}
