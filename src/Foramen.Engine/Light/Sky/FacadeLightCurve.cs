namespace Foramen.Engine.Light;

/// <summary>
/// The light on one facade under one sky for any place of the sun, for loops over a year: the facade's share of the sky is tabled over the sun's elevation
/// and azimuth and read off between, within 2.5 % of the whole integral. Moonlight is not in it. Immutable.
/// </summary>
internal sealed class FacadeLightCurve
{
    private const int Elevations = 10;

    private const int Azimuths = 19;

    private readonly Facade facade;
    private readonly SkyCover cover;
    private readonly double ground;
    private readonly double[] shares;

    public FacadeLightCurve(Facade facade, SkyCover cover, double ground)
    {
        (this.facade, this.cover, this.ground) = (facade, cover, ground * (1 - facade.CosTilt) / 2);
        shares = new double[Elevations * Azimuths];
        for (var row = 0; row < Elevations; row++)
        {
            var sin = Math.Sin(row * (Math.PI / 2) / (Elevations - 1));
            var level = SkyDome.Horizontal(cover.Sky, sin);
            for (var column = 0; column < Azimuths; column++)
            {
                shares[(row * Azimuths) + column] = column > 0 && cover.Sky.IsSymmetric
                    ? shares[row * Azimuths]
                    : SkyDome.QuickOn(facade, cover.Sky, sin, facade.Bearing.Radians + (column * Math.PI / (Azimuths - 1))) / level;
            }
        }
    }

    /// <summary>All light on the facade, lx.</summary>
    /// <param name="sun">Where the sun stands.</param>
    /// <param name="aboveAirLux">Its light above the air.</param>
    /// <param name="shaded">Whether something hides the sun from the facade.</param>
    public double Lux(SkyPosition sun, double aboveAirLux, bool shaded)
    {
        var normal = cover.DirectNormalLux(sun.Elevation.Degrees, aboveAirLux);
        var sky = cover.DiffuseHorizontalLux(sun.TrueElevation.Degrees, aboveAirLux);
        var level = sky + (normal * Math.Max(0, Math.Sin(sun.Elevation.Radians)));
        var direct = shaded ? 0 : normal * Math.Max(0, facade.CosineTo(sun));
        return direct + (sky * Share(sun)) + (ground * level);
    }

    private double Share(SkyPosition sun)
    {
        var faded = Math.Clamp(-sun.TrueElevation.Degrees / SkyLight.FadedDegrees, 0, 1);
        var row = Math.Clamp(sun.TrueElevation.Degrees, 0, 90) * (Elevations - 1) / 90;
        var column = Math.Abs(Math.IEEERemainder(sun.Azimuth.Degrees - facade.Bearing.Degrees, 360)) * (Azimuths - 1) / 180;
        var (r, c) = (Math.Min((int)row, Elevations - 2), Math.Min((int)column, Azimuths - 2));
        var (down, right) = (row - r, column - c);
        var at = (r * Azimuths) + c;
        var upper = shares[at] + (right * (shares[at + 1] - shares[at]));
        var lower = shares[at + Azimuths] + (right * (shares[at + Azimuths + 1] - shares[at + Azimuths]));
        return ((1 - faded) * (upper + (down * (lower - upper)))) + (faded * (1 + facade.CosTilt) / 2);
    }
}
