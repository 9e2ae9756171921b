namespace Foramen.Cli.Output;

/// <summary>One solution to bring.</summary>
/// <param name="Bath">"developer", "rinse", "stop", "fix" or "wash".</param>
/// <param name="WorkingMl">Working solution in all.</param>
/// <param name="ConcentrateMl">Concentrate in that.</param>
/// <param name="WaterMl">Water in that.</param>
/// <param name="Fills">How many times its bottle is filled afresh.</param>
internal sealed record KitLiquidReport(string Bath, double WorkingMl, double ConcentrateMl, double WaterMl, int Fills);
