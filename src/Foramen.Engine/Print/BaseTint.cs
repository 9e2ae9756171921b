using Foramen.Engine.Quantities;

namespace Foramen.Engine.Print;

/// <summary>
/// Colour of the paper's base: what it reflects of red, green and blue over what a neutral base of the same lightness does. The silver on it is taken as
/// neutral. Immutable.
/// </summary>
public sealed record BaseTint
{
    private BaseTint(string name, double red, double green, double blue)
    {
        Name = name;
        Red = red;
        Green = green;
        Blue = blue;
    }

    /// <summary>No tint.</summary>
    public static BaseTint Neutral { get; } = new("neutral", 1, 1, 1);

    /// <summary>A warm base, cream in the hand (an assumption: common practice, no source).</summary>
    public static BaseTint Warm { get; } = new("warm", 1.04, 1, 0.86);

    /// <summary>A cold base, brightened with blue (an assumption: common practice, no source).</summary>
    public static BaseTint Cold { get; } = new("cold", 0.96, 1, 1.05);

    /// <summary>As a user would say it.</summary>
    public string Name { get; }

    /// <summary>Factor on linear red.</summary>
    public double Red { get; }

    /// <summary>Factor on linear green.</summary>
    public double Green { get; }

    /// <summary>Factor on linear blue.</summary>
    public double Blue { get; }

    /// <summary>Whether a picture on it is grey.</summary>
    public bool IsNeutral => Red == 1 && Green == 1 && Blue == 1;

    /// <summary>A tint from its factors.</summary>
    /// <exception cref="RefusalException">A factor outside 0.3 to 1.5.</exception>
    public static BaseTint FromFactors(string name, double red, double green, double blue) => new(
        name,
        Guard.Within(red, 0.3, 1.5, "the base's red"),
        Guard.Within(green, 0.3, 1.5, "the base's green"),
        Guard.Within(blue, 0.3, 1.5, "the base's blue"));

    /// <summary>A tint by its name: neutral, warm or cold.</summary>
    /// <exception cref="RefusalException">Not one of them.</exception>
    public static BaseTint Find(string name) => (name ?? "").Trim() switch
    {
        "neutral" => Neutral,
        "warm" => Warm,
        "cold" => Cold,
        _ => throw new RefusalException($"The base tint \"{name}\" is not known; say neutral, warm or cold."),
    };
}
