using System.CommandLine;
using Foramen.Cli.Options;

namespace Foramen.Cli.Outings;

/// <summary>The options of <c>outing</c>.</summary>
internal sealed class OutingOptions
{
    public Option<string> Places { get; } = new("--places") { Description = "File of places: JSON, GeoJSON or GPX. GPX says no bearings: add --facing.", HelpName = "FILE", Required = true };

    public Option<string> Date { get; } = new("--date") { Description = "The day, such as 2024-06-20.", HelpName = "DATE", Required = true };

    public Option<string> Zone { get; } = new("--zone") { Description = "The clocks: a name of the time zone database, an offset such as +02:00; UTC where nothing is said.", HelpName = "ZONE", DefaultValueFactory = _ => "UTC" };

    public Option<int> Days { get; } = new("--days") { Description = "Days to look for windows, 1 to 366; with more than one no schedule is made.", HelpName = "N", DefaultValueFactory = _ => 1 };

    public Option<string?> From { get; } = new("--from") { Description = "When the day's work may begin, such as 08:00.", HelpName = "TIME" };

    public Option<string?> To { get; } = new("--to") { Description = "When all must be done, such as 20:00.", HelpName = "TIME" };

    public Option<string?> Camera { get; } = new("--camera") { Description = "Camera file; without it the sun in the picture and the exposure are not looked at.", HelpName = "FILE" };

    public Option<string?> Paper { get; } = new("--paper") { Description = "Paper file, for the exposure.", HelpName = "FILE" };

    public Option<string?> Light { get; } = CommonOptions.Light();

    public Option<string> Sky { get; } = new("--sky") { Description = "The sky counted on: clear, hazy or overcast.", HelpName = "SKY", DefaultValueFactory = _ => "clear" };

    public Option<string?> Longest { get; } = new("--longest") { Description = "Longest exposure that will do, such as 4min.", HelpName = "TIME" };

    public Option<string?> Facing { get; } = new("--facing") { Description = "Bearing that the facade faces, where the file does not say, such as 140deg.", HelpName = "ANGLE" };

    public Option<string?> LeastRaking { get; } = new("--raking") { Description = "Least angle between the sun's light and the facade, such as 15deg.", HelpName = "ANGLE" };

    public Option<bool> AnySun { get; } = new("--shade-too") { Description = "The sun need not be on the facade." };

    public Option<bool> OffHole { get; } = new("--no-flare") { Description = "The sun must not shine on the hole." };

    public Option<int> Sheets { get; } = new("--sheets") { Description = "Sheets that paper and bottle allow.", HelpName = "N", DefaultValueFactory = _ => 6 };

    public Option<double?> Cloud { get; } = new("--cloud") { Description = "Chance of cloud before the sun, per cent.", HelpName = "PERCENT" };

    public Option<string?> Forecast { get; } = new("--forecast") { Description = "Forecast of cloud as CSV: lines of an instant and per cent, such as 2024-06-20T09:00:00+02:00,40.", HelpName = "FILE" };

    public Option<string?> Lamplit { get; } = new("--lamplit")
    {
        Description = "What lamps light at the place, as a meter reads it at night (such as \"EV 4\") or by name (such as floodlit): when sky and lamps are in balance, within a stop.",
        HelpName = "READING",
    };

    public Option<string?> SetUp { get; } = new("--set-up") { Description = "Time to set up at a place; 10min where nothing is said.", HelpName = "TIME" };

    public Option<string?> Flash { get; } = new("--flash") { Description = "Time to load and flash a sheet; 2min where nothing is said.", HelpName = "TIME" };

    public Option<string?> Processing { get; } = new("--processing") { Description = "Time to process a sheet; 10min where nothing is said.", HelpName = "TIME" };

    public Option<string?> Ics { get; } = new("--ics") { Description = "Write the windows to this calendar file.", HelpName = "FILE" };

    public Option<string?> GeoJson { get; } = new("--geojson") { Description = "Write the places to this GeoJSON file.", HelpName = "FILE" };

    public Option<string?> Gpx { get; } = new("--gpx") { Description = "Write the places to this GPX file; it cannot hold bearings.", HelpName = "FILE" };

    public Option<string?> Pdf { get; } = new("--pdf") { Description = "Write the day sheet to this PDF, one A4 page.", HelpName = "FILE" };

    public Option<bool> Json { get; } = CommonOptions.Json();

    public void AddTo(Command verb)
    {
        foreach (var option in new Option[]
        {
            Places, Date, Zone, Days, From, To, Camera, Paper, Light, Sky, Longest, Facing, LeastRaking, AnySun, OffHole, Sheets, Cloud, Forecast, Lamplit, SetUp, Flash, Processing,
            Ics, GeoJson, Gpx, Pdf, Json,
        })
        {
            verb.Options.Add(option);
        }
    }
}
