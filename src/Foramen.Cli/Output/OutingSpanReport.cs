namespace Foramen.Cli.Output;

/// <summary>A span of time.</summary>
internal sealed record OutingSpanReport(string From, string To);
