using Foramen.Engine.Camera;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;

namespace Foramen.Engine.Exposure;

/// <summary>
/// What moves, as the paper sees it: the change in density against a background tone and whether it can be seen; and which time, hole, flash or covering of
/// the hole shows or hides it. Image and flash add as effective exposures. Immutable.
/// </summary>
/// <remarks>
/// A sharp edge is seen from a difference of 0.02 in density and a soft one from 0.05: assumptions, between the 1 % of luminance told apart in light tones and
/// the 8 % in the darkest. "Stays" is a change of nine tenths of what it would make standing still, which is an assumption too.
/// </remarks>
public sealed class MotionOnPaper
{
    /// <summary>Least difference in density seen at a sharp edge; an assumption.</summary>
    public const double SharpSeen = 0.02;

    /// <summary>Least difference in density seen at a soft edge; an assumption.</summary>
    public const double SoftSeen = 0.05;

    /// <summary>Part of the change it would make standing still from which something counts as staying; an assumption.</summary>
    public const double StaysFrom = 0.9;

    private readonly PaperResponse response;
    private readonly FlashSetup flash;
    private readonly double rate;
    private readonly double flashed;

    /// <summary>For one background tone and one exposure.</summary>
    /// <param name="response">The paper in the light of the scene; what moves is in the same light.</param>
    /// <param name="background">Light of the background on the sheet, more than none.</param>
    /// <param name="exposure">Times by the clock.</param>
    /// <param name="flash">How the flash is given.</param>
    /// <exception cref="RefusalException">No light, or no time.</exception>
    public MotionOnPaper(PaperResponse response, Illuminance background, SheetExposure exposure, FlashSetup flash)
    {
        Guard.Within(exposure.Time.Seconds, 0.01, 86_400, "the exposure", "s");
        Guard.Within(background.Lux, 1e-12, Illuminance.Max, "the background’s light on the sheet", "lx");
        (this.response, this.flash, Exposure) = (response, flash, exposure);
        rate = background.Lux * response.ActinicFactor;
        flashed = response.EffectiveExposure(flash.OnSheet, 1, exposure.Flash).LuxSeconds;
    }

    /// <summary>Times by the clock.</summary>
    public SheetExposure Exposure { get; }

    /// <summary>The trace of a covering.</summary>
    public MotionTrace Trace(Covering covering) => Trace(
        CoveredTime.MeteredSeconds(response.Paper.Failure, Exposure.Time.Seconds, covering), covering.LuminanceRatio, LeastSeen(covering.SoftEdged), flashed);

    /// <summary>The trace of a lamp's spot or streak: its light is added to the background's for as long as the spot lies on a point.</summary>
    /// <param name="lamp">The lamp, of the light's colour.</param>
    /// <param name="hole">The hole's diameter.</param>
    /// <param name="spot">The spot's diameter.</param>
    /// <param name="focalDistance">From the hole to the paper.</param>
    /// <exception cref="RefusalException">As for <see cref="PassingLamp.InSpot"/>.</exception>
    public MotionTrace Trace(PassingLamp lamp, Length hole, Length spot, Length focalDistance)
    {
        var on = lamp.OnPoint(spot, focalDistance, Exposure.Time).Seconds;
        return TraceOfAdded(lamp.InSpot(hole, spot), on, on / lamp.Number);
    }

    /// <summary>The trace of a star, the moon or the sun: its image's light is added to the background's for as long as it lies on a point of its trail.</summary>
    /// <param name="body">What goes across the picture.</param>
    /// <param name="declination">−90° to 90°.</param>
    /// <param name="camera">The camera.</param>
    /// <param name="spot">The spot's diameter.</param>
    /// <exception cref="RefusalException">As for <see cref="SkyBody.InImage"/>.</exception>
    public MotionTrace Trace(SkyBody body, Angle declination, PinholeCamera camera, Length spot)
    {
        var on = body.OnPoint(spot, camera.FocalDistance, declination, Exposure.Time).Seconds;
        return TraceOfAdded(body.InImage(camera.Hole.Diameter, spot, camera.FocalDistance), on, on);
    }

    /// <summary>Least part of the exposure for which something must cover the background to be seen; null if it is not seen even when it stands still.</summary>
    /// <param name="luminanceRatio">0 to 10 000.</param>
    /// <param name="softEdged">Whether its trace has soft edges.</param>
    /// <param name="fast">Whether it covers a point for less than a second at a time.</param>
    /// <exception cref="RefusalException">Outside the range.</exception>
    public double? LeastShareSeen(double luminanceRatio, bool softEdged = true, bool fast = false)
    {
        Guard.Within(luminanceRatio, 0, 10_000, "the luminance against the background");
        return LeastShare(luminanceRatio, LeastSeen(softEdged), fast, flashed);
    }

