namespace Foramen.Cli.Output;

/// <summary>What <c>foramen meter --json</c> says.</summary>
/// <param name="LuminanceCdPerM2">Luminance, cd/m².</param>
/// <param name="EvAtIso100">Exposure value at ISO 100.</param>
/// <param name="Light">Colour of the light, in words.</param>
/// <param name="LightKelvin">Colour temperature of the light, K.</param>
/// <param name="ActinicStopsFromNoon">What blue-sensitive paper makes of this light against noon light of the same reading, stops.</param>
/// <param name="MeterConstantK">K of the meter (ISO 2720).</param>
internal sealed record MeterReport(
    double LuminanceCdPerM2, double EvAtIso100, string Light, double LightKelvin, double ActinicStopsFromNoon, double MeterConstantK);
