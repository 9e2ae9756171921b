namespace Foramen.Engine.Light;

/// <summary>Sun or moon as a source: where it stands and how much light it sends to the top of the air.</summary>
/// <param name="Position">Where.</param>
/// <param name="AboveAirLux">On a surface square to it, above the air, lx.</param>
/// <param name="SinElevation">Sine of its elevation, 0 below the horizon.</param>
/// <param name="HorizontalShare">Light of the sky on level ground over the luminance of the zenith.</param>
internal readonly record struct CelestialLight(SkyPosition Position, double AboveAirLux, double SinElevation, double HorizontalShare)
{
    public static CelestialLight Of(SkyPosition position, double aboveAirLux, CieGeneralSky sky)
    {
        var sin = Math.Sin(Math.Max(0, position.TrueElevation.Radians));
        return new CelestialLight(position, aboveAirLux, sin, SkyDome.Horizontal(sky, sin));
    }

    public double DirectNormalLux(SkyCover cover) => cover.DirectNormalLux(Position.Elevation.Degrees, AboveAirLux);

    public double DiffuseHorizontalLux(SkyCover cover) => cover.DiffuseHorizontalLux(Position.TrueElevation.Degrees, AboveAirLux);
}
