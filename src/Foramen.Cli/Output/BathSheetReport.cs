namespace Foramen.Cli.Output;

/// <summary>One sheet that went through.</summary>
/// <param name="Sheet">Its id.</param>
/// <param name="Name">Its name; null where it has none.</param>
/// <param name="At">When.</param>
/// <param name="AreaCm2">Its area, cm².</param>
/// <param name="MeanDensity">Above the paper's white.</param>
/// <param name="DensityFrom">"stated", "judged", "predicted" or "assumed".</param>
/// <param name="TemperatureCelsius">Of the developer.</param>
/// <param name="ActivityBefore">Middle activity when it went in.</param>
/// <param name="DevelopSeconds">The time the bottle asked for then; null where there was none.</param>
/// <param name="DevelopedSeconds">The time it was given; null where nobody has said.</param>
internal sealed record BathSheetReport(
    string Sheet, string? Name, string At, double AreaCm2, double MeanDensity, string DensityFrom, double TemperatureCelsius, double ActivityBefore, double? DevelopSeconds, double? DevelopedSeconds);
