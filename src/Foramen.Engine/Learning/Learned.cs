using Foramen.Engine.Exposure;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Learning;

/// <summary>
/// From beliefs to a plan. The means go into the paper, the tones and the flash; the covariance into spreads that the odds can use: what is common to
/// all tones, divided among its sources by their covariance with the sum, and what is each tone's own. The time at which a box is known best
/// becomes the time from which its failure is counted.
/// </summary>
internal static class Learned
{
    private const double MostDoublings = 6;

    public static LearnedPlan Plan(Beliefs beliefs, PlanBasis basis)
    {
        var paper = basis.Paper;
        var conditions = basis.Conditions;
        var failure = new BeliefKey(BeliefKind.Failure, conditions.Box);
        var common = Bearing.OnSheet(conditions, 0).Where(pair => pair.Key != failure).ToList();
        var ends = basis.Tones.Select(tone => Bearing.OnTone(conditions.Box, tone.Rendering)).ToList();
        var slope = Math.Clamp(beliefs.Mean(failure), -0.3, 0.3);
        var foundAt = Math.Max(1, paper.SpeedFoundAt.Seconds);

        // Of a box without evidence its label or strip says how well it is known.
        double Covariance(BeliefKey one, BeliefKey other) => one == other && !beliefs.Bears(one) && conditions.Said(one.Kind) is { } said
            ? said.Value * said.Value
            : beliefs.Covariance(one, other);
        double WithCommon(BeliefKey key) => common.Sum(pair => pair.Load * Covariance(pair.Key, key));
        double CommonVariance() => common.Sum(pair => pair.Load * WithCommon(pair.Key));
        double ToneCovariance(int i, int j)
        {
            var sum = CommonVariance();
            sum += ends[i] is { } first ? WithCommon(first) : 0;
            sum += ends[j] is { } second ? WithCommon(second) : 0;
            return sum + (ends[i] is { } one && ends[j] is { } other ? Covariance(one, other) : 0);
        }

        // What all tones share is their mean covariance; what a tone has beyond it is its own.
        var own = basis.Tones.Select((_, i) => ToneCovariance(i, i)).ToArray();
        var counting = Enumerable.Range(0, basis.Tones.Count).Where(i => RenderingBand.On(paper.Curve, basis.Tones[i].Rendering).Aim is not null).ToList();
        var pairs = (from i in counting from j in counting where i < j select ToneCovariance(i, j)).ToList();
        var shared = pairs.Count > 0 ? Math.Clamp(pairs.Average(), 0, counting.Min(i => own[i])) : CommonVariance();

        // Completing the square in the doublings of time.
        var failureVariance = Covariance(failure, failure);
        var with = counting.Count == 0 ? WithCommon(failure) : counting.Average(i => WithCommon(failure) + (ends[i] is { } end ? Covariance(end, failure) : 0));
        var pivot = failureVariance > 1e-12 ? Math.Clamp(-with / failureVariance, -MostDoublings, MostDoublings) : 0;
        var rest = Math.Max(0, shared + (2 * with * pivot) + (failureVariance * pivot * pivot));
        var parts = common.ToLookup(
            pair => pair.Key.Kind,
            pair => Math.Max(0, pair.Load * (WithCommon(pair.Key) + (pivot * Covariance(pair.Key, failure)))));
        var all = parts.Sum(group => group.Sum());
        Stops Part(params BeliefKind[] kinds) => Stops.FromValue(all > 0 ? Math.Sqrt(rest * kinds.Sum(kind => parts[kind].Sum()) / all) : 0);

        var scatter = beliefs.ScatterFactor;
        var flashKey = new BeliefKey(BeliefKind.Flash, "");
        var shift = common.Sum(pair => pair.Load * beliefs.Mean(pair.Key)) - (slope * Math.Log2(foundAt));
        var spread = Part(BeliefKind.Speed);
        var learned = paper with
        {
            Curve = paper.Curve.Faster(Stops.FromValue(shift)),
            Failure = AdjustedFailure.Of(paper.Failure, slope),
            SpeedFoundAt = Duration.FromSeconds(Math.Clamp(foundAt * Math.Pow(2, pivot), 0.01, Duration.Max)),
            SpeedSpread = spread,
            FailureSpreadPerDoubling = Math.Sqrt(failureVariance),
        };
        var errors = basis.Errors with
        {
            Paper = spread,
            Meter = Part(BeliefKind.Meter),
            Hole = conditions.Camera is null ? basis.Errors.Hole : Part(BeliefKind.Camera),
            Colour = conditions.Sky is null ? basis.Errors.Colour : Stops.Zero,
            Light = Stops.RootSumSquare(Part(BeliefKind.Light), Stops.FromValue(scatter * basis.Errors.Light.Value)),
            Development = Stops.RootSumSquare(Part(BeliefKind.Ageing), Stops.FromValue(scatter * basis.Errors.Development.Value)),
            Timing = Stops.FromValue(scatter * basis.Errors.Timing.Value),
            Flash = Stops.RootSumSquare(PlanBasis.FlashScatter, Stops.FromValue(Math.Sqrt(Covariance(flashKey, flashKey)))),
        };
        var tones = basis.Tones.Select((tone, i) => tone with
        {
            ActinicRatio = tone.ActinicRatio * (ends[i] is { } end ? Math.Pow(2, beliefs.Mean(end)) : 1),
            MeterSpread = Stops.RootSumSquare(
                Stops.FromValue(beliefs.ReadingFactor * tone.MeterSpread.Value), Stops.FromValue(Math.Sqrt(Math.Max(0, own[i] - shared)))),
        }).ToList();
        var flash = Flash(beliefs, basis);
        return new LearnedPlan(
            basis, learned, tones, errors, flash, new ExposurePlanner(PaperResponse.Of(learned, basis.Light), tones, flash, errors, beliefs.Tolerance.Factor));
    }

    private static FlashSetup Flash(Beliefs beliefs, PlanBasis basis)
    {
        if (!basis.Flash.IsPossible)
        {
            return basis.Flash;
        }

        var onSheet = Illuminance.FromLux(basis.Flash.OnSheet.Lux * Math.Pow(2, beliefs.Mean(new BeliefKey(BeliefKind.Flash, ""))));
        return basis.Flash.ThroughHole ? FlashSetup.AtSurface(onSheet) : FlashSetup.OpenSheet(onSheet);
    }
}
