namespace Foramen.Cli.Output;

/// <summary>What came of a file.</summary>
/// <param name="File">Its path.</param>
/// <param name="Taken">Entries that were new.</param>
/// <param name="Known">Entries that were there already.</param>
/// <param name="Bad">Lines that could not be used.</param>
/// <param name="Complaint">The first complaint; null where there is none.</param>
internal sealed record JournalImportedFile(string File, int Taken, int Known, int Bad, string? Complaint);
