using Foramen.Engine.Learning;
using Foramen.Engine.Scene;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.LinearAlgebra;

namespace Foramen.Engine.Tests.Learning;

/// <summary>
/// What evidence says of beliefs, written down a second time and plainly: each tone's expectation in one sum, its slopes as finite differences of that, the
/// derivatives of a bound as finite differences of its logarithm. No groups, no parts, nothing solved by hand.
/// </summary>
internal static class PlainModel
{
    private const double Step = 1e-4;

    public static readonly BeliefKey Flash = new(BeliefKind.Flash, "");
    public static readonly BeliefKey Meter = new(BeliefKind.Meter, "");

    /// <summary>How much lighter than wanted a tone should show, in stops.</summary>
    public static double Expected(Evidence sheet, ToneEvidence tone, IReadOnlyList<BeliefKey> keys, Vector<double> state)
        => tone.Foretold.Value + Common(sheet, keys, state) + tone.Rendering switch
        {
            Rendering.OpenShadow => Of(new BeliefKey(BeliefKind.ShadowEnd, sheet.Box), keys, state),
            Rendering.TexturedHighlight => Of(new BeliefKey(BeliefKind.HighlightEnd, sheet.Box), keys, state),
            _ => 0,
        }

        // Image and flash add as exposures; the flash alone is 2^f times as strong as planned.
        + (tone.FlashShare > 0 ? Math.Log2(1 - tone.FlashShare + (tone.FlashShare * Math.Pow(2, Of(Flash, keys, state)))) : 0);

    /// <summary>What bears on all tones of a sheet.</summary>
    public static double Common(Evidence sheet, IReadOnlyList<BeliefKey> keys, Vector<double> state)
    {
        var sheets = sheet.SheetsInBottle;
        (double Load, BeliefKey Key)[] loads =
        [
            (1, new(BeliefKind.Speed, sheet.Box)),
            (sheet.Doublings, new(BeliefKind.Failure, sheet.Box)),
            (sheet.Camera is null ? 0 : 1, new(BeliefKind.Camera, sheet.Camera ?? "")),
            (sheet.Metered ? 1 : 0, Meter),
            (sheet.Sky is null ? 0 : 1, new(BeliefKind.Light, sheet.Sky ?? "")),

            // So much for each ten sheets, each of three stretches by its own rate.
            (Math.Clamp(sheets, 0, 5) / 10, new(BeliefKind.Ageing, "sheets 1 to 5")),
            (Math.Clamp(sheets - 5, 0, 5) / 10, new(BeliefKind.Ageing, "sheets 6 to 10")),
            (Math.Max(0, sheets - 10) / 10, new(BeliefKind.Ageing, "sheets from 11 on")),
        ];
        return loads.Sum(pair => pair.Load == 0 ? 0 : pair.Load * Of(pair.Key, keys, state));
    }

    /// <summary>The slopes of a function of the state, by central differences.</summary>
    public static Vector<double> Slopes(Func<Vector<double>, double> of, Vector<double> state)
        => Vector<double>.Build.Dense(state.Count, i =>
        {
            var (more, less) = (state.Clone(), state.Clone());
            more[i] += Step;
            less[i] -= Step;
            return (of(more) - of(less)) / (2 * Step);
        });

    /// <summary>
    /// An observation as pull (the slope of its logarithm by what is expected) and information. Student's t with 4 degrees of freedom weighs 5/(4 + z²); a bound
    /// is log(0.05 + 0.95·Φ), of which the information is Φ's own, as far as it is believed.
    /// </summary>
    /// <param name="tone">What was seen.</param>
    /// <param name="expected">What was expected, the sheet's own shift included.</param>
    /// <param name="variance">Of reading and judging.</param>
    /// <param name="around">How unsure the expectation is, stops squared.</param>
    public static (double Pull, double Information, double Believed) Observe(ToneEvidence tone, double expected, double variance, double around)
    {
        var off = tone.Seen.Value - expected;
        if (tone.Limit == ObservedLimit.Exact)
        {
            var weight = 5 / (4 + (((off * off) + around) / variance));
            return (weight * off / variance, weight / variance, Math.Min(1, weight));
        }

        var sign = tone.Limit == ObservedLimit.AtLeast ? 1 : -1;
        var below = Below(expected);
        var believed = 0.95 * below / (0.05 + (0.95 * below));
        var pull = (Math.Log(0.05 + (0.95 * Below(expected + Step))) - Math.Log(0.05 + (0.95 * Below(expected - Step)))) / (2 * Step);
        var bend = (Math.Log(Below(expected + Step)) - (2 * Math.Log(below)) + Math.Log(Below(expected - Step))) / (Step * Step);
        return (pull, -believed * bend, believed);

        double Below(double at) => Normal.CDF(0, 1, sign * (at - tone.Seen.Value) / Math.Sqrt(variance));
    }

    private static double Of(BeliefKey key, IReadOnlyList<BeliefKey> keys, Vector<double> state)
    {
        for (var i = 0; i < keys.Count; i++)
        {
            if (keys[i] == key)
            {
                return state[i];
            }
        }

        throw new InvalidOperationException($"{key} is not among the beliefs.");
    }
}
