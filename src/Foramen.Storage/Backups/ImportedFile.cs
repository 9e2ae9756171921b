namespace Foramen.Storage.Backups;

/// <summary>What came of a journal file.</summary>
/// <param name="File">Its path.</param>
/// <param name="Taken">Entries that were new.</param>
/// <param name="Known">Entries that were there already.</param>
/// <param name="Bad">Lines that could not be used.</param>
/// <param name="Complaint">The first complaint, or why the whole file was left; null where there is none.</param>
public sealed record ImportedFile(string File, int Taken, int Known, int Bad, string? Complaint);
