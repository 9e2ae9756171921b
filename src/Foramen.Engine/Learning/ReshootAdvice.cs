using Foramen.Engine.Exposure;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Learning;

/// <summary>The re-shoot card: after a judged sheet, what to change, the odds then, and whether it is worth another sheet given what is left.</summary>
public sealed record ReshootAdvice
{
    // A fifth of a stop is within what nobody can tell by eye.
    private const double WorthSaying = 0.2;

    private ReshootAdvice()
    {
    }

    /// <summary>Time and flash that were given.</summary>
    public required SheetExposure Given { get; init; }

    /// <summary>Time and flash for the next sheet.</summary>
    public required SheetExposure Next { get; init; }

    /// <summary>How much more exposure that is; negative for less.</summary>
    public required Stops Change { get; init; }

    /// <summary>Whether the time should change enough to matter.</summary>
    public bool ChangesTime => Math.Abs(Change.Value) >= WorthSaying;

    /// <summary>Whether a flash should be begun, left out, or changed by half a stop or more.</summary>
    public required bool ChangesFlash { get; init; }

    /// <summary>Whether to frame anew: the frame spoilt this sheet.</summary>
    public required bool Reframe { get; init; }

    /// <summary>Whether to wait: something moved, or the light would not hold still.</summary>
    public required bool Wait { get; init; }

    /// <summary>What the next sheet would have had, exposed as this one was.</summary>
    public required Probability OddsUnchanged { get; init; }

    /// <summary>The odds of the next sheet as advised.</summary>
    public required SheetOdds Odds { get; init; }

    /// <summary>What a sheet is worth elsewhere, as probability of a keeper.</summary>
    public required Probability WorthElsewhere { get; init; }

    /// <summary>Whether it is worth a sheet. Never for a sheet that is a keeper already.</summary>
    public required bool IsWorthASheet { get; init; }

    /// <summary>
    /// The advice. A sheet kept for a subject still to come is worth the user's hit rate h, while there are no more sheets than subjects; a spare one is
    /// worth a second try there, h·(1 − h).
    /// </summary>
    /// <param name="plan">The scene as it is now, planned with what this sheet taught.</param>
    /// <param name="given">What this sheet was given, as time in the metered light.</param>
    /// <param name="wasKeeper">Whether it is a keeper.</param>
    /// <param name="losses">What spoilt it besides its tones.</param>
    /// <param name="lightChanged">Whether its maker says that the light changed or was read wrongly.</param>
    /// <param name="mishaps">How often anything spoils a sheet.</param>
    /// <param name="sheetsLeft">Sheets left in the bag, 0 or more.</param>
    /// <param name="subjectsLeft">Other subjects still wanted today, 0 or more.</param>
    /// <param name="hitRate">The user's share of keepers.</param>
    /// <exception cref="RefusalException">Too little light for any advice, or a number out of its range.</exception>
    public static ReshootAdvice For(
        LearnedPlan plan,
        SheetExposure given,
        bool wasKeeper,
        IReadOnlyCollection<SheetLoss> losses,
        bool lightChanged,
        MishapRates mishaps,
        int sheetsLeft,
        int subjectsLeft,
        Probability hitRate)
    {
        Guard.Within(sheetsLeft, 0, 10_000, "the sheets left");
        Guard.Within(subjectsLeft, 0, 10_000, "the subjects left");
        var next = plan.Planner.Likeliest();
        var odds = SheetOdds.Of(plan.Planner.Forecast(next), mishaps);
        var same = given.Flash.Seconds > 0 && !plan.Basis.Flash.IsPossible ? given with { Flash = default } : given;
        var elsewhere = sheetsLeft > subjectsLeft ? hitRate.Fraction * (1 - hitRate.Fraction) : hitRate.Fraction;
        elsewhere = subjectsLeft == 0 ? 0 : elsewhere;
        var law = plan.Paper.Failure;
        return new ReshootAdvice
        {
            Given = given,
            Next = next,
            Change = Stops.FromRatio(law.MeteredSecondsFor(next.Time.Seconds) / law.MeteredSecondsFor(given.Time.Seconds)),
            ChangesFlash = Differ(next.Flash.Seconds, given.Flash.Seconds),
            Reframe = losses.Contains(SheetLoss.Frame),
            Wait = losses.Contains(SheetLoss.Motion) || lightChanged,
            OddsUnchanged = Probability.FromFraction(plan.Planner.OddsFor(same).Fraction * mishaps.NoMishap.Fraction),
            Odds = odds,
            WorthElsewhere = Probability.FromFraction(elsewhere),
            IsWorthASheet = !wasKeeper && sheetsLeft > 0 && odds.Total.Fraction > elsewhere,
        };
    }

    private static bool Differ(double next, double given)
        => next <= 0 || given <= 0 ? (next > 0) != (given > 0) : Math.Abs(Math.Log2(next / given)) >= 0.5;
}
