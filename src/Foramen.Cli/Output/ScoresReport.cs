using Foramen.Engine.Learning;

namespace Foramen.Cli.Output;

/// <summary>How good stated odds were.</summary>
internal sealed record ScoresReport
{
    public required int Sheets { get; init; }

    public required double Brier { get; init; }

    public required double Reliability { get; init; }

    public required double Resolution { get; init; }

    public required double Uncertainty { get; init; }

    public required double LogScore { get; init; }

    public required double CalibrationError { get; init; }

    /// <summary>Whether there are sheets enough to read the bars.</summary>
    public required bool IsTelling { get; init; }

    public required IReadOnlyList<BinReport> Bars { get; init; }

    public static ScoresReport Of(ForecastScores scores) => new()
    {
        Sheets = scores.Sheets,
        Brier = scores.Brier,
        Reliability = scores.Reliability,
        Resolution = scores.Resolution,
        Uncertainty = scores.Uncertainty,
        LogScore = scores.LogScore,
        CalibrationError = scores.CalibrationError,
        IsTelling = scores.IsTelling,
        Bars = [.. scores.Bins.Select(bin => new BinReport(
            bin.From.Fraction, bin.To.Fraction, bin.Sheets, bin.MeanOdds.Fraction, bin.KeptShare.Fraction, bin.Interval.Low.Fraction, bin.Interval.High.Fraction))],
    };
}
