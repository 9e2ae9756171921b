using Foramen.Engine.Exposure;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Learning;

/// <summary>From what was said of a tone to evidence.</summary>
public static class JudgedTones
{
    /// <summary>
    /// A judged tone as evidence. One that is burnt or blocked says only that it went past the end of its band, whatever number came with it: the bound is
    /// the nearer of the two.
    /// </summary>
    /// <param name="paper">The paper as labelled.</param>
    /// <param name="foretold">What label and description foretell of the exposure really given; its tone must not be one that may burn or block.</param>
    /// <param name="seen">How much lighter than wanted it came out.</param>
    /// <param name="limit">Whether that is a value or a bound.</param>
    /// <param name="judging">Standard deviation of the judgement; that of the eye where null.</param>
    public static ToneEvidence ToEvidence(
        PhotographicPaper paper, ToneLanding foretold, Stops seen, ObservedLimit limit, Stops? judging = null)
    {
        var band = RenderingBand.On(paper.Curve, foretold.Tone.Rendering);
        var aim = band.Aim ?? throw new RefusalException($"The tone \"{foretold.Tone.Name}\" may burn or block, so it says nothing of the exposure.");
        var bound = limit switch
        {
            ObservedLimit.AtLeast => Math.Clamp(seen.Value, 0, Stops.FromRatio(band.High!.Value.LuxSeconds / aim.LuxSeconds).Value),
            ObservedLimit.AtMost => Math.Clamp(seen.Value, Stops.FromRatio(band.Low.LuxSeconds / aim.LuxSeconds).Value, 0),
            _ => seen.Value,
        };
        return new ToneEvidence
        {
            Name = foretold.Tone.Name,
            Rendering = foretold.Tone.Rendering,
            Foretold = foretold.FromAim!.Value,
            Seen = Stops.FromValue(bound),
            Limit = limit,
            Judging = judging ?? ToneEvidence.ByEye,
            BandLow = Stops.FromRatio(band.Low.LuxSeconds / aim.LuxSeconds),
            BandHigh = Stops.FromRatio(band.High!.Value.LuxSeconds / aim.LuxSeconds),
            Spread = Stops.RootSumSquare(judging ?? ToneEvidence.ByEye, foretold.Tone.MeterSpread),
            FlashShare = foretold.FlashShare,
        };
    }
}
