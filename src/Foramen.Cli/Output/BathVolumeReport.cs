namespace Foramen.Cli.Output;

/// <summary>Where the liquid went: filled + added = now + lost + poured.</summary>
internal sealed record BathVolumeReport(double NowMl, double FilledMl, double AddedMl, double LostMl, double PouredMl, double CapacityMl, double CoveringMl);
