namespace Foramen.Cli.Output;

/// <summary>A step of the schedule.</summary>
internal sealed record OutingStepReport(string Kind, string Place, string Start, string End, int? Sheet, double? SunOdds);
