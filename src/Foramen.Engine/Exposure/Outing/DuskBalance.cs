using Foramen.Engine.Light;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Exposure;

/// <summary>The minutes of dusk and dawn in which the sky is as bright as what lamps light, so that one exposure holds both.</summary>
/// <remarks>
/// The sky's luminance is taken as even, light on level ground over π: a clear western sky after sunset is a stop or two brighter and the eastern one darker, and in towns
/// the sky does not get darker than its glow.
/// </remarks>
public static class DuskBalance
{
    // By this elevation no lamp that lights a surface keeps up with the sky.
    private const double HighestDegrees = 5;

    private const double DarkestDegrees = -18;

    /// <summary>The windows between two instants, in order.</summary>
    /// <param name="place">The observer.</param>
    /// <param name="lamplit">Luminance of what the lamps light, 0.001 to 1000 cd/m².</param>
    /// <param name="within">How many stops sky and lamps may differ, 0.1 to 4.</param>
    /// <param name="from">Beginning; its offset is given to all windows.</param>
    /// <param name="to">End, up to 400 days later.</param>
    /// <param name="glow">Luminance of the town's glow, which the sky never falls below; that of a natural night where nothing is said.</param>
    /// <exception cref="RefusalException">Outside a range.</exception>
    public static IReadOnlyList<LightWindow> Find(
        GeographicPosition place, Luminance lamplit, Stops within, DateTimeOffset from, DateTimeOffset to, Luminance? glow = null)
    {
        var lamps = Guard.Within(lamplit.CandelasPerSquareMetre, 0.001, 1000, "the luminance of what the lamps light", "cd/m²");
        var stops = Guard.Within(within.Value, 0.1, 4, "the difference of sky and lamps", "stops");
        var town = (glow ?? NightGround.NaturalSky).CandelasPerSquareMetre;
        return SunSpans.Find(
            from,
            to,
            place,
            sun => sun.TrueElevation.Degrees > HighestDegrees
                ? HighestDegrees - sun.TrueElevation.Degrees
                : stops - Math.Abs(Math.Log2(SkyLuminance(sun.TrueElevation, town) / lamps)),
            Angle.FromDegrees(DarkestDegrees),
            TimeSpan.FromMinutes(4));
    }

    /// <summary>Mean luminance of a clear sky with the sun at an elevation near the horizon or below it, and a glow behind it, cd/m².</summary>
    internal static double SkyLuminance(Angle trueElevation, double glow) => (Twilight.ClearHorizontal(trueElevation).Lux / Math.PI) + glow;
}
