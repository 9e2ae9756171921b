using System.Globalization;
using Foramen.Engine.Camera;
using Foramen.Field.Time;
using Foramen.Field.Units;

namespace Foramen.Field.Texts;

public static partial class Words
{
    /// <summary>Places, and when the light is there.</summary>
    public static class Spots
    {
        public const string Title = "Places";
        public const string None = "No place yet. A place says when the sun will be on what you want to photograph.";
        public const string Add = "Add a place";
        public const string Name = "Name of the place";
        public const string Latitude = "Latitude";
        public const string LatitudeHint = "North is positive, such as 52.1";
        public const string Longitude = "Longitude";
        public const string LongitudeHint = "East is positive, such as 4.6";
        public const string Faces = "The camera looks towards";
        public const string FacesHint = "Bearing by compass: 0 north, 90 east, 180 south, 270 west";
        public const string FacadeFaces = "The facade itself faces";
        public const string FacadeFacesHint = "Straight back at the camera if left empty";
        public const string Reflectance = "Light it sends back";
        public const string ReflectanceHint = "White paint 80, pale concrete 40, brick 20, dark leaves 6";
        public const string Note = "Note";
        public const string Here = "I stand here";
        public const string Looking = "Asking this device…";
        public const string NotTold = "This device does not say where it is; type the coordinates.";
        public const string Sight = "Take the bearing with this device";
        public const string Towards = "Take the bearing to a second spot";
        public const string TowardsWhy = "Walk to what you photograph and touch here, or type its coordinates above instead: the bearing from where you stand to there is worked out.";
        public const string TowardsHere = "The facade is here";
        public const string SetFirst = "First say where you stand.";
        public const string TooNear = "The second spot is less than 10 metres away; a device's place is too rough for that.";
        public const string EmptyName = "The place needs a name: a word or two.";

        public const string Light = "The light";
        public const string Incomplete = "This place has no coordinates or no bearing yet, so nothing can be said about its light.";
        public const string Complete = "Complete the place";
        public const string Change = "Change the place";
        public const string Day = "Day";
        public const string Sky = "Sky";
        public const string Clear = "Clear";
        public const string Hazy = "Hazy";
        public const string Overcast = "Overcast";
        public const string Camera = "Camera";
        public const string Paper = "Paper";
        public const string NoGear = "Add a camera and a paper on the Bench to see exposure times.";
        public const string Windows = "Worth being there";
        public const string NoWindow = "On this day the sun is not on the facade, or only while it stands in the picture, or an exposure would take longer than 10 minutes.";
        public const string YearTitle = "Through the year";
        public const string YearAxes = "Hours of the day against months; filled: worth being there under a clear sky.";
        public const string ShowYear = "Show the whole year";
        public const string ChartTitle = "Through the day";
        public const string ChartAxes = "Exposure, shorter is higher, against the hour. Lit: sun on the facade.";
        public const string ChartAxesNoGear = "Height of the sun against the hour. Lit: sun on the facade.";
        public const string Lamps = "Lamps at dusk and dawn";
        public const string LampsAbout = "For some minutes the sky is as bright as what lamps light, and one exposure holds both.";
        public const string LampsScene = "What the lamps light";
        public const string NoBalance = "On this day sky and such lamps are never within a stop of each other.";
        public const string BeyondPlanning = "That is longer than can be planned. A wider hole or a faster paper would shorten it; or let what the lamps light go dark and keep the lamps themselves.";
        public const string LampsLimits = "The sky is taken as even: after sunset the west is a stop or two brighter and the east darker, and a town’s glow keeps it from getting darker than that. How papers fail at such times nobody has published.";
        public const string Now = "The sun now";
        public const string First = "Without a meter, now";
        public const string FirstWhy = "Worked out from place, time and sky alone, for a plain scattering surface in the open; a reading by hand is better.";
        public const string Limits = "Clear-sky light by a handbook model. Hills, houses and trees hide the sun only where you added them to the place, and never the sky; clouds are as you chose.";
        public const string SunCaution = "Never look at the sun through the hole, a tube or any sighting aid.";
        public const string Print = "Print the day sheet";
        public const string SunUp = "Sunrise";
        public const string SunNoon = "Highest";
        public const string SunDown = "Sunset";
        public const string AlwaysUp = "The sun stays up all day.";
        public const string AlwaysDown = "The sun stays down all day.";

        public static string LampsName(Foramen.Engine.Light.NightScene scene) => $"{char.ToUpperInvariant(scene.Name[0])}{scene.Name[1..]}";

        public static string LampsHint(Foramen.Engine.Light.NightScene scene)
        {
            var (low, high) = (scene.Lowest.AtIso100, scene.Highest.AtIso100);
            return $"Usually EV {(low == high ? $"{low:0}" : $"{low:0} to {high:0}")}, remembered from a published exposure guide: worth a stop or two either way. A meter says more.";
        }

        public static string LampsExposure(Foramen.Engine.Exposure.NightExposure night)
            => $"A mid-tone of it takes about {night.Time.ToRoughText()}; {night.Shorter.ToRoughText()} to {night.Longer.ToRoughText()} by the doubt of failure alone.";

        public static string Standing(SunStandingKind kind) => kind switch
        {
            SunStandingKind.Down => "Below the horizon",
            SunStandingKind.InPicture => "In the picture",
            SunStandingKind.Grazing => "Grazing the facade: every unevenness shows",
            SunStandingKind.OnFacade => "On the facade",
            _ => "Not on the facade",
        };

        public static string Behind(string name) => $"Behind {name}";

        public static string Flare => "It also shines on the hole: shade the hole with a hand or a card from outside the picture.";

        public static string Sun(double azimuth, double elevation)
            => string.Create(CultureInfo.CurrentCulture, $"bearing {azimuth:0}°, {elevation:0}° high");

        public static string FacingLine(double bearing, double? facade) => facade is { } faces
            ? string.Create(CultureInfo.CurrentCulture, $"looking towards {bearing:0}°, facade faces {faces:0}°")
            : string.Create(CultureInfo.CurrentCulture, $"looking towards {bearing:0}°");

        public static string Window(string from, string to) => $"{from} – {to}";

        public static string WindowDetail(string best, double? seconds, double elevation) => seconds is { } time
            ? $"shortest exposure {TimeText.Spoken(time)} at {best}, sun {NumberText.Show(elevation, 0)}° high"
            : $"best at {best}, sun {NumberText.Show(elevation, 0)}° high";

        public static string FirstValue(double seconds) => TimeText.Spoken(seconds);

        public static string Stops(double stops) => string.Create(CultureInfo.CurrentCulture, $"{stops:0.0} stops");

        public static string YearInWords(int days) => days switch
        {
            0 => "On no day of the year is this place worth being at.",
            _ => string.Create(CultureInfo.CurrentCulture, $"Worth being there on {days} days of the year."),
        };

        public static string DayInWords(int windows, string? first) => windows == 0 || first is null
            ? "The sun is never on the facade in a way worth being there."
            : string.Create(CultureInfo.CurrentCulture, $"{windows} {(windows == 1 ? "span" : "spans")} worth being there, the first from {first}.");
    }
}
