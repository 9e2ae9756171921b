using Foramen.Engine.Quantities;

namespace Foramen.Engine.Paper;

/// <summary>
/// The flash to give: the strongest that changes the unexposed end by no more than half of what is first seen, so that it lifts tones without showing itself. Its
/// time belongs to a light: the same ten seconds may be a third of the threshold in shade and past it in sun.
/// </summary>
public sealed record FlashAdvice
{
    /// <summary>Change of density at the unexposed end that is allowed: half of the first visible tone (an assumption).</summary>
    public const double AllowedBaseChange = IsoPaperMeasures.FirstToneNetDensity / 2;

    private FlashAdvice(FlashTrade trade, Duration time)
    {
        Trade = trade;
        Time = time;
    }

    /// <summary>What it gives and takes.</summary>
    public FlashTrade Trade { get; }

    /// <summary>How long, in the light it was asked for.</summary>
    public Duration Time { get; }

    /// <summary>The strength that is advised for a paper: flash over threshold.</summary>
    public static double FractionFor(CharacteristicCurve curve)
    {
        var change = curve.Kind == PaperKind.NegativeWorking ? AllowedBaseChange : -AllowedBaseChange;
        return curve.ExposureFor(Density.FromValue(curve.UnexposedDensity.Value + change)).LuxSeconds / FlashEffect.Threshold(curve).LuxSeconds;
    }

    /// <summary>The flash for a light, by a threshold that was seen on a strip.</summary>
    /// <param name="response">The paper in the flash's light.</param>
    /// <param name="onSheet">What the white target puts on the sheet.</param>
    /// <param name="threshold">The effective exposure that first showed.</param>
    /// <exception cref="RefusalException">No light on the sheet.</exception>
    public static FlashAdvice For(PaperResponse response, Illuminance onSheet, LuminousExposure threshold)
    {
        var fraction = FractionFor(response.Paper.Curve);
        return new FlashAdvice(
            FlashTrade.Of(response.Paper.Curve, fraction),
            response.TimeFor(LuminousExposure.FromLuxSeconds(fraction * threshold.LuxSeconds), onSheet, 1));
    }
}
