using MathNet.Numerics.Integration;

namespace Foramen.Engine.Light;

/// <summary>
/// Integrals over the dome of the sky by Gauss and Legendre's rule: 16 elevations by 24 azimuths, only over the part that the plane looks at. Within
/// 0.5 % of a fine grid for every type and plane.
/// </summary>
internal static class SkyDome
{
    private static readonly (double Node, double Weight)[] Elevations = Rule(16);

    private static readonly (double Node, double Weight)[] Azimuths = Rule(24);

    private static readonly (double Node, double Weight)[] FewElevations = Rule(8);

    private static readonly (double Node, double Weight)[] FewAzimuths = Rule(10);

    /// <summary>Light on level ground over the luminance of the zenith: π for an even sky, 7π/9 for the traditional overcast one.</summary>
    public static double Horizontal(CieGeneralSky sky, double sinSun) => On(Facade.Level, sky, sinSun, 0);

    /// <summary>Light on a plane from the sky over the luminance of the zenith.</summary>
    /// <param name="plane">The plane.</param>
    /// <param name="sky">The sky's type.</param>
    /// <param name="sinSun">Sine of the sun's elevation, 0 to 1.</param>
    /// <param name="sunAzimuth">Radians.</param>
    public static double On(Facade plane, CieGeneralSky sky, double sinSun, double sunAzimuth)
        => On(plane, sky, sinSun, sunAzimuth, Elevations, Azimuths);

    /// <summary>The same by 8 elevations and 10 azimuths, within 2 %: for tables of many places of the sun.</summary>
    public static double QuickOn(Facade plane, CieGeneralSky sky, double sinSun, double sunAzimuth)
        => On(plane, sky, sinSun, sunAzimuth, FewElevations, FewAzimuths);

    private static double On(
        Facade plane, CieGeneralSky sky, double sinSun, double sunAzimuth, (double Node, double Weight)[] elevations, (double Node, double Weight)[] azimuths)
    {
        var sum = 0.0;
        var bearing = plane.Bearing.Radians;
        foreach (var (elevationNode, elevationWeight) in elevations)
        {
            var elevation = Math.PI / 4 * (1 + elevationNode);
            var (sin, cos) = Math.SinCos(elevation);

            // The plane looks at azimuths up to this far from its bearing.
            var upright = plane.CosTilt * sin;
            var across = plane.SinTilt * cos;
            var reach = Math.Abs(upright) >= across ? upright > 0 ? Math.PI : 0 : Math.Acos(-upright / across);
            if (reach == 0)
            {
                continue;
            }

            var ring = 0.0;
            foreach (var (node, weight) in azimuths)
            {
                var away = reach * node;
                ring += weight * (upright + (across * Math.Cos(away))) * sky.Relative(sin, Math.Cos(bearing + away - sunAzimuth), sinSun);
            }

            sum += elevationWeight * cos * ring * reach;
        }

        return sum * Math.PI / 4;
    }

    private static (double Node, double Weight)[] Rule(int count)
    {
        var rule = new GaussLegendreRule(-1, 1, count);
        return [.. rule.Abscissas.Zip(rule.Weights)];
    }
}
