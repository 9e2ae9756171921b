using Foramen.Engine.Quantities;

namespace Foramen.Engine.Learning;

/// <summary>How much the light wanders during an exposure under a sky, before the user's own sheets say: assumptions.</summary>
public static class LightDrift
{
    /// <summary>One standard deviation: 0.5 stop where the sky's name speaks of broken, passing or thin cloud, 0.2 otherwise.</summary>
    /// <param name="sky">The sky in words.</param>
    public static Stops For(string? sky)
        => sky is not null && (sky.Contains("cloud", StringComparison.OrdinalIgnoreCase) || sky.Contains("broken", StringComparison.OrdinalIgnoreCase))
            ? Stops.FromValue(0.5)
            : Stops.FromValue(0.2);
}
