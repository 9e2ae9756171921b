using Foramen.Engine.Exposure;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Print;

/// <summary>What the image and the flash do to the sheet, on the scale of effective exposure. Immutable.</summary>
public sealed record PrintExposure
{
    private PrintExposure(double effectiveSeconds, LuminousExposure flash, bool flashThroughHole)
    {
        EffectiveSeconds = effectiveSeconds;
        Flash = flash;
        FlashThroughHole = flashThroughHole;
    }

    /// <summary>Effective exposure for each lux of the image, in effective lux seconds: actinic factor of the light × metered worth of the time.</summary>
    public double EffectiveSeconds { get; }

    /// <summary>Effective exposure by the flash, on the hole's axis if it came through the hole.</summary>
    public LuminousExposure Flash { get; }

    /// <summary>Whether the flash came through the hole, so that it falls off as the image does and leaves the masked border alone.</summary>
    public bool FlashThroughHole { get; }

    /// <summary>What a sheet gets in a light: time and flash by the clock.</summary>
    /// <param name="response">The paper in the light of the scene; the flash is taken to be of the same colour.</param>
    /// <param name="exposure">Times by the clock.</param>
    /// <param name="flash">How the flash is given.</param>
    public static PrintExposure Of(PaperResponse response, SheetExposure exposure, FlashSetup flash) => FromEffective(
        response.ActinicFactor * response.Paper.Failure.MeteredSecondsFor(exposure.Time.Seconds),
        response.EffectiveExposure(flash.OnSheet, 1, exposure.Flash),
        flash.ThroughHole);

    /// <summary>From effective exposures known already.</summary>
    /// <param name="effectiveSeconds">0 to 1e9 effective lux seconds for each lux.</param>
    /// <param name="flash">Effective exposure by the flash.</param>
    /// <param name="flashThroughHole">Whether the flash came through the hole.</param>
    /// <exception cref="RefusalException">Outside the range.</exception>
    public static PrintExposure FromEffective(double effectiveSeconds, LuminousExposure flash = default, bool flashThroughHole = true)
        => new(Guard.Within(effectiveSeconds, 0, 1e9, "the effective time", "s"), flash, flashThroughHole);
}
