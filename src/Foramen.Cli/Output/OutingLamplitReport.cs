namespace Foramen.Cli.Output;

/// <summary>What lamps light, and how long a sheet of it takes where camera and paper are known.</summary>
/// <param name="LuminanceCdM2">Its luminance.</param>
/// <param name="ExposureSeconds">Time for a mid-tone by the paper's law; null without camera and paper.</param>
/// <param name="ShorterSeconds">If failure is less than the law says by one standard deviation.</param>
/// <param name="LongerSeconds">If it is more by one.</param>
internal sealed record OutingLamplitReport(double LuminanceCdM2, double? ExposureSeconds, double? ShorterSeconds, double? LongerSeconds);