    /// <summary>What hides or shows what passes.</summary>
    /// <param name="passers">All of them within this exposure.</param>
    /// <param name="camera">The camera, for another hole.</param>
    /// <returns>Null where they stand still: nothing here moves them out of the picture.</returns>
    public MotionWays? WaysFor(Passers passers, PinholeCamera camera)
    {
        if (passers is not { Covered: { } covered, Dwell: { } dwell })
        {
            return null;
        }

        var fast = dwell.Seconds < CoveredTime.FastSeconds;
        var least = LeastShare(passers.LuminanceRatio, SoftSeen, fast, flashed);
        if (least is not { } share)
        {
            return new MotionWays { FlashFractionToHide = flashed > 0 ? FlashFraction : 0 };
        }

        var seconds = Exposure.Time.Seconds;
        var needed = covered.Seconds / share;
        return new MotionWays
        {
            TimeToHide = needed <= Duration.Max ? Duration.FromSeconds(needed) : null,
            HoleToHide = HoleFor(needed, camera),
            CoverHoleFor = Duration.FromSeconds(Math.Clamp(covered.Seconds - (share * seconds), 0, covered.Seconds)),
            StandStillToShow = Duration.FromSeconds((LeastShare(passers.LuminanceRatio, SharpSeen, false, flashed) ?? 1) * seconds),
            NumberToShow = (int)Math.Min(int.MaxValue, Math.Ceiling(share * seconds / dwell.Seconds)),
            FlashFractionToHide = FlashToHide(passers.During(Exposure.Time)),
        };
    }

    private double FlashFraction => flashed / FlashEffect.Threshold(response.Paper.Curve).LuxSeconds;

    /// <summary>The same exposure in that time: light goes with the hole's area, and failure takes its share of the longer time.</summary>
    private Length? HoleFor(double seconds, PinholeCamera camera)
    {
        if (seconds is <= 0 or > 86_400)
        {
            return null;
        }

        var law = response.Paper.Failure;
        var diameter = camera.Hole.Diameter.Millimetres
            * Math.Sqrt(law.MeteredSecondsFor(Exposure.Time.Seconds) / law.MeteredSecondsFor(Math.Max(seconds, Exposure.Time.Seconds)));
        return diameter >= 0.05 ? Length.FromMillimetres(diameter) : null;
    }

    private double? FlashToHide(Covering covering)
    {
        var threshold = FlashEffect.Threshold(response.Paper.Curve).LuxSeconds;
        var metered = CoveredTime.MeteredSeconds(response.Paper.Failure, Exposure.Time.Seconds, covering);
        for (var step = 0; step <= 30; step++)
        {
            var fraction = step * 0.05;
            if (fraction * threshold >= flashed - 1e-12 && Math.Abs(Density(metered, fraction * threshold) - Density(Bare, fraction * threshold)) < LeastSeen(covering.SoftEdged))
            {
                return flash.IsPossible || fraction == 0 ? fraction : null;
            }
        }

        return null;
    }

    private double? LeastShare(double ratio, double seen, bool fast, double flashExposure)
    {
        double Change(double share) => Math.Abs(
            Density(CoveredTime.MeteredSeconds(response.Paper.Failure, Exposure.Time.Seconds, share, ratio, fast), flashExposure) - Density(Bare, flashExposure));
        if (Change(1) < seen)
        {
            return null;
        }

        var (low, high) = (0.0, 1.0);
        for (var i = 0; i < 50; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = Change(middle) < seen ? (middle, high) : (low, middle);
        }

        return high;
    }

    // Light that is added to the background's for so many seconds in all, in stretches of so many.
    private MotionTrace TraceOfAdded(Illuminance light, double onSeconds, double atATime)
    {
        var seconds = Exposure.Time.Seconds;
        var ratio = 1 + (light.Lux * response.ActinicFactor / rate);
        var metered = CoveredTime.MeteredSeconds(response.Paper.Failure, seconds, onSeconds / seconds, ratio, atATime < CoveredTime.FastSeconds);
        return Trace(metered, ratio, SharpSeen, flashed);
    }

    private MotionTrace Trace(double metered, double ratio, double seen, double flashExposure)
    {
        var (bare, traced) = (Density(Bare, flashExposure), Density(metered, flashExposure));
        var still = Density(Bare * ratio, flashExposure);
        var change = Math.Abs(traced - bare);
        var verdict = change < seen ? MotionVerdict.Vanishes : change >= StaysFrom * Math.Abs(still - bare) ? MotionVerdict.Stays : MotionVerdict.Ghost;
        return new MotionTrace(Quantities.Density.FromValue(bare), Quantities.Density.FromValue(traced), seen, verdict);
    }

    private double Bare => response.Paper.Failure.MeteredSecondsFor(Exposure.Time.Seconds);

    private double Density(double meteredSeconds, double flashExposure)
        => response.Paper.Curve.DensityAt(LuminousExposure.FromLuxSeconds((rate * meteredSeconds) + flashExposure)).Value;

    private static double LeastSeen(bool softEdged) => softEdged ? SoftSeen : SharpSeen;
}
