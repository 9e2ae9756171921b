using Foramen.Engine.Quantities;

namespace Foramen.Engine.Light;

/// <summary>
/// How much more a paper is affected by a lux second of one light than by a lux second of a 3000 K lamp, the light ISO paper speeds are
/// found with. The meter weighs light by V(λ), the paper by its own sensitivity s:
/// A = (∫E s dλ / ∫E V dλ) / (the same for 3000 K).
/// </summary>
public static class Actinic
{
    private static readonly ColourTemperature ReferenceTemperature = ColourTemperature.FromKelvin(3000);

    /// <summary>The actinic factor of this light for this paper; 1 for a full radiator of 3000 K.</summary>
    /// <exception cref="RefusalException">The eye sees nothing of the light, or the paper nothing of the reference lamp.</exception>
    public static double Factor(Spectrum light, PaperSensitivity paper)
        => EffectPerLux(light, paper) / EffectPerLux(Planckian.OfTemperature(ReferenceTemperature), paper);

    /// <summary>How many stops more this light does for the paper than a meter says, counted from daylight of 5500 K (D55).</summary>
    /// <exception cref="RefusalException">The eye or the paper sees nothing of the light.</exception>
    public static Stops StopsFromDaylight(Spectrum light, PaperSensitivity paper)
    {
        var ratio = EffectPerLux(light, paper) / EffectPerLux(Daylight.OfTemperature(Daylight.D55), paper);
        return ratio > 0
            ? Stops.FromRatio(ratio)
            : throw new RefusalException($"The {paper.Name} paper sees nothing of the light \"{light.Name}\".");
    }

    private static double EffectPerLux(Spectrum light, PaperSensitivity paper)
    {
        var seen = Spectrum.Multiply(light, Photopic.Efficiency).Integral();
        if (seen <= 0)
        {
            throw new RefusalException($"The light \"{light.Name}\" has nothing the eye can see, so it cannot be metered.");
        }

        return Spectrum.Multiply(light, paper.Sensitivity).Integral() / seen;
    }
}
