namespace Foramen.Cli.Output;

/// <summary>One bar of the reliability diagram.</summary>
internal sealed record BinReport(double From, double To, int Sheets, double MeanOdds, double Kept, double KeptLow, double KeptHigh);
