namespace Foramen.Cli.Output;

/// <summary>What a flash gives and takes.</summary>
/// <param name="Fraction">Flash over threshold.</param>
/// <param name="VisibleGainStops">Fainter tones that are seen.</param>
/// <param name="TexturedRangeStops">Range that shows texture.</param>
/// <param name="BaseChange">Density lost of the deepest black, or fog in the white.</param>
/// <param name="FaintContrast">Contrast of the faintest two stops over what it is without flash.</param>
internal sealed record StripFlashTradeReport(double Fraction, double VisibleGainStops, double TexturedRangeStops, double BaseChange, double FaintContrast);
