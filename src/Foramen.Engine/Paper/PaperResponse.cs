using Foramen.Engine.Light;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Paper;

/// <summary>
/// A paper in a given light: from lux on the sheet and seconds by the clock to effective exposure and density. The meter sees green and the
/// paper blue; the actinic factor of the light and the actinic ratio of a coloured tone bring one to the other.
/// </summary>
public sealed record PaperResponse
{
    private PaperResponse(PhotographicPaper paper, LightColour light, double actinicFactor)
    {
        Paper = paper;
        Light = light;
        ActinicFactor = actinicFactor;
    }

    /// <summary>The paper.</summary>
    public PhotographicPaper Paper { get; }

    /// <summary>The light.</summary>
    public LightColour Light { get; }

    /// <summary>Effect of a lux second of this light over a lux second of 3000 K light.</summary>
    public double ActinicFactor { get; }

    /// <summary>This paper in this light.</summary>
    public static PaperResponse Of(PhotographicPaper paper, LightColour light)
        => new(paper, light, Actinic.Factor(light.ToSpectrum(), paper.Sensitivity));

    /// <summary>Effective exposure: illuminance × actinic ratio × actinic factor × the metered worth of the time.</summary>
    /// <param name="illuminance">Light on the sheet as a meter would count it.</param>
    /// <param name="actinicRatio">What a coloured tone is worth against a neutral one of the same luminance; 1 for neutral.</param>
    /// <param name="time">Time by the clock.</param>
    public LuminousExposure EffectiveExposure(Illuminance illuminance, double actinicRatio, Duration time)
        => LuminousExposure.FromLuxSeconds(
            illuminance.Lux * actinicRatio * ActinicFactor * Paper.Failure.MeteredSecondsFor(time.Seconds));

    /// <summary>The time by the clock that gives this effective exposure at this illuminance.</summary>
    /// <exception cref="RefusalException">No light at all, or a time beyond four months.</exception>
    public Duration TimeFor(LuminousExposure exposure, Illuminance illuminance, double actinicRatio)
    {
        var rate = illuminance.Lux * actinicRatio * ActinicFactor;
        if (rate <= 0)
        {
            throw new RefusalException("There is no light on the sheet; no time is long enough.");
        }

        return Duration.FromSeconds(Paper.Failure.SecondsNeeded(exposure.LuxSeconds / rate));
    }
}
