namespace Foramen.Cli.Output;

/// <summary>The Moon, as <c>foramen sun --json</c> says it.</summary>
/// <param name="AzimuthDeg">From true north through east, degrees.</param>
/// <param name="ElevationDeg">Above the level horizon as seen, degrees.</param>
/// <param name="LitFraction">Lit part of the disc, 0 to 1.</param>
/// <param name="ElongationDeg">Ahead of the Sun in longitude: 0 new, 90 first quarter, 180 full, degrees.</param>
/// <param name="Phase">The phase in words.</param>
/// <param name="IlluminanceLux">Moonlight on level ground under a clear sky, lx.</param>
/// <param name="Rise">When its upper edge appears in the day, or null.</param>
/// <param name="Set">When its upper edge disappears, or null.</param>
internal sealed record MoonReport(
    double AzimuthDeg, double ElevationDeg, double LitFraction, double ElongationDeg, string Phase, double IlluminanceLux, string? Rise, string? Set);
