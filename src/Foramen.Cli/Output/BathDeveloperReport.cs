namespace Foramen.Cli.Output;

/// <summary>What first tones say of the developer, over all bottles of its kind.</summary>
/// <param name="FirstTones">Observations.</param>
/// <param name="Bottles">That they were made in.</param>
/// <param name="Says">What moved it, in one sentence.</param>
/// <param name="AppearanceFactor">Development time over the time of first appearance.</param>
/// <param name="CapacityM2PerLitre">Area per litre that would bring it to nothing.</param>
/// <param name="OpenLossPerHour">Part lost per hour in the open at 20 °C.</param>
/// <param name="Q10">How many times faster 10 °C warmer.</param>
internal sealed record BathDeveloperReport(
    int FirstTones,
    int Bottles,
    string Says,
    BathParameterReport AppearanceFactor,
    BathParameterReport CapacityM2PerLitre,
    BathParameterReport OpenLossPerHour,
    BathParameterReport Q10);
