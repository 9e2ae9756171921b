using Foramen.Engine.Light;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Paper;

/// <summary>
/// The flash that first shows, out of a strip made with the flash's light alone: the geometric mean of the last time that did not show and the first that did. Judge it
/// dry; paper darkens on drying.
/// </summary>
public sealed record FlashStrip
{
    private FlashStrip(Duration threshold, Stops spread, Illuminance onSheet, LightColour light)
    {
        Threshold = threshold;
        Spread = spread;
        OnSheet = onSheet;
        Light = light;
    }

    /// <summary>The time that first shows, in the strip's light.</summary>
    public Duration Threshold { get; }

    /// <summary>Its standard deviation: a step is uniform, √(1/12) of its width.</summary>
    public Stops Spread { get; }

    /// <summary>Light on the sheet during the strip, as a meter would count it.</summary>
    public Illuminance OnSheet { get; }

    /// <summary>Its colour.</summary>
    public LightColour Light { get; }

    /// <summary>A threshold from a strip judged by eye.</summary>
    /// <param name="times">Times of the patches, rising; at least two.</param>
    /// <param name="firstVisible">The first that shows, from 1.</param>
    /// <param name="onSheet">Light on the sheet.</param>
    /// <param name="light">Its colour.</param>
    /// <exception cref="RefusalException">Times out of order, or the threshold lies outside the strip: the sentence says which strip to make.</exception>
    public static FlashStrip Read(IReadOnlyList<Duration> times, int firstVisible, Illuminance onSheet, LightColour light)
    {
        Guard.Within(times.Count, 2, 100, "the number of patches");
        Guard.Within(onSheet.Lux, 1e-6, 1e6, "the flash's light on the sheet", "lx");
        for (var i = 0; i < times.Count; i++)
        {
            Guard.Within(times[i].Seconds, 0.01, 86_400, $"the time of patch {i + 1}", "s");
            if (i > 0 && times[i] <= times[i - 1])
            {
                throw new RefusalException($"Patch {i + 1} got no more light than patch {i}; list the patches from least to most light.");
            }
        }

        if (firstVisible == 1)
        {
            throw new RefusalException(FormattableString.Invariant(
                $"Even the shortest flash, {times[0].Seconds:0.##} s, shows, so the threshold is not on the strip; make one in dimmer light or with a first patch of {times[0].Seconds / 8:0.##} s."));
        }

        if (firstVisible == times.Count + 1)
        {
            throw new RefusalException(FormattableString.Invariant(
                $"Not even the longest flash, {times[^1].Seconds:0.##} s, shows, so the threshold is not on the strip; make one with a first patch of {times[^1].Seconds:0.##} s."));
        }

        Guard.Within(firstVisible, 1, times.Count + 1, "the first patch that shows");
        var (before, after) = (times[firstVisible - 2].Seconds, times[firstVisible - 1].Seconds);
        return new FlashStrip(
            Duration.FromSeconds(Math.Sqrt(before * after)), Stops.FromValue(Math.Log2(after / before) / Math.Sqrt(12)), onSheet, light);
    }

    /// <summary>The effective exposure of the threshold on this paper.</summary>
    /// <param name="sensitivity">The paper's colour sensitivity.</param>
    /// <param name="failure">Its failure.</param>
    public LuminousExposure Effective(PaperSensitivity sensitivity, FailureLaw failure) => LuminousExposure.FromLuxSeconds(
        OnSheet.Lux * Actinic.Factor(Light.ToSpectrum(), sensitivity) * failure.MeteredSecondsFor(Threshold.Seconds));
}
