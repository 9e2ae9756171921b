namespace Foramen.Cli.Output;

/// <summary>A place with its windows.</summary>
internal sealed record OutingPlaceReport(string Name, double LatitudeDeg, double LongitudeDeg, double FacadeBearingDeg, IReadOnlyList<OutingWindowReport> Windows);
