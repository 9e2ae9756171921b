using Foramen.Engine.Light;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Scene;

/// <summary>
/// A photograph as a light meter: the luminance its codes stand for, from how it was exposed, or from one reading of a place in it.
/// </summary>
/// <remarks>
/// ISO 12232, standard output sensitivity: code 118 of 255 in sRGB is what a focal-plane exposure of H = 10/S lx s gives, and a lens gives
/// H = 0.65·L·t/N². The standard speaks of that one mid-tone; other codes are taken along the sRGB curve, so luminances far from it carry
/// whatever contrast the camera's own rendering adds. Lens falloff at the corners is not undone.
/// </remarks>
public static class PhotographMeter
{
    /// <summary>The 8-bit code that standard output sensitivity is stated at: 0.461 of full code.</summary>
    public const byte ReferenceCode = 118;

    /// <summary>Exposure times speed at that code, lx s: H = 10/S.</summary>
    public const double ReferenceExposure = 10;

    /// <summary>Focal-plane illuminance of a lens: q in E = q·L/N².</summary>
    public const double LensFactor = 0.65;

    /// <summary>Luminance of full code (linear 1.0) by exposure time, f-number and sensitivity.</summary>
    /// <exception cref="RefusalException">One of the three is missing or zero.</exception>
    public static Luminance WhiteLuminance(PhotographFacts facts)
    {
        if (facts.ExposureTime is not { Seconds: > 0 } time || facts.FNumber is not { } aperture || facts.Speed is not { } speed)
        {
            throw new RefusalException(
                "The photograph's file does not hold exposure time, f-number and ISO together; give one meter reading of a place in it.");
        }

        var referenceLuminance = ReferenceExposure / speed.Iso * aperture.Value * aperture.Value / (LensFactor * time.Seconds);
        return Luminance.FromCandelasPerSquareMetre(referenceLuminance / SrgbTransfer.LinearOfCode(ReferenceCode));
    }

    /// <summary>The photograph, anchored by how its file says it was exposed.</summary>
    /// <exception cref="RefusalException">The file does not say.</exception>
    public static ScenePhotograph AnchorByExposure(ScenePhotograph photo) => photo with { WhiteLuminance = WhiteLuminance(photo.Facts) };

    /// <summary>The photograph, anchored so that a place in it has the luminance a meter read there.</summary>
    /// <param name="photo">The photograph.</param>
    /// <param name="area">The place that was metered.</param>
    /// <param name="reading">What the meter read.</param>
    /// <exception cref="RefusalException">The place is blown or blocked, or the reading is zero.</exception>
    public static ScenePhotograph Anchor(ScenePhotograph photo, PhotographArea area, Luminance reading)
    {
        if (reading.CandelasPerSquareMetre <= 0)
        {
            throw new RefusalException("The reading is zero; it must be more than that to anchor a photograph.");
        }

        var relative = AreaReading.Of(photo, area, PaperSight.Eye);
        if (relative.Limit != LuminanceLimit.Exact)
        {
            var state = relative.Limit == LuminanceLimit.AtLeast ? "blown" : "blocked";
            throw new RefusalException($"The metered place is {state} in the photograph, so it cannot anchor it; meter a middle tone.");
        }

        return photo with { WhiteLuminance = Luminance.FromCandelasPerSquareMetre(reading.CandelasPerSquareMetre / relative.Value) };
    }
}
