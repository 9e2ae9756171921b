namespace Foramen.Cli.Output;

/// <summary>What <c>foramen journal import</c> did.</summary>
/// <param name="Files">One for each file.</param>
internal sealed record JournalImportReport(IReadOnlyList<JournalImportedFile> Files);
