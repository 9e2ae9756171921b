namespace Foramen.EndToEnd.Walks;

/// <summary>
/// The keystroke-level model of Card, Moran and Newell (1980): how long someone who knows the way and makes no mistake takes, s. Operator times are quoted
/// from memory. It was measured at desks; for a phone a touch counts as pointing, and hands that change place are left out.
/// </summary>
internal static class KeystrokeLevel
{
    /// <summary>K: a key, by a typist of no special skill (40 words a minute).</summary>
    public const double Key = 0.28;

    /// <summary>P: pointing at a target.</summary>
    public const double Point = 1.1;

    /// <summary>M: making up one's mind before a step.</summary>
    public const double Mind = 1.35;

    /// <summary>What hands and mind take, s; waiting for the machine, the light or the baths is not in it.</summary>
    public static double Seconds(int steps, int touches, int keys) => (steps * Mind) + (touches * Point) + (keys * Key);
}
