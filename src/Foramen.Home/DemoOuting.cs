using System.Security.Cryptography;

namespace Foramen.Home;

/// <summary>The demo outing: a journal file, and the photographs it speaks of, found beside it by what they hold.</summary>
internal sealed class DemoOuting(string? journal)
{
    private readonly Lazy<Dictionary<string, string>> photographs = new(() => journal is null
        ? []
        : Directory.EnumerateFiles(Path.GetDirectoryName(Path.GetFullPath(journal))!, "*.jpg").ToDictionary(Hash, StringComparer.Ordinal));

    /// <summary>Field asks where its own journal is still empty, and takes no content for no demo.</summary>
    public void MapTo(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/demo/outing.jsonl", () => journal is null ? Results.NoContent() : Results.File(Path.GetFullPath(journal), "application/jsonl"));
        routes.MapGet(
            "/demo/photographs/{hash}",
            (string hash) => photographs.Value.TryGetValue(hash, out var file) ? Results.File(file, "image/jpeg") : Results.NotFound());
    }

    private static string Hash(string file)
    {
        using var stream = File.OpenRead(file);
        return Convert.ToHexStringLower(SHA256.HashData(stream));
    }
}
