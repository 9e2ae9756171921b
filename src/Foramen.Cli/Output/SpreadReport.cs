namespace Foramen.Cli.Output;

/// <summary>A best guess between two bounds, which are what the gentlest and the harshest model make of the handbooks' ranges.</summary>
internal sealed record SpreadReport(double Low, double Middle, double High);
