using System.Text.Json.Serialization;

namespace Foramen.Storage.Backups;

/// <summary>What must be in a backup.</summary>
/// <param name="ForamenBackup">The version of the list; 1.</param>
/// <param name="Entries">How many entries.</param>
/// <param name="Sha256">SHA-256 over their lines in order, each with a line break behind it.</param>
/// <param name="Pictures">The hashes of the pictures.</param>
public sealed record BackupList(int ForamenBackup, long Entries, string Sha256, IReadOnlyList<string> Pictures);

[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, WriteIndented = true)]
[JsonSerializable(typeof(BackupList))]
internal sealed partial class BackupJson : JsonSerializerContext;
