using Foramen.Engine.Camera;
using Foramen.Engine.Exposure;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;

namespace Foramen.Engine.Print;

/// <summary>
/// The light on a sheet before which something moved, and what is left to be seen of it. Each point gets the mean of the lights that take turns on it: as light where
/// they change within a second (J. H. Webb, JOSA 23, 157, 1933), and otherwise as progress ∫ dt/T(I) of the paper's failure law, which near one time is the power mean
/// (Σ wᵢ·Iᵢ^q)^(1/q) with q = d ln T/d ln t. Immutable.
/// </summary>
/// <remarks>
/// Left out: what the photograph does not show (the other side of what turns, what is really behind what goes away, what a wheel carries in from beside the sheet), motion
/// towards the camera, and mirror images of it in water. The spot is taken to be round, and the image has it already: carrying the softened image along softens what was carried.
/// </remarks>
public sealed class MovedImage
{
    private MovedImage(SheetImage image, IReadOnlyList<RegionTrace> traces) => (Image, Traces) = (image, traces);

    /// <summary>The light with the motion, as the even light that does the same in this exposure.</summary>
    public SheetImage Image { get; }

    /// <summary>One for each region, in their order.</summary>
    public IReadOnlyList<RegionTrace> Traces { get; }

    /// <summary>Moves regions of an image, one after another.</summary>
    /// <param name="still">The light if nothing moved, without a mask; masks come after.</param>
    /// <param name="regions">What moved and when.</param>
    /// <param name="response">The paper in the light of the scene.</param>
    /// <param name="exposure">Times by the clock; the exposure's length decides how the paper adds lights.</param>
    /// <param name="flash">How the flash is given.</param>
    /// <param name="spot">Diameter of the hole's spot, for lamps; the hole's own where missing.</param>
    /// <exception cref="RefusalException">A region outside the frame, or an image with a mask.</exception>
    public static MovedImage Of(
        SheetImage still,
        IReadOnlyList<RegionInMotion> regions,
        PaperResponse response,
        SheetExposure exposure,
        FlashSetup flash,
        Length? spot = null)
    {
        if (still.IsMasked)
        {
            throw new RefusalException("The image has a mask already; moving regions come before the mask.");
        }

        var print = PrintExposure.Of(response, exposure, flash);
        var exponent = response.Paper.Failure.ExponentNear(response.Paper.Failure.MeteredSecondsFor(exposure.Time.Seconds));
        var traces = new List<RegionTrace>(regions.Count);
        var image = still;
        foreach (var (region, course) in regions)
        {
            var place = RegionOnSheet.Of(image, region, IsFast(region.Motion, exposure.Time) ? 1 : exponent);
            var light = LightOf(place, region.Name, image.Projection.Camera, region.Motion, course, exposure.Time, spot ?? image.Projection.Camera.Hole.Diameter);

            // All of it with the falloff of its middle, so that falloff does not count as something to see.
            var falloff = place.FalloffAt(0.5, 0.5);
            traces.Add(light.Trace(value => DensityOf(response.Paper.Curve, print, place.Root(value), falloff)));
            if (course.Moving.Seconds > 0)
            {
                var lux = image.Lux.ToArray();
                place.Write(lux, image.Grid.Width, light.At, light.Part);
                image = image.WithLux(lux);
            }
        }

        return new MovedImage(image, traces);
    }

    // A wheel's spokes are taken to follow each other eight times in a turn: an assumption.
    private static bool IsFast(RegionMotion motion, Duration exposure) => motion switch
    {
        WheelTurns wheel => wheel.TurnTime.Seconds < 8 * CoveredTime.FastSeconds,
        PassesThrough { Passers.Dwell: { } dwell } => dwell.Seconds < CoveredTime.FastSeconds,
        SwaysInPlace sway => sway.Period.Seconds < CoveredTime.FastSeconds,
        FlowsThrough flow => flow.Crossing.Seconds < 8 * CoveredTime.FastSeconds,
        LampPasses { Lamp.Speed.MetresPerSecond: > 0 } => true,
        _ => exposure.Seconds < CoveredTime.FastSeconds,
    };

    private static IRegionLight LightOf(
        RegionOnSheet region, string name, PinholeCamera camera, RegionMotion motion, MotionCourse course, Duration exposure, Length spot)
    {
        switch (motion)
        {
            case WheelTurns wheel:
                return new WheelLight(region, wheel, course);
            case SwaysInPlace sway:
                return BlurredLight.Of(region, sway, course);
            case FlowsThrough flow:
                return BlurredLight.Of(region, flow, course);
            case PassesThrough { Passers: var passers }:
                var covered = passers.Covered is { } time ? Math.Min(course.MovingShare, time.Seconds / exposure.Seconds) : 1;
                var ratio = region.Power((float)passers.LuminanceRatio);
                return new MixedLight(region.At, (u, v) => ratio * region.At(u, v), (_, _) => covered);
            case GoesAway:
                var fill = EdgeFill.Around(region) ?? throw new RefusalException(
                    $"Nothing around the moving region \"{name}\" is in the frame, so what is behind it cannot be guessed; mark a smaller one.");
                return new MixedLight(fill.At, region.At, (_, _) => 1 - course.MovingShare);
            case LampPasses { Lamp: var lamp }:
                return Streak(region, camera, lamp, course, exposure, spot);
            default:
                throw new RefusalException($"A motion of the kind {motion.GetType().Name} cannot be drawn.");
        }
    }

    // A round spot that goes along a line is before a place for as long as its chord there takes.
    private static MixedLight Streak(RegionOnSheet region, PinholeCamera camera, PassingLamp lamp, MotionCourse course, Duration exposure, Length spot)
    {
        var wide = spot.Millimetres / region.PitchMillimetres / region.Size.Height;
        var share = Math.Min(course.MovingShare, lamp.OnPoint(spot, camera.FocalDistance, exposure).Seconds / exposure.Seconds);
        var added = (float)lamp.InSpot(camera.Hole.Diameter, spot).Lux;
        double Chord(double v) => Math.Sqrt(Math.Max(0, 1 - Math.Pow((v - 0.5) / (wide / 2), 2)));
        return new MixedLight(
            region.At,
            (u, v) => region.Power(region.Root(region.At(u, v)) + added),
            (_, v) => share * Chord(v),
            (_, v) => Chord(v) > 0 ? 1 : 0,
            traceRow: 0.5);
    }

    private static double DensityOf(CharacteristicCurve curve, PrintExposure exposure, float light, float falloff)
        => float.IsNaN(light)
            ? double.NaN
            : curve.DensityAt(LuminousExposure.FromLuxSeconds(
                (light * falloff * exposure.EffectiveSeconds) + (exposure.Flash.LuxSeconds * (exposure.FlashThroughHole ? falloff : 1)))).Value;
}
