using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using Foramen.Cli.Output;
using Foramen.Engine.Quantities;
using Foramen.Journal.Kit;

namespace Foramen.Cli.Kit;

/// <summary>Cameras and papers kept as small JSON files, the same bodies as in a journal.</summary>
internal static class KitFile
{
    private const long LargestBytes = 1 << 20;

    public static CameraDefinition Camera(string path) => Read(path, KitJson.Default.CameraDefinition, "camera", "foramen camera");

    public static PaperDefinition Paper(string path) => Read(path, KitJson.Default.PaperDefinition, "paper", "foramen paper");

    public static MaskDefinition Mask(string path) => Read(path, KitJson.Default.MaskDefinition, "mask", "foramen mask");

    public static MotionFile Moving(string path) => Read(path, KitJson.Default.MotionFile, "moving-regions", null);

    /// <summary>Writes a definition, whole or not at all, and says where to.</summary>
    /// <exception cref="RefusalException">There is no such folder.</exception>
    public static void Save<T>(string path, T definition, JsonTypeInfo<T> type, Page page)
    {
        Save(path, definition, type);
        page.Note($"written to {path}");
    }

    /// <summary>Writes a definition, whole or not at all.</summary>
    /// <exception cref="RefusalException">There is no such folder.</exception>
    public static void Save<T>(string path, T definition, JsonTypeInfo<T> type)
    {
        var directory = Path.GetDirectoryName(Path.GetFullPath(path))!;
        if (!Directory.Exists(directory))
        {
            throw new RefusalException($"There is no folder {directory} to write {Path.GetFileName(path)} into; make it first.");
        }

        var temporary = Path.Combine(directory, $".{Path.GetFileName(path)}.{Environment.ProcessId}.part");
        File.WriteAllText(temporary, JsonSerializer.Serialize(definition, type) + "\n");
        File.Move(temporary, path, overwrite: true);
    }

    /// <summary>A small JSON file.</summary>
    /// <param name="path">The file.</param>
    /// <param name="type">What is in it.</param>
    /// <param name="what">What that is called.</param>
    /// <param name="maker">The verb that writes such a file; null where it is written by hand.</param>
    /// <exception cref="RefusalException">No such file, or something else in it.</exception>
    public static T Read<T>(string path, JsonTypeInfo<T> type, string what, string? maker)
    {
        string How(string name) => maker is null ? "write one as docs/guide.md says" : $"make one with {maker} … --save {name}";
        var how = How("FILE");
        var file = new FileInfo(path);
        if (!file.Exists)
        {
            throw new RefusalException($"There is no {what} file {path}; {How(Path.GetFileName(path))}.");
        }

        if (file.Length > LargestBytes)
        {
            throw new RefusalException($"{path} is larger than a megabyte, so it is not a {what} file; {how}.");
        }

        try
        {
            return JsonSerializer.Deserialize(File.ReadAllText(path), type)
                ?? throw new RefusalException($"{path} is empty, so it is not a {what} file; {how}.");
        }
        catch (JsonException failure)
        {
            var line = failure.LineNumber is { } number ? $" at line {number + 1}" : "";
            throw new RefusalException($"{path} cannot be read as a {what} file{line}: {failure.Message.Split(" Path:")[0].Split(" LineNumber")[0].TrimEnd('.')}.", failure);
        }
    }
}
