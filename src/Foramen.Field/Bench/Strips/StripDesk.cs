using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using Foramen.Journal.Bodies;
using Foramen.Journal.Fold;
using Foramen.Journal.Kit;
using Foramen.Journal.Strips;

namespace Foramen.Field.Bench.Strips;

/// <summary>What the strips of a box say, worked out from the ledger: the fit, or why there is none, and the strip to make next.</summary>
public sealed record StripDesk
{
    /// <summary>Its strips for the curve, read and not, oldest first.</summary>
    public required IReadOnlyList<StripRecord> Strips { get; init; }

    /// <summary>Its strips for the flash, oldest first.</summary>
    public IReadOnlyList<StripRecord> FlashStrips { get; init; } = [];

    /// <summary>The curve; null where the strips do not tell it.</summary>
    public StripFit? Fit { get; init; }

    /// <summary>Why there is none; null where there is one or no strip was read.</summary>
    public string? Refusal { get; init; }

    /// <summary>The most informative next strip for the curve; null without a fit, and until <see cref="Advised"/>.</summary>
    public StripAdvice? Next { get; init; }

    /// <summary>The next strip for failure; null without a fit, where the strips tell it, and until <see cref="Advised"/>.</summary>
    public StripAdvice? NextForFailure { get; init; }

    /// <summary>The same with the strips to make next; looking through all that can be made takes longer than the fit.</summary>
    public StripDesk Advised() => Fit is null ? this : this with
    {
        Next = StripAdvice.After(Fit, StripGoal.Curve),
        NextForFailure = Fit.Failure.IsAssumed ? StripAdvice.After(Fit, StripGoal.Failure) : null,
    };

    /// <summary>The desk of a box.</summary>
    public static StripDesk Of(Ledger ledger, KitItem<PaperDefinition> box)
    {
        var all = ledger.Strips.All.Where(strip => strip.Made?.Body.Paper == box.Id).OrderBy(strip => strip.Made!.Order).ToLookup(strip => strip.Made!.Body.Purpose);
        var bare = new StripDesk { Strips = [.. all[StripPurpose.Curve]], FlashStrips = [.. all[StripPurpose.Flash]] };
        var read = ledger.CurveStripsOf(box.Id);
        if (read.Count == 0)
        {
            return bare;
        }

        try
        {
            return bare with { Fit = StripReading.Fit(StripReading.Before(box, read), read) };
        }
        catch (RefusalException e)
        {
            return bare with { Refusal = e.Message };
        }
    }
}
