using System.Text.Json;
using Foramen.Demo.Render;

namespace Foramen.Imaging.Tests.TestKit;

/// <summary>The demo's photographs and what is true of them, found from where the tests run upwards.</summary>
internal static class DemoFiles
{
    private static readonly string Root = Up(AppContext.BaseDirectory);

    public static string Photograph => Path.Combine(Root, "demo", "canal-basin.jpg");

    /// <summary>Named rectangles with their true mean luminance, cd/m², and mean linear sRGB on the same scale.</summary>
    public static IReadOnlyList<(Region Region, double Luminance, double[] Rgb)> Truth()
    {
        using var file = JsonDocument.Parse(File.ReadAllText(Path.ChangeExtension(Photograph, ".truth.json")));
        return
        [
            .. file.RootElement.GetProperty("regions").EnumerateArray().Select(region => (
                new Region(
                    region.GetProperty("name").GetString()!, region.GetProperty("left").GetDouble(), region.GetProperty("top").GetDouble(),
                    region.GetProperty("right").GetDouble(), region.GetProperty("bottom").GetDouble()),
                region.GetProperty("luminanceCdPerM2").GetDouble(),
                region.GetProperty("linearRgb").EnumerateArray().Select(value => value.GetDouble()).ToArray())),
        ];
    }

    private static string Up(string folder)
        => File.Exists(Path.Combine(folder, "Foramen.slnx")) ? folder
            : Up(Path.GetDirectoryName(folder) ?? throw new InvalidOperationException("The tests do not run inside the repository."));
}
