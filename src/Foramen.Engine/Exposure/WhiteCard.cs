using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;

namespace Foramen.Engine.Exposure;

/// <summary>
/// The white card that a flash is planned at while nobody has metered one: it lies in the light of the mid-tone, which is taken to reflect as much as a
/// meter assumes. An assumption, to be replaced by a reading.
/// </summary>
public static class WhiteCard
{
    /// <summary>Reflectance of a clean white card (from memory, 0.80 to 0.90).</summary>
    public const double Reflectance = 0.85;

    /// <summary>Reflectance of the mid-tone that a meter assumes.</summary>
    public const double MidToneReflectance = 0.18;

    /// <summary>The tone whose light the card is taken to lie in: the first mid-tone, or the first tone.</summary>
    public static Tone InTheLightOf(IReadOnlyList<Tone> tones) => tones.FirstOrDefault(tone => tone.Rendering == Rendering.Mid) ?? tones[0];

    /// <summary>The card's luminance in the light of a tone.</summary>
    public static Luminance LuminanceBeside(Tone tone)
        => Luminance.FromCandelasPerSquareMetre(tone.Luminance.CandelasPerSquareMetre * Reflectance / MidToneReflectance);
}
