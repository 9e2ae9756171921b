using Foramen.Engine.Paper;

namespace Foramen.Cli.Output;

/// <summary>A fitted value with its 90 % interval.</summary>
internal sealed record EstimateReport(double Value, double Low, double High)
{
    public static EstimateReport Of(Estimate estimate) => new(estimate.Value, estimate.Low, estimate.High);
}
