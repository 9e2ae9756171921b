namespace Foramen.Engine.Print;

/// <summary>The power on whose scale lights that take turns add, for whole rows of them.</summary>
internal static class LightPower
{
    /// <summary>Each to the power; numbers that are none stay so.</summary>
    public static void Raise(ReadOnlySpan<float> light, double exponent, Span<float> into)
    {
        if (exponent == 1)
        {
            light.CopyTo(into);
            return;
        }

        var power = (float)exponent;
        for (var i = 0; i < light.Length; i++)
        {
            into[i] = MathF.Pow(light[i], power);
        }
    }

    /// <summary>Back, in place.</summary>
    public static void Root(Span<float> light, double exponent)
    {
        if (exponent == 1)
        {
            return;
        }

        var power = (float)(1 / exponent);
        for (var i = 0; i < light.Length; i++)
        {
            light[i] = MathF.Pow(MathF.Max(0, light[i]), power);
        }
    }

    /// <summary>The even light that is worth two taking turns.</summary>
    public static double Mean(double first, double second, double shareOfSecond, double exponent) => shareOfSecond switch
    {
        <= 0 => first,
        >= 1 => second,
        _ => Math.Pow(((1 - shareOfSecond) * Math.Pow(first, exponent)) + (shareOfSecond * Math.Pow(second, exponent)), 1 / exponent),
    };
}
