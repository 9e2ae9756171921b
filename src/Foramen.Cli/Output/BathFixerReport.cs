namespace Foramen.Cli.Output;

/// <summary>A bottle of fixer in use.</summary>
internal sealed record BathFixerReport(string Bottle, string Name, double TimeSeconds, int SheetsFixed, double SilverGramsPerLitre, double M2PerLitre, int SheetsLeft, bool Spent);
