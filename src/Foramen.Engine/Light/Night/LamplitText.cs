using Foramen.Engine.Quantities;

namespace Foramen.Engine.Light;

/// <summary>What lamps light, as it is said: a meter's reading, or a known scene at night by its name.</summary>
public static class LamplitText
{
    /// <summary>The luminance.</summary>
    /// <param name="text">Such as <c>EV 4</c>, <c>12 cd/m2</c> or <c>floodlit</c>.</param>
    /// <param name="meter">The meter a reading was taken with.</param>
    /// <exception cref="RefusalException">Neither a reading nor one known scene.</exception>
    public static Luminance Luminance(string text, LightMeter meter)
    {
        // A reading has a digit; no name of a scene has one.
        if (text.Any(char.IsAsciiDigit))
        {
            return ReadingText.Luminance(text, meter, "what the lamps light");
        }

        try
        {
            return meter.LuminanceFrom(NightScene.Find(text).Middle);
        }
        catch (RefusalException refusal)
        {
            throw new RefusalException($"What the lamps light is no reading such as EV 4; and of names: {refusal.Message}", refusal);
        }
    }
}
