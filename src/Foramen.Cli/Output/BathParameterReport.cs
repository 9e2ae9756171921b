namespace Foramen.Cli.Output;

/// <summary>One parameter of a developer.</summary>
/// <param name="Low">Lower end of the 90 % interval.</param>
/// <param name="Middle">The median.</param>
/// <param name="High">Upper end.</param>
/// <param name="Before">The starting value.</param>
/// <param name="From">"assumed" while the data say little: then the starting value is used; "learned" after.</param>
internal sealed record BathParameterReport(double Low, double Middle, double High, double Before, string From);
