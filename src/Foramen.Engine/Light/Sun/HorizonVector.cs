using Foramen.Engine.Quantities;

namespace Foramen.Engine.Light;

/// <summary>A direction from the observer: east, north, up; any unit of length.</summary>
internal readonly record struct HorizonVector(double East, double North, double Up)
{
    private const double Degree = 180 / Math.PI;

    /// <summary>Elevation without refraction, degrees.</summary>
    public double TrueElevationDegrees => Math.Atan2(Up, Math.Sqrt((East * East) + (North * North))) * Degree;

    /// <summary>Azimuth from north through east, degrees, 0 to 360.</summary>
    public double AzimuthDegrees
    {
        get
        {
            var azimuth = Math.Atan2(East, North) * Degree;
            return azimuth < 0 ? azimuth + 360 : azimuth;
        }
    }

    /// <summary>The direction as it is seen through air.</summary>
    public SkyPosition Seen(Atmosphere air)
    {
        var elevation = TrueElevationDegrees;
        return new SkyPosition(
            Angle.FromDegrees(AzimuthDegrees),
            Angle.FromDegrees(Math.Min(90, elevation + air.RefractionDegrees(elevation))),
            Angle.FromDegrees(elevation));
    }
}
