using Foramen.Engine.Quantities;

namespace Foramen.Engine.Paper;

/// <summary>What a flash gives and what it takes, to be drawn over its strength.</summary>
public sealed record FlashTrade
{
    private FlashTrade(FlashEffect effect, Stops textured, double baseChange, double contrast)
    {
        Effect = effect;
        TexturedRange = textured;
        BaseChange = baseChange;
        FaintContrast = contrast;
    }

    /// <summary>Strength, exposure and gain by what can be seen.</summary>
    public FlashEffect Effect { get; }

    /// <summary>Stops of image exposure that still show texture.</summary>
    public Stops TexturedRange { get; }

    /// <summary>Change of the unexposed end: fog in the white of a negative, loss of the deepest black on direct-positive paper. Zero or more.</summary>
    public double BaseChange { get; }

    /// <summary>Contrast of the faintest two stops, over what it is without a flash: the density between image exposures of one and four thresholds.</summary>
    public double FaintContrast { get; }

    /// <summary>The trade at one strength.</summary>
    /// <param name="curve">The paper's curve.</param>
    /// <param name="fraction">φ, flash over threshold, 0 to 3.</param>
    /// <exception cref="RefusalException">φ outside the range, or so strong that no visible tone is left.</exception>
    public static FlashTrade Of(CharacteristicCurve curve, double fraction)
    {
        var effect = FlashEffect.Of(curve, fraction);
        return new FlashTrade(
            effect,
            FlashEffect.TexturedRange(curve, fraction),
            Math.Abs(effect.BaseDensity.Value - curve.UnexposedDensity.Value),
            Faint(curve, effect.Exposure.LuxSeconds) / Faint(curve, 0));
    }

    private static double Faint(CharacteristicCurve curve, double flash)
    {
        var threshold = FlashEffect.Threshold(curve).LuxSeconds;
        return Math.Abs(curve.DensityAtLg(Math.Log10((4 * threshold) + flash)) - curve.DensityAtLg(Math.Log10(threshold + flash)));
    }
}
