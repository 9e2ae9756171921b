using Foramen.Engine.Quantities;

namespace Foramen.Engine.Paper;

/// <summary>
/// Density of the processed sheet against lg of its effective exposure: smooth, monotone, bounded by
/// <see cref="MinimumDensity"/> and <see cref="MaximumDensity"/>. Effective exposure is in lux seconds of 3000 K light given in one second;
/// the room PaperResponse brings real light and time to it. Immutable.
/// </summary>
public abstract class CharacteristicCurve
{
    /// <summary>Whether more light makes the sheet darker or lighter.</summary>
    public abstract PaperKind Kind { get; }

    /// <summary>Density of the lightest tone the paper can show.</summary>
    public abstract Density MinimumDensity { get; }

    /// <summary>Density of the darkest tone the paper can show.</summary>
    public abstract Density MaximumDensity { get; }

    /// <summary>Net density, Dmax − Dmin.</summary>
    public double NetDensity => MaximumDensity.Value - MinimumDensity.Value;

    /// <summary>Density of a processed sheet that saw no light.</summary>
    public Density UnexposedDensity => Kind == PaperKind.NegativeWorking ? MinimumDensity : MaximumDensity;

    /// <summary>Density after this effective exposure. No exposure gives <see cref="UnexposedDensity"/>.</summary>
    public Density DensityAt(LuminousExposure exposure)
        => exposure.LuxSeconds <= 0 ? UnexposedDensity : Density.FromValue(DensityAtLg(Math.Log10(exposure.LuxSeconds)));

    /// <summary>The effective exposure that gives this density.</summary>
    /// <exception cref="RefusalException">The paper does not reach this density, or only in the limit.</exception>
    public LuminousExposure ExposureFor(Density density)
    {
        if (density <= MinimumDensity || density >= MaximumDensity)
        {
            throw new RefusalException(
                FormattableString.Invariant($"Density {density.Value:0.00} is out of this paper's reach; it shows {MinimumDensity.Value:0.00} to {MaximumDensity.Value:0.00}."));
        }

        return LuminousExposure.FromLuxSeconds(Math.Pow(10, LgExposureFor(density.Value)));
    }

    /// <summary>Density at a lg exposure (lux seconds); hot path of the predicted print, so on bare numbers.</summary>
    /// <param name="lgExposure">lg of the effective exposure in lux seconds.</param>
    public abstract double DensityAtLg(double lgExposure);

    /// <summary>Slope dD/dlgH; negative for a direct-positive paper.</summary>
    /// <param name="lgExposure">lg of the effective exposure in lux seconds.</param>
    public abstract double SlopeAtLg(double lgExposure);

    /// <summary>The same curve for a paper faster (or, when negative, slower) by some stops.</summary>
    public abstract CharacteristicCurve Faster(Stops stops);

    /// <summary>lg exposure that gives a density strictly between the limits.</summary>
    /// <param name="density">The density wanted.</param>
    protected abstract double LgExposureFor(double density);
}
