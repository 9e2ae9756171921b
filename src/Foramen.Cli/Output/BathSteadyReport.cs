namespace Foramen.Cli.Output;

/// <summary>The steady state in closed form, at the middle capacity.</summary>
/// <param name="Refreshed">r, the part replaced after each sheet.</param>
/// <param name="Exhaustion">e, the part that a sheet takes.</param>
/// <param name="Additive">s − e(1 − r)/r; below zero the bottle fails first.</param>
/// <param name="Multiplicative">r·s/(1 − (1 − r)(1 − e)).</param>
internal sealed record BathSteadyReport(double Refreshed, double Exhaustion, double Additive, double Multiplicative);
