using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using Foramen.Journal.Fold;
using Foramen.Journal.Kit;
using Foramen.Journal.Strips;

namespace Foramen.Field.Bench.Strips;

/// <summary>What the strips of a box say, worked out from the ledger: the fit, or why there is none, and the strip to make next.</summary>
public sealed record StripDesk
{
    /// <summary>Its strips for the curve, read and not, oldest first.</summary>
    public required IReadOnlyList<StripRecord> Strips { get; init; }

    /// <summary>The curve; null where the strips do not tell it.</summary>
    public StripFit? Fit { get; init; }

    /// <summary>Why there is none; null where there is one or no strip was read.</summary>
    public string? Refusal { get; init; }

    /// <summary>The most informative next strip for the curve; null where no strip was read.</summary>
    public StripAdvice? Next { get; init; }

    /// <summary>The next strip for failure; null without a fit.</summary>
    public StripAdvice? NextForFailure { get; init; }

    /// <summary>The desk of a box.</summary>
    public static StripDesk Of(Ledger ledger, KitItem<PaperDefinition> box)
    {
        var strips = ledger.Strips.All
            .Where(strip => strip is { Made.Body.Purpose: Journal.Bodies.StripPurpose.Curve } && strip.Made.Body.Paper == box.Id)
            .OrderBy(strip => strip.Made!.Order)
            .ToList();
        var read = ledger.CurveStripsOf(box.Id);
        if (read.Count == 0)
        {
            return new StripDesk { Strips = strips };
        }

        try
        {
            var fit = StripReading.Fit(StripReading.Before(box, read), read);
            return new StripDesk
            {
                Strips = strips,
                Fit = fit,
                Next = StripAdvice.After(fit, StripGoal.Curve),
                NextForFailure = fit.Failure.IsAssumed ? StripAdvice.After(fit, StripGoal.Failure) : null,
            };
        }
        catch (RefusalException e)
        {
            return new StripDesk { Strips = strips, Refusal = e.Message };
        }
    }
}
