namespace Foramen.Cli.Output;

/// <summary>A window.</summary>
internal sealed record OutingWindowReport(string Start, string End, string Best, double? ShortestExposureSeconds, double SunAzimuthDeg, double SunElevationDeg);
