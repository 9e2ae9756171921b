namespace Foramen.Cli.Output;

/// <summary>A place with its windows, and when sky and lamps are in balance there.</summary>
internal sealed record OutingPlaceReport(
    string Name, double LatitudeDeg, double LongitudeDeg, double FacadeBearingDeg, IReadOnlyList<OutingWindowReport> Windows, IReadOnlyList<OutingSpanReport> Balances);
