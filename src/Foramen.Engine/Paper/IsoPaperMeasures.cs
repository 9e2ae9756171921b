using Foramen.Engine.Quantities;

namespace Foramen.Engine.Paper;

/// <summary>
/// Speed and range of a paper by the definitions of ISO 6846:1992: Ht, Hm and Hs are the exposures that give Dmin + 0.04, Dmin + 0.60 and
/// Dmin + 90 % of the net density; speed P = 1000/Hm, range R = 100·lg(Hs/Ht). For direct-positive paper the same densities are used and the
/// range is mirrored (ours; the standard covers printing from negatives only), and no speed is defined.
/// </summary>
public sealed record IsoPaperMeasures
{
    /// <summary>Net density of point T, the lightest tone that counts.</summary>
    public const double FirstToneNetDensity = 0.04;

    /// <summary>Net density of the speed point M.</summary>
    public const double SpeedPointNetDensity = 0.60;

    /// <summary>Share of the net density at point S, the darkest tone that counts.</summary>
    public const double DarkestShareOfNetDensity = 0.90;

    private IsoPaperMeasures(LuminousExposure ht, LuminousExposure hm, LuminousExposure hs, PaperKind kind)
    {
        LightestTone = ht;
        SpeedPoint = hm;
        DarkestTone = hs;
        Range = 100 * Math.Abs(Math.Log10(hs.LuxSeconds / ht.LuxSeconds));
        Speed = kind == PaperKind.NegativeWorking ? 1000 / hm.LuxSeconds : null;
    }

    /// <summary>Ht, the exposure that gives Dmin + 0.04.</summary>
    public LuminousExposure LightestTone { get; }

    /// <summary>Hm, the exposure that gives Dmin + 0.60.</summary>
    public LuminousExposure SpeedPoint { get; }

    /// <summary>Hs, the exposure that gives Dmin + 0.90 Dn.</summary>
    public LuminousExposure DarkestTone { get; }

    /// <summary>P = 1000/Hm, not rounded; null for direct-positive paper, for which the standard defines none.</summary>
    public double? Speed { get; }

    /// <summary>R = 100·|lg(Hs/Ht)|, not rounded.</summary>
    public double Range { get; }

    /// <summary>The range in stops, R/30.103.</summary>
    public Stops RangeInStops => Stops.FromValue(Range / (100 * Math.Log10(2)));

    /// <summary>Speed and range of this curve.</summary>
    public static IsoPaperMeasures Of(CharacteristicCurve curve)
    {
        LuminousExposure At(double net) => curve.ExposureFor(Density.FromValue(curve.MinimumDensity.Value + net));
        return new IsoPaperMeasures(
            At(FirstToneNetDensity), At(SpeedPointNetDensity), At(DarkestShareOfNetDensity * curve.NetDensity), curve.Kind);
    }

    /// <summary>A speed rounded to the one-third-stop series 100, 125, 160, … (rounding from memory of the standard).</summary>
    /// <param name="speed">P, above zero.</param>
    public static double RoundSpeed(double speed)
    {
        ReadOnlySpan<double> decade = [1, 1.25, 1.6, 2, 2.5, 3.2, 4, 5, 6.4, 8];
        var step = (int)Math.Floor((10 * Math.Log10(Guard.Within(speed, 1e-3, 1e6, "the paper's speed"))) + 0.5);
        return decade[((step % 10) + 10) % 10] * Math.Pow(10, Math.Floor(step / 10.0));
    }
}
