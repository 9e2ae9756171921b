using Foramen.Engine.Camera;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;

namespace Foramen.Engine.Exposure;

/// <summary>
/// The exposure of one surface where the light is dim and the time long, and how far it may be off because nobody has measured what papers do then. No published table of
/// papers' failure at minutes and hours is known to us. Immutable.
/// </summary>
/// <param name="Time">By the paper's law.</param>
/// <param name="Shorter">If the failure is less than the law says by one standard deviation.</param>
/// <param name="Longer">If it is more by one.</param>
/// <param name="FailureSpread">The doubt of the exposure from failure alone at this time.</param>
public sealed record NightExposure(Duration Time, Duration Shorter, Duration Longer, Stops FailureSpread)
{
    /// <summary>Whether the time is beyond what anyone should plan on.</summary>
    public bool IsBeyondPlanning => Time.Seconds > ExposurePlanner.LongestSeconds;

    /// <summary>For a surface on the hole's axis, without a flash.</summary>
    /// <param name="camera">The camera.</param>
    /// <param name="response">The paper in the light there.</param>
    /// <param name="luminance">The surface's, more than none.</param>
    /// <param name="rendering">How it should come out; a rendering with an aim.</param>
    /// <exception cref="RefusalException">No light, or a rendering without an aim.</exception>
    public static NightExposure Of(PinholeCamera camera, PaperResponse response, Luminance luminance, Rendering rendering)
    {
        Guard.Within(luminance.CandelasPerSquareMetre, 1e-9, Luminance.Max, "the surface’s luminance", "cd/m²");
        var paper = response.Paper;
        Duration With(double stopsPerDoubling)
        {
            // The law is turned about the time that the paper's speed was found at, where its failure is known by definition.
            var turned = AdjustedFailure.Of(paper.Failure, Math.Clamp(stopsPerDoubling, -0.3, 0.3));
            var known = Math.Max(1, paper.SpeedFoundAt.Seconds);
            var shift = Math.Pow(known, stopsPerDoubling);
            var metered = new FacadeExposure(camera, response, rendering).MeteredSecondsFor(luminance);
            return Duration.FromSeconds(Math.Min(Duration.Max, turned.SecondsNeeded(metered * shift)));
        }

        var time = With(0);
        return new NightExposure(
            time, With(paper.FailureSpreadPerDoubling), With(-paper.FailureSpreadPerDoubling), paper.FailureSpread(time));
    }
}
