using Foramen.Engine.Exposure;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;

namespace Foramen.Engine.Print;

/// <summary>
/// Moving regions on the light of a sheet. Each point gets the mean of the lights that take turns on it: as light where they change within a second (J. H. Webb,
/// JOSA 23, 157, 1933), and otherwise as progress ∫ dt/T(I) of the paper's failure law, which near one time is the power mean (Σ wᵢ·Iᵢ^q)^(1/q) with q = d ln T/d ln t.
/// Made once for an image; exposed many times, so that a slider can be followed. Not for several threads at once.
/// </summary>
/// <remarks>
/// Left out: what the photograph does not show (the other side of what turns, what is really behind what goes away, what a wheel carries in from beside the sheet), motion
/// towards the camera, and mirror images of it in water. The spot is taken to be round, and the image has it already: carrying the softened image along softens what was
/// carried. Where regions lie over each other, what turns, sways or flows is taken from the still image, and the others act on what those leave.
/// </remarks>
public sealed class MotionOnSheet
{
    // The mean hardly feels the exponent; in steps, a slider need not raise everything anew.
    private const double ExponentStep = 0.02;

    private readonly SheetImage still;
    private readonly IReadOnlyList<PreparedRegion> prepared;

    private MotionOnSheet(SheetImage still, IReadOnlyList<MovingRegion> regions, IReadOnlyList<PreparedRegion> prepared)
        => (this.still, Regions, this.prepared) = (still, regions, prepared);

    /// <summary>Where and how.</summary>
    public IReadOnlyList<MovingRegion> Regions { get; }

    /// <summary>Regions of an image.</summary>
    /// <param name="still">The light if nothing moved, without a mask; masks come after.</param>
    /// <param name="regions">Where and how.</param>
    /// <param name="spot">Diameter of the hole's spot, for lamps; the hole's own where missing.</param>
    /// <exception cref="RefusalException">A region outside the frame, or an image with a mask.</exception>
    public static MotionOnSheet Of(SheetImage still, IReadOnlyList<MovingRegion> regions, Length? spot = null)
    {
        if (still.IsMasked)
        {
            throw new RefusalException("The image has a mask already; moving regions come before the mask.");
        }

        return new MotionOnSheet(still, regions, [.. regions.Select(region => Prepare(still, region, spot ?? still.Projection.Camera.Hole.Diameter))]);
    }

    /// <summary>The light with the motion, as the even light that does the same in this exposure.</summary>
    /// <param name="courses">When each region moves, in their order.</param>
    /// <param name="response">The paper in the light of the scene.</param>
    /// <param name="time">The exposure by the clock, which decides how the paper adds lights.</param>
    public SheetImage Expose(IReadOnlyList<MotionCourse> courses, PaperResponse response, Duration time)
    {
        var exponent = ExponentFor(response, time);
        float[]? lux = null;
        foreach (var carries in new[] { true, false })
        {
            for (var i = 0; i < Regions.Count; i++)
            {
                if (courses[i].Moving.Seconds > 0 && prepared[i].CarriesLight == carries)
                {
                    lux ??= still.Lux.ToArray();
                    prepared[i].Apply(lux, courses[i], ExponentOf(i, exponent, time));
                }
            }
        }

        return lux is null ? still : still.WithLux(lux);
    }

    /// <summary>What is left to be seen of each region, in their order.</summary>
    /// <param name="courses">When each region moves, in their order.</param>
    /// <param name="response">The paper in the light of the scene.</param>
    /// <param name="exposure">Times by the clock.</param>
    /// <param name="flash">How the flash is given.</param>
    public IReadOnlyList<RegionTrace> Traces(IReadOnlyList<MotionCourse> courses, PaperResponse response, SheetExposure exposure, FlashSetup flash)
    {
        var exponent = ExponentFor(response, exposure.Time);
        var print = PrintExposure.Of(response, exposure, flash);
        var traces = new RegionTrace[Regions.Count];
        for (var i = 0; i < traces.Length; i++)
        {
            // All of it with the falloff of its middle, so that falloff does not count as something to see.
            var region = prepared[i];
            var falloff = region.Falloff;
            traces[i] = region.Trace(courses[i], ExponentOf(i, exponent, exposure.Time), light => DensityOf(response.Paper.Curve, print, light, falloff));
        }

        return traces;
    }

    private static double ExponentFor(PaperResponse response, Duration time)
    {
        var law = response.Paper.Failure;
        return Math.Round(law.ExponentNear(law.MeteredSecondsFor(time.Seconds)) / ExponentStep) * ExponentStep;
    }

    private double ExponentOf(int index, double exponent, Duration time) => IsFast(Regions[index].Motion, time) ? 1 : exponent;

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

    private static PreparedRegion Prepare(SheetImage still, MovingRegion region, Length spot)
    {
        var place = RegionOnSheet.Of(still, region);
        return region.Motion switch
        {
            WheelTurns wheel => new PreparedWheel(place, wheel),
            SwaysInPlace or FlowsThrough => new PreparedBlur(place, region.Motion),
            PassesThrough { Passers: var passers } => new PreparedPasser(place, passers),
            GoesAway => new PreparedAbsence(place, region.Name),
            LampPasses { Lamp: var lamp } => new PreparedStreak(place, lamp, still.Projection.Camera, spot),
            _ => throw new RefusalException($"A motion of the kind {region.Motion.GetType().Name} cannot be drawn."),
        };
    }

    private static double DensityOf(CharacteristicCurve curve, PrintExposure exposure, double light, double falloff)
        => double.IsNaN(light)
            ? double.NaN
            : curve.DensityAt(LuminousExposure.FromLuxSeconds(
                (light * falloff * exposure.EffectiveSeconds) + (exposure.Flash.LuxSeconds * (exposure.FlashThroughHole ? falloff : 1)))).Value;
}
