using Foramen.Engine.Light;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Paper;

/// <summary>
/// Exposure index as set on a meter when the picture came out right: EI, with the time and the light it came out right at. Behind a pinhole
/// E = π·L/(4N²), and the meter says t = K·N²/(L·EI), so the mid-tone received (π/4)·K/EI lux seconds of that light over that time.
/// Failure is contained in it and is taken out once here.
/// </summary>
public sealed record ExposureIndex : PaperSpeed
{
    /// <summary>Density of a mid-tone of 18 % reflectance, −lg 0.18: what a metered tone should print as on direct-positive paper.</summary>
    public const double PositiveMidToneDensity = 0.7447;

    private ExposureIndex(double value, Duration foundAt, LightColour foundIn, MeterConstants meter)
    {
        Value = value;
        FoundAt = foundAt;
        FoundIn = foundIn;
        Meter = meter;
    }

    /// <summary>EI, 0.01 to 1000.</summary>
    public double Value { get; }

    /// <inheritdoc/>
    public override Duration FoundAt { get; }

    /// <inheritdoc/>
    public override LightColour FoundIn { get; }

    /// <summary>The meter it was found with.</summary>
    public MeterConstants Meter { get; }

    /// <summary>An exposure index found in practice.</summary>
    /// <param name="value">EI, 0.01 to 1000.</param>
    /// <param name="foundAt">Exposure time it was found at, 0.001 s to a day.</param>
    /// <param name="foundIn">Light it was found in.</param>
    /// <param name="meter">The meter's constants.</param>
    /// <exception cref="RefusalException">A value outside its range.</exception>
    public static ExposureIndex Found(double value, Duration foundAt, LightColour foundIn, MeterConstants meter)
    {
        Guard.Within(value, 0.01, 1000, "the exposure index");
        Guard.Within(foundAt.Seconds, 0.001, 86_400, "the time the exposure index was found at", "s");
        return new ExposureIndex(value, foundAt, foundIn, meter);
    }

    /// <summary>The same paper's index at another time, in the same light: EI(t) = EI(t₀)·(t_m(t)/t)/(t_m(t₀)/t₀).</summary>
    /// <param name="time">The other time.</param>
    /// <param name="failure">The paper's failure law.</param>
    public ExposureIndex At(Duration time, FailureLaw failure)
    {
        Guard.Within(time.Seconds, 0.001, 86_400, "the time of the exposure index", "s");
        return new ExposureIndex(Value * Efficiency(failure, time) / Efficiency(failure, FoundAt), time, FoundIn, Meter);
    }

    /// <inheritdoc/>
    public override Density MidToneDensity(PaperKind kind, Density min, Density max)
        => Density.FromValue(kind == PaperKind.NegativeWorking
            ? min.Value + Math.Min(IsoPaperMeasures.SpeedPointNetDensity, 0.5 * (max.Value - min.Value))
            : Math.Clamp(PositiveMidToneDensity, min.Value + 0.1, min.Value + (0.6 * (max.Value - min.Value))));

    /// <inheritdoc/>
    public override LuminousExposure MidToneExposure(PaperSensitivity sensitivity, FailureLaw failure)
        => LuminousExposure.FromLuxSeconds(
            Math.PI / 4 * Meter.Reflected / Value * Efficiency(failure, FoundAt) * Actinic.Factor(FoundIn.ToSpectrum(), sensitivity));

    private static double Efficiency(FailureLaw failure, Duration time) => failure.MeteredSecondsFor(time.Seconds) / time.Seconds;
}
