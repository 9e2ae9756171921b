using System.Text.Json;
using System.Text.Json.Nodes;

namespace Foramen.Demo.Render;

/// <summary>What is true of a rendered photograph: the mean luminance of named regions, before any sensor or code.</summary>
internal static class Truth
{
    private static readonly JsonSerializerOptions Indented = new() { WriteIndented = true };

    private static readonly Dictionary<string, Region[]> Regions = new(StringComparer.Ordinal)
    {
        ["canal-basin"] =
        [
            new("elevator in the sun", 0.343, 0.25, 0.350, 0.30),
            new("elevator, edge of a silo", 0.3575, 0.25, 0.3595, 0.30),
            new("blue sky", 0.62, 0.10, 0.70, 0.16),
            new("sunlit cloud", 0.04, 0.38, 0.08, 0.40),
            new("pump house wall", 0.715, 0.42, 0.735, 0.44),
            new("pump house doorway", 0.755, 0.48, 0.780, 0.52),
            new("towpath", 0.52, 0.80, 0.60, 0.86),
            new("grass", 0.90, 0.66, 0.95, 0.70),
            new("trees", 0.05, 0.455, 0.15, 0.49),
            new("water", 0.10, 0.85, 0.20, 0.92),
        ],
    };

    public static string Of(Shot shot, Picture picture)
    {
        var regions = new JsonArray();
        foreach (var region in Regions.GetValueOrDefault(shot.Name, []))
        {
            var mean = picture.Mean(region);
            regions.Add(new JsonObject
            {
                ["name"] = region.Name,
                ["left"] = region.Left,
                ["top"] = region.Top,
                ["right"] = region.Right,
                ["bottom"] = region.Bottom,
                ["luminanceCdPerM2"] = Math.Round(mean.Luminance, 2),
                ["linearRgb"] = new JsonArray(Math.Round(mean.R, 2), Math.Round(mean.G, 2), Math.Round(mean.B, 2)),
            });
        }

        return new JsonObject
        {
            ["photograph"] = shot.Name + ".jpg",
            ["whiteLuminanceCdPerM2"] = Math.Round(shot.WhiteLuminance, 2),
            ["regions"] = regions,
        }.ToJsonString(Indented);
    }
}
