namespace Foramen.Cli.Output;

/// <summary>A patch beside the curve.</summary>
/// <param name="Strip">From 1.</param>
/// <param name="Seconds">Its time; zero for a masked patch.</param>
/// <param name="Density">As read.</param>
/// <param name="Fitted">On the curve.</param>
/// <param name="Trust">How far it was believed, 0 to 1.</param>
internal sealed record StripPatchReport(int Strip, double Seconds, double Density, double Fitted, double Trust);
