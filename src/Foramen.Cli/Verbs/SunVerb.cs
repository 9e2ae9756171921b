using System.CommandLine;
using System.Globalization;
using Foramen.Cli.Options;
using Foramen.Cli.Output;
using Foramen.Cli.Time;
using Foramen.Engine.Light;

namespace Foramen.Cli.Verbs;

/// <summary><c>foramen sun</c>: where sun and moon stand, and what they do in the day.</summary>
internal static class SunVerb
{
    public static Command Create(Page page)
    {
        var at = new Option<string>("--at") { Description = "The instant, with its offset from universal time, such as 2024-06-20T14:05:00+02:00.", HelpName = "INSTANT", Required = true };
        var latitude = new Option<double>("--lat") { Description = "Latitude in degrees, north positive.", HelpName = "DEGREES", Required = true };
        var longitude = new Option<double>("--lon") { Description = "Longitude in degrees, east positive.", HelpName = "DEGREES", Required = true };
        var elevation = new Option<double>("--elevation") { Description = "Height above sea level in metres; 0 where nothing is said.", HelpName = "METRES" };
        var pressure = new Option<double?>("--pressure") { Description = "Air pressure at the spot in hPa; the usual one for the height where nothing is said.", HelpName = "HPA" };
        var temperature = new Option<double?>("--temperature") { Description = "Air temperature in °C; 10 where nothing is said.", HelpName = "CELSIUS" };
        var json = CommonOptions.Json();
        var verb = new Command(
            "sun",
            """
            Says where the sun and the moon stand, and when they rise and set in that day. Azimuths count from true north, not from the compass's.

            Try:
              foramen sun --at 2024-06-20T14:05:00+02:00 --lat 52.3 --lon 5.1
              foramen sun --at 2024-06-20T14:05:00+02:00 --lat 52.3 --lon 5.1 --elevation -2 --json
            """)
        {
            at, latitude, longitude, elevation, pressure, temperature, json,
        };
        verb.SetAction(parsed =>
        {
            var instant = InstantText.Parse(parsed.GetRequiredValue(at), "The instant");
            var place = GeographicPosition.FromDegrees(parsed.GetValue(latitude), parsed.GetValue(longitude), parsed.GetValue(elevation));
            var usual = Atmosphere.At(place);
            var air = new Atmosphere
            {
                PressureHectopascals = parsed.GetValue(pressure) ?? usual.PressureHectopascals,
                TemperatureCelsius = parsed.GetValue(temperature) ?? usual.TemperatureCelsius,
            };
            var report = Report(instant, place, air);
            return page.Show(parsed.GetValue(json), report, ReportJson.Default.SunReport, () => Write(page, report));
        });
        return verb;
    }

    private static SunReport Report(DateTimeOffset instant, GeographicPosition place, Atmosphere air)
    {
        var sun = Sun.At(instant, place, air);
        var moon = Moon.At(instant, place, air);
        var phase = Moon.PhaseAt(instant);
        var day = SkyDay.Of(new DateTimeOffset(instant.Date, instant.Offset), TimeSpan.FromDays(1), place);
        string? First(SkyEventKind kind) => day.First(kind) is { } found ? InstantText.Of(found) : null;
        return new SunReport
        {
            At = InstantText.Of(instant),
            LatitudeDeg = place.Latitude.Degrees,
            LongitudeDeg = place.Longitude.Degrees,
            ElevationMetres = place.ElevationMetres,
            PressureHectopascals = air.PressureHectopascals,
            TemperatureCelsius = air.TemperatureCelsius,
            ZenithDeg = sun.Zenith.Degrees,
            AzimuthDeg = sun.Azimuth.Degrees,
            ElevationDeg = sun.Elevation.Degrees,
            TrueElevationDeg = sun.TrueElevation.Degrees,
            EquationOfTimeMinutes = Sun.EquationOfTimeMinutes(instant),
            Day = day.SunStaysUp ? "stays up" : day.SunStaysDown ? "stays down" : "rises and sets",
            AstronomicalDawn = First(SkyEventKind.AstronomicalDawn),
            NauticalDawn = First(SkyEventKind.NauticalDawn),
            CivilDawn = First(SkyEventKind.CivilDawn),
            Rise = First(SkyEventKind.Sunrise),
            Transit = First(SkyEventKind.SolarNoon),
            Set = First(SkyEventKind.Sunset),
            CivilDusk = First(SkyEventKind.CivilDusk),
            NauticalDusk = First(SkyEventKind.NauticalDusk),
            AstronomicalDusk = First(SkyEventKind.AstronomicalDusk),
            Moon = new MoonReport(
                moon.Azimuth.Degrees,
                moon.Elevation.Degrees,
                phase.LitFraction,
                phase.Elongation.Degrees,
                Words(phase),
                Moon.LightOnGround(instant, place).Lux,
                First(SkyEventKind.Moonrise),
                First(SkyEventKind.Moonset)),
        };
    }

    private static string Words(MoonPhase phase) => phase.LitFraction switch
    {
        < 0.02 => "new",
        > 0.98 => "full",
        < 0.45 => phase.Waxing ? "waxing crescent" : "waning crescent",
        <= 0.55 => phase.Waxing ? "first quarter" : "last quarter",
        _ => phase.Waxing ? "waxing gibbous" : "waning gibbous",
    };

    private static void Write(Page page, SunReport report)
    {
        var culture = CultureInfo.CurrentCulture;
        string Clock(string? instant) => instant is null ? "–" : InstantText.Clock(DateTimeOffset.Parse(instant, CultureInfo.InvariantCulture));
        page.Line(report.At);
        page.Table(["", ""],
        [
            ["sun", string.Create(culture, $"azimuth {report.AzimuthDeg:0.00}°, elevation {report.ElevationDeg:0.00}°")],
            ["day", report.Day == "rises and sets" ? $"rises {Clock(report.Rise)}, highest {Clock(report.Transit)}, sets {Clock(report.Set)}" : $"the sun {report.Day}"],
            ["twilight", $"civil {Clock(report.CivilDawn)} to {Clock(report.CivilDusk)}, nautical {Clock(report.NauticalDawn)} to {Clock(report.NauticalDusk)}, astronomical {Clock(report.AstronomicalDawn)} to {Clock(report.AstronomicalDusk)}"],
            ["moon", string.Create(culture, $"{report.Moon.Phase}, {report.Moon.LitFraction * 100:0} % lit, azimuth {report.Moon.AzimuthDeg:0.0}°, elevation {report.Moon.ElevationDeg:0.0}°, rises {Clock(report.Moon.Rise)}, sets {Clock(report.Moon.Set)}")],
            ["moonlight", string.Create(culture, $"{report.Moon.IlluminanceLux:0.000} lx on level ground in clear air")],
        ]);
        page.Line("Never look at the sun through a hole, a tube or any sighting aid.");
    }
}
