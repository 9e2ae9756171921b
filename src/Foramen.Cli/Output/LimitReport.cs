namespace Foramen.Cli.Output;

/// <summary>What one source of error costs.</summary>
internal sealed record LimitReport(string Source, double OddsWithout, double Share);
