using Foramen.Engine.Camera;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;

namespace Foramen.Engine.Exposure;

/// <summary>
/// The exposure that one surface needs on one paper in one camera, by its luminance: it lies on the hole's axis and is placed where its rendering is aimed at, without a
/// flash. Good for choosing an hour; the sheet itself is planned from tones. Immutable.
/// </summary>
public sealed class FacadeExposure
{
    private readonly PaperResponse response;
    private readonly double luxPerCandela;
    private readonly double aim;

    /// <summary>For a camera, a paper in a light, and a rendering.</summary>
    /// <param name="camera">The camera.</param>
    /// <param name="response">The paper in the light expected.</param>
    /// <param name="rendering">How the surface should come out; a rendering with an aim.</param>
    /// <exception cref="RefusalException">A rendering without an aim.</exception>
    public FacadeExposure(PinholeCamera camera, PaperResponse response, Rendering rendering)
    {
        this.response = response;
        luxPerCandela = camera.ImageIlluminance(Luminance.FromCandelasPerSquareMetre(1), camera.HoleOffset).Lux;
        aim = RenderingBand.On(response.Paper.Curve, rendering).Aim?.LuxSeconds
            ?? throw new RefusalException("A surface that may burn or block fits any exposure; say how it should come out.");
    }

    /// <summary>The time for a luminance, failure included; the longest duration there is where it would be longer, or there is no light.</summary>
    public Duration TimeFor(Luminance luminance)
    {
        var metered = MeteredSecondsFor(luminance);
        var seconds = double.IsFinite(metered) ? response.Paper.Failure.SecondsNeeded(metered) : double.PositiveInfinity;
        return Duration.FromSeconds(double.IsFinite(seconds) ? Math.Min(seconds, Duration.Max) : Duration.Max);
    }

    /// <summary>The time that would do without failure, s; without bound where there is no light.</summary>
    internal double MeteredSecondsFor(Luminance luminance)
    {
        var rate = luminance.CandelasPerSquareMetre * luxPerCandela * response.ActinicFactor;
        return rate <= 0 ? double.PositiveInfinity : aim / rate;
    }

    /// <summary>The least luminance that needs no more than this time: the inverse of <see cref="TimeFor"/>.</summary>
    /// <param name="time">0.01 s to a day.</param>
    /// <exception cref="RefusalException">Outside the range.</exception>
    public Luminance LeastLuminanceFor(Duration time)
    {
        Guard.Within(time.Seconds, 0.01, 86_400, "the longest exposure", "s");
        return Luminance.FromCandelasPerSquareMetre(aim / (response.Paper.Failure.MeteredSecondsFor(time.Seconds) * luxPerCandela * response.ActinicFactor));
    }
}
