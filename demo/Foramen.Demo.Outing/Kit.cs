using System.Text.Json;
using Foramen.Journal.Kit;

namespace Foramen.Demo.Outing;

/// <summary>The demo's cameras and papers, from demo/kit.</summary>
internal static class Kit
{
    public static CameraDefinition Camera(string file) => JsonSerializer.Deserialize(File.ReadAllText(file), KitJson.Default.CameraDefinition)!;

    public static PaperDefinition Paper(string file) => JsonSerializer.Deserialize(File.ReadAllText(file), KitJson.Default.PaperDefinition)!;
}
