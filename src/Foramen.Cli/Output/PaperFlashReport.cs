namespace Foramen.Cli.Output;

/// <summary>What a flash gains, by what can be seen.</summary>
internal sealed record PaperFlashReport(double Fraction, double VisibleGainStops, double TexturedRangeStops, double BaseDensity);
