namespace Foramen.Cli.Output;

/// <summary>Exposure index in a light at a time.</summary>
internal sealed record PaperIndexReport(string Light, double Seconds, double ExposureIndex);
