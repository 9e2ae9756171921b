namespace Foramen.Cli.Output;

/// <summary>Two sheets instead of one.</summary>
internal sealed record BracketReport(double FirstSeconds, double SecondSeconds, double SpacingStops, double OddsOfOne);
