namespace Foramen.Imaging.Tests.TestKit;

/// <summary>An empty folder that goes away with the test.</summary>
public sealed class TemporaryFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("foramen-tests-").FullName;

    /// <summary>What is in it, by name.</summary>
    public IReadOnlyList<string> Names => [.. Directory.EnumerateFileSystemEntries(Path).Select(entry => System.IO.Path.GetFileName(entry)).Order(StringComparer.Ordinal)];

    public string File(string name) => System.IO.Path.Combine(Path, name);

    /// <summary>Writes a file into it and returns its path.</summary>
    public string With(string name, byte[] bytes)
    {
        System.IO.File.WriteAllBytes(File(name), bytes);
        return File(name);
    }

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
