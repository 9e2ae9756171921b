using Foramen.Engine.Quantities;

namespace Foramen.Engine.Paper;

/// <summary>
/// What a flash does to the low-exposure end of a paper. Exposures add, H = H_image + H_flash. A flash is stated as φ, its exposure over the
/// exposure of the first visible change from unexposed paper (0.04 in density). Its gain is reported by what can be seen: how much less image
/// exposure makes a tone 0.04 different from the flashed base. The textbook threshold formula counts tones within 0.016 of the flash
/// tone and promises about a stop more than the eye finds.
/// </summary>
public sealed record FlashEffect
{
    private FlashEffect(double fraction, LuminousExposure exposure, Density baseDensity, Stops gain)
    {
        Fraction = fraction;
        Exposure = exposure;
        BaseDensity = baseDensity;
        VisibleGain = gain;
    }

    /// <summary>φ, flash exposure over threshold exposure.</summary>
    public double Fraction { get; }

    /// <summary>Effective exposure of the flash.</summary>
    public LuminousExposure Exposure { get; }

    /// <summary>Density of a sheet that saw only the flash.</summary>
    public Density BaseDensity { get; }

    /// <summary>How much fainter a tone may be and still be seen, in stops.</summary>
    public Stops VisibleGain { get; }

    /// <summary>The effective exposure that first changes the sheet visibly: 0.04 in density from unexposed.</summary>
    public static LuminousExposure Threshold(CharacteristicCurve curve)
    {
        var change = curve.Kind == PaperKind.NegativeWorking ? IsoPaperMeasures.FirstToneNetDensity : -IsoPaperMeasures.FirstToneNetDensity;
        return curve.ExposureFor(Density.FromValue(curve.UnexposedDensity.Value + change));
    }

    /// <summary>The effect of a flash.</summary>
    /// <param name="curve">The paper's curve.</param>
    /// <param name="fraction">φ, 0 to 3.</param>
    /// <exception cref="RefusalException">φ outside the range, or so strong that no visible tone is left above it.</exception>
    public static FlashEffect Of(CharacteristicCurve curve, double fraction)
    {
        Guard.Within(fraction, 0, 3, "the flash as a part of the threshold");
        var threshold = Threshold(curve);
        var flash = LuminousExposure.FromLuxSeconds(fraction * threshold.LuxSeconds);
        var flashed = curve.DensityAt(flash);
        var change = curve.Kind == PaperKind.NegativeWorking ? IsoPaperMeasures.FirstToneNetDensity : -IsoPaperMeasures.FirstToneNetDensity;
        var seen = curve.ExposureFor(Density.FromValue(flashed.Value + change)).LuxSeconds - flash.LuxSeconds;
        return new FlashEffect(fraction, flash, flashed, Stops.FromRatio(threshold.LuxSeconds / seen));
    }

    /// <summary>
    /// Range of image exposure over which the sheet still shows texture: where the slope dD/dlgH_image is at least
    /// <paramref name="leastSlope"/>. The slope is that of the curve at the total exposure, times the image's share of it.
    /// </summary>
    /// <param name="curve">The paper's curve.</param>
    /// <param name="fraction">φ, 0 to 3.</param>
    /// <param name="leastSlope">Smallest slope that still reads as texture; 0.20 is usual for this measure (an assumption).</param>
    public static Stops TexturedRange(CharacteristicCurve curve, double fraction, double leastSlope = 0.20)
    {
        Guard.Within(leastSlope, 0.01, 2, "the least slope");
        var flash = Guard.Within(fraction, 0, 3, "the flash as a part of the threshold") * Threshold(curve).LuxSeconds;
        const double Step = 0.002;
        var textured = 0;
        for (var x = -4.0; x < 6; x += Step)
        {
            var image = Math.Pow(10, x);
            var slope = Math.Abs(curve.SlopeAtLg(Math.Log10(image + flash))) * image / (image + flash);
            textured += slope >= leastSlope ? 1 : 0;
        }

        return Stops.FromValue(textured * Step / Math.Log10(2));
    }
}
