using Foramen.Engine.Exposure;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;

namespace Foramen.Engine.Print;

/// <summary>What a density measured on a print says of a tone that was wanted in a certain way. Immutable.</summary>
public sealed record MeasuredTone
{
    private MeasuredTone()
    {
    }

    /// <summary>The density.</summary>
    public required Density Density { get; init; }

    /// <summary>How well it is known (1 sd): 0.02 and 3 % of itself, an assumption about scans.</summary>
    public required double DensitySd { get; init; }

    /// <summary>How it came out.</summary>
    public required ToneOutcome Outcome { get; init; }

    /// <summary>
    /// How much lighter than wanted it came out, stops of light; null for a tone that may burn or block. Of a burnt or blocked one, by how much at least.
    /// </summary>
    public Stops? FromAim { get; init; }

    /// <summary>How well <see cref="FromAim"/> is known (1 sd), from the density's doubt and the curve's slope there.</summary>
    public Stops? FromAimSd { get; init; }

    /// <summary>Doubt of a density from a scan (1 sd; an assumption).</summary>
    public static double SdOf(Density density) => double.Hypot(0.02, 0.03 * density.Value);

    /// <summary>A density seen where a tone was planned.</summary>
    /// <param name="curve">The paper's curve.</param>
    /// <param name="wanted">How the tone was wanted.</param>
    /// <param name="density">The density of the sheet there: of a paper negative, its own.</param>
    public static MeasuredTone Of(CharacteristicCurve curve, Rendering wanted, Density density)
    {
        var low = curve.MinimumDensity.Value + IsoPaperMeasures.FirstToneNetDensity;
        var high = curve.MinimumDensity.Value + (IsoPaperMeasures.DarkestShareOfNetDensity * curve.NetDensity);
        var lg = Math.Log10(curve.ExposureFor(Density.FromValue(Math.Clamp(density.Value, low, high))).LuxSeconds);
        var negative = curve.Kind == PaperKind.NegativeWorking;
        var (burnt, blocked) = negative ? (density.Value > high, density.Value < low) : (density.Value < low, density.Value > high);
        var band = RenderingBand.On(curve, wanted);
        var sd = SdOf(density);
        var off = band.Aim is { } aim ? (lg - Math.Log10(aim.LuxSeconds)) / Math.Log10(2) : (double?)null;
        return new MeasuredTone
        {
            Density = density,
            DensitySd = sd,
            Outcome = band.Aim is null ? ToneOutcome.AsWanted
                : burnt ? ToneOutcome.Burnt
                : blocked ? ToneOutcome.Blocked
                : lg < Lg(band.Low) ? ToneOutcome.TooDark
                : lg > Lg(band.High!.Value) ? ToneOutcome.TooLight
                : ToneOutcome.AsWanted,
            FromAim = off is { } stops ? Stops.FromValue(stops) : null,
            FromAimSd = off is null ? null : Stops.FromValue(Math.Min(3, sd / Math.Abs(curve.SlopeAtLg(lg)) / Math.Log10(2))),
        };

        static double Lg(LuminousExposure exposure) => exposure.LuxSeconds <= 0 ? double.NegativeInfinity : Math.Log10(exposure.LuxSeconds);
    }
}
