namespace Foramen.Cli.Output;

/// <summary>Sheets to come; 1000 means that many or more.</summary>
/// <param name="Low">By the lowest activity.</param>
/// <param name="Middle">By the middle one.</param>
/// <param name="High">By the highest one.</param>
/// <param name="EndedBy">"activity", "volume", "data" or "none".</param>
internal sealed record BathSheetsLeftReport(int Low, int Middle, int High, string EndedBy);
