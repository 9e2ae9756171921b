namespace Foramen.Cli.Output;

/// <summary>What <c>foramen learn --json</c> says.</summary>
internal sealed record LearnReport
{
    public required IReadOnlyList<BeliefReport> Beliefs { get; init; }

    /// <summary>Scatter from sheet to sheet over what is assumed of a new user.</summary>
    public required double ScatterFactor { get; init; }

    /// <summary>Spread of readings and judgements over what is assumed.</summary>
    public required double ReadingFactor { get; init; }

    /// <summary>How many times as far off as the bands say sheets are kept.</summary>
    public required double Tolerance { get; init; }

    public required double FrameMishap { get; init; }

    public required double MotionMishap { get; init; }

    public required double ProcessMishap { get; init; }

    public required IReadOnlyList<EvidenceReport> Evidence { get; init; }

    /// <summary>Sheets that were judged but taught nothing, and why.</summary>
    public required IReadOnlyList<string> LeftOut { get; init; }

    public required int Judged { get; init; }

    public required int Kept { get; init; }

    public ScoresReport? Odds { get; init; }
}
