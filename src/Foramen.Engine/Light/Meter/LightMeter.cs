using Foramen.Engine.Quantities;

namespace Foramen.Engine.Light;

/// <summary>
/// What a light meter's reading says of the scene's luminance, and back. Reflected light: t/N² = K/(L·S); incident light: t/N² = C/(E·S)
/// (ISO 2720:1974). A luminance found from incident light is that of the mid-tone the meter has in mind.
/// </summary>
/// <param name="Constants">The meter's calibration.</param>
public sealed record LightMeter(MeterConstants Constants)
{
    /// <summary>A meter with K 12.5, C 250 flat and 330 dome.</summary>
    public static LightMeter Usual { get; } = new(MeterConstants.Usual);

    /// <summary>From an exposure value at ISO 100: L = K·2^EV/100.</summary>
    public Luminance LuminanceFrom(ExposureValue value) => Candelas(Constants.Reflected * Math.Pow(2, value.AtIso100) / 100);

    /// <summary>From the aperture, time and speed a reflected-light meter recommends: L = K·N²/(t·S).</summary>
    /// <exception cref="RefusalException">The time is zero, or the luminance beyond anything lit.</exception>
    public Luminance LuminanceFrom(FNumber aperture, Duration time, CameraSpeed speed)
    {
        NotZero(time.Seconds, "the metered time");
        return Candelas(Constants.Reflected * aperture.Value * aperture.Value / (time.Seconds * speed.Iso));
    }

    /// <summary>From the light on an incident meter's receptor, the luminance of the mid-tone it has in mind: L = K·E/C.</summary>
    public Luminance LuminanceFrom(Illuminance light, IncidentReceptor receptor)
        => Candelas(Constants.Reflected * light.Lux / Constants.Incident(receptor));

    /// <summary>From the light on an even, matt card (a Lambertian surface): L = ρ·E/π. Independent of any meter constant.</summary>
    /// <param name="light">Light on the card.</param>
    /// <param name="card">The card's reflectance, such as 0.18.</param>
    public static Luminance LuminanceOfCard(Illuminance light, Reflectance card) => Candelas(card.Fraction * light.Lux / Math.PI);

    /// <summary>The exposure value at ISO 100 a reflected-light meter shows for this luminance.</summary>
    /// <exception cref="RefusalException">The luminance is zero.</exception>
    public ExposureValue ExposureValueOf(Luminance luminance)
    {
        NotZero(luminance.CandelasPerSquareMetre, "the luminance");
        return ExposureValue.FromAtIso100(Math.Log2(luminance.CandelasPerSquareMetre * 100 / Constants.Reflected));
    }

    /// <summary>
    /// The time this luminance is given as a mid-tone at a speed or exposure index: t = K·N²/(L·S). Failure is not in it.
    /// </summary>
    /// <exception cref="RefusalException">The luminance is zero, or the time longer than any exposure.</exception>
    public Duration MeteredTime(Luminance luminance, FNumber aperture, CameraSpeed speed)
    {
        NotZero(luminance.CandelasPerSquareMetre, "the luminance");
        return Duration.FromSeconds(
            Constants.Reflected * aperture.Value * aperture.Value / (luminance.CandelasPerSquareMetre * speed.Iso));
    }

    /// <summary>The reflectance of the mid-tone a meter has in mind when it measures incident light: πK/C.</summary>
    public Reflectance MidTone(IncidentReceptor receptor)
        => Reflectance.FromFraction(Math.PI * Constants.Reflected / Constants.Incident(receptor));

    private static Luminance Candelas(double value) => Luminance.FromCandelasPerSquareMetre(value);

    private static void NotZero(double value, string what)
    {
        if (value <= 0)
        {
            throw new RefusalException($"{char.ToUpperInvariant(what[0])}{what[1..]} is zero; it must be more than that to be metered.");
        }
    }
}
