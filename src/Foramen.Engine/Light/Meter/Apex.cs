using Foramen.Engine.Quantities;

namespace Foramen.Engine.Light;

/// <summary>
/// The additive system of photographic exposure as Exif writes it (CIPA DC-008, Exif 2.3, annex C): Av + Tv = Bv + Sv. Its brightness
/// scale has Bv 0 at one footlambert, which is 0.2 stop below the luminance a meter with K 12.5 has in mind.
/// </summary>
public static class Apex
{
    /// <summary>One footlambert, cd/m²: 1/π candela per square foot.</summary>
    public const double FootlambertCandelas = 1 / (Math.PI * 0.3048 * 0.3048);

    /// <summary>The speed of Sv 0: 100/2^5.</summary>
    public const double SpeedOfZero = 3.125;

    /// <summary>Av = 2·lg2 N.</summary>
    public static double ApertureValue(FNumber aperture) => 2 * Math.Log2(aperture.Value);

    /// <summary>N of an Av.</summary>
    /// <exception cref="RefusalException">Not an f-number.</exception>
    public static FNumber Aperture(double apertureValue) => FNumber.FromValue(Math.Pow(2, apertureValue / 2));

    /// <summary>Tv = −lg2 t.</summary>
    /// <exception cref="RefusalException">The time is zero.</exception>
    public static double TimeValue(Duration time)
        => time.Seconds > 0 ? -Math.Log2(time.Seconds) : throw new RefusalException("The exposure time is zero; it must be more than that.");

    /// <summary>t of a Tv.</summary>
    /// <exception cref="RefusalException">Not an exposure time.</exception>
    public static Duration Time(double timeValue) => Duration.FromSeconds(Math.Pow(2, -timeValue));

    /// <summary>Sv = lg2(S/3.125).</summary>
    public static double SpeedValue(CameraSpeed speed) => Math.Log2(speed.Iso / SpeedOfZero);

    /// <summary>S of an Sv.</summary>
    /// <exception cref="RefusalException">Not a speed.</exception>
    public static CameraSpeed Speed(double speedValue) => CameraSpeed.FromIso(SpeedOfZero * Math.Pow(2, speedValue));

    /// <summary>Bv = lg2 of the luminance in footlamberts.</summary>
    /// <exception cref="RefusalException">The luminance is zero.</exception>
    public static double BrightnessValue(Luminance luminance)
        => luminance.CandelasPerSquareMetre > 0
            ? Math.Log2(luminance.CandelasPerSquareMetre / FootlambertCandelas)
            : throw new RefusalException("The luminance is zero; it must be more than that to have a brightness value.");

    /// <summary>Luminance of a Bv.</summary>
    /// <exception cref="RefusalException">Beyond any luminance.</exception>
    public static Luminance Brightness(double brightnessValue)
        => Luminance.FromCandelasPerSquareMetre(FootlambertCandelas * Math.Pow(2, brightnessValue));
}
