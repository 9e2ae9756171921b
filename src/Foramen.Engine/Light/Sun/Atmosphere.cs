using Foramen.Engine.Quantities;

namespace Foramen.Engine.Light;

/// <summary>The air that bends light, by its pressure and temperature at the spot.</summary>
public sealed record Atmosphere
{
    /// <summary>Pressure at the spot (not reduced to sea level), hPa, 300 to 1100.</summary>
    /// <exception cref="RefusalException">Outside the range.</exception>
    public double PressureHectopascals { get; init => field = Guard.Within(value, 300, 1100, "the air pressure", "hPa"); } = 1010;

    /// <summary>Temperature of the air, °C, −60 to 60.</summary>
    /// <exception cref="RefusalException">Outside the range.</exception>
    public double TemperatureCelsius { get; init => field = Guard.Within(value, -60, 60, "the air temperature", "°C"); } = 10;

    /// <summary>The usual air at a height above sea level: 1010 hPa times (1 − 2.25577e-5·h)^5.25588 (ICAO standard atmosphere), 10 °C.</summary>
    public static Atmosphere At(GeographicPosition place) => new()
    {
        PressureHectopascals = 1010 * Math.Pow(1 - (2.25577e-5 * place.ElevationMetres), 5.25588),
    };

    /// <summary>Degrees for degrees; below −1° the value of −1° fades out towards the nadir, so that order is kept.</summary>
    internal double RefractionDegrees(double trueElevationDegrees)
    {
        var elevation = Math.Max(-1, trueElevationDegrees);
        var fading = trueElevationDegrees < -1 ? (trueElevationDegrees + 90) / 89 : 1;
        return fading * PressureHectopascals / 1010 * (283 / (273 + TemperatureCelsius))
            * (1.02 / (60 * Math.Tan((elevation + (10.3 / (elevation + 5.11))) * (Math.PI / 180))));
    }
}
