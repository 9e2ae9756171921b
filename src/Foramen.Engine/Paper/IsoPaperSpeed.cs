using Foramen.Engine.Light;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Paper;

/// <summary>
/// ISO paper speed P by ISO 6846: 1000 over the lux seconds that give Dmin + 0.60, in incandescent light near 3000 K, in exposures of
/// about a second. It is converted for daylight and for minutes, never copied: the film rule 0.8/S would be more than two stops off.
/// </summary>
public sealed record IsoPaperSpeed : PaperSpeed
{
    private IsoPaperSpeed(double value) => Value = value;

    /// <summary>P, 1 to 2000.</summary>
    public double Value { get; }

    /// <inheritdoc/>
    public override LightColour FoundIn => LightColour.Lamp;

    /// <inheritdoc/>
    public override Duration FoundAt => Duration.FromSeconds(1);

    /// <summary>The speed printed on the box.</summary>
    /// <exception cref="RefusalException">Outside 1 to 2000.</exception>
    public static IsoPaperSpeed FromValue(double value) => new(Guard.Within(value, 1, 2000, "the ISO paper speed P"));

    /// <summary>The exposure index that meters a mid-tone onto the speed point in the same light and time: (π/4)·K·P/1000.</summary>
    /// <param name="meter">The meter's constants (ISO 2720).</param>
    public double ExposureIndexInSameLight(MeterConstants meter) => Math.PI / 4 * meter.Reflected * Value / 1000;

    /// <inheritdoc/>
    public override Density MidToneDensity(PaperKind kind, Density min, Density max)
        => kind == PaperKind.NegativeWorking
            ? Density.FromValue(min.Value + IsoPaperMeasures.SpeedPointNetDensity)
            : throw new RefusalException("ISO paper speed is defined for negative-working paper only; give a direct-positive paper its exposure index and the time it was found at.");

    /// <inheritdoc/>
    public override LuminousExposure MidToneExposure(PaperSensitivity sensitivity, FailureLaw failure)
        => LuminousExposure.FromLuxSeconds(1000 / Value);
}
