using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;

namespace Foramen.Engine.Exposure;

/// <summary>
/// A tone that matters, reduced to the numbers that the solver and the odds need, all as effective exposures in lux seconds: what it gets for each
/// metered second, what the flash gives it, and the band that the total should land in.
/// </summary>
/// <param name="PerSecond">Effective exposure of its image for each metered second.</param>
/// <param name="Flash">Effective exposure of the flash at its place.</param>
/// <param name="Low">Least total that counts: the band's edge, or what can be told from the flash alone, whichever is more.</param>
/// <param name="Aim">Total aimed at.</param>
/// <param name="High">Most total that counts.</param>
/// <param name="Spread">Standard deviation of its reading, stops.</param>
internal readonly record struct ToneAim(double PerSecond, double Flash, double Low, double Aim, double High, double Spread)
{
    /// <summary>A reading that is only a bound is a guess within about a stop, whatever the meter's own spread.</summary>
    public const double SpreadOfBound = 1;

    /// <summary>The tones that matter, on a paper in a light, with a flash of this effective exposure in the middle of the sheet.</summary>
    public static ToneAim[] For(
        PaperResponse response, IReadOnlyList<PlacedTone> tones, double flashEffective, bool flashFallsOff, double tolerance = 1)
    {
        var curve = response.Paper.Curve;
        var aims = new List<ToneAim>(tones.Count);
        foreach (var tone in tones)
        {
            var band = RenderingBand.On(curve, tone.Rendering);
            if (band.Stretched(tolerance) is not { Aim: { } aim, High: { } high, Low: var low })
            {
                continue;
            }

            var flash = flashEffective * (flashFallsOff ? tone.Falloff : 1);
            aims.Add(new ToneAim(
                tone.OnSheet.Lux * tone.ActinicRatio * response.ActinicFactor,
                flash,
                Math.Max(low.LuxSeconds, flash > 0 ? FirstTold(curve, flash) : 0),
                aim.LuxSeconds,
                high.LuxSeconds,
                SpreadOf(tone)));
        }

        return [.. aims];
    }

    /// <summary>Spread of a tone's reading, stops.</summary>
    public static double SpreadOf(PlacedTone tone)
        => tone.Limit == LuminanceLimit.Exact ? tone.MeterSpread.Value : Math.Max(SpreadOfBound, tone.MeterSpread.Value);

    /// <summary>Its part of the loss after some metered seconds: 1 at the edge of its band, squared inside, linear beyond.</summary>
    public double LossAt(double meteredSeconds)
    {
        var off = Math.Log2(((PerSecond * meteredSeconds) + Flash) / Aim);

        // A flash may lift the lower edge close to the aim; the distance to it never counts as nothing.
        var edge = Math.Max(0.1, off < 0 ? Math.Log2(Aim / Low) : Math.Log2(High / Aim));
        var r = Math.Abs(off) / edge;
        return r <= 1 ? r * r : (2 * r) - 1;
    }

    private static double FirstTold(CharacteristicCurve curve, double flash)
    {
        var change = curve.Kind == PaperKind.NegativeWorking ? IsoPaperMeasures.FirstToneNetDensity : -IsoPaperMeasures.FirstToneNetDensity;
        var density = curve.DensityAt(LuminousExposure.FromLuxSeconds(flash)).Value + change;
        return density > curve.MinimumDensity.Value && density < curve.MaximumDensity.Value
            ? curve.ExposureFor(Density.FromValue(density)).LuxSeconds
            : LuminousExposure.Max;
    }
}
