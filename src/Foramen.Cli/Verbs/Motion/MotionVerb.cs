using System.CommandLine;
using System.Globalization;
using Foramen.Cli.Output;
using Foramen.Engine.Camera;
using Foramen.Engine.Exposure;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;

namespace Foramen.Cli.Verbs.Motion;

/// <summary><c>foramen motion</c>: what something that moves leaves on the sheet, and what hides or shows it.</summary>
internal static class MotionVerb
{
    public static Command Create(Page page) => new(
        "motion",
        """
        Says what walkers, wheels, lamps, and stars, moon and sun leave on the sheet: nothing, a ghost, or themselves.

        Try:
          foramen motion passing --width 1.7m --speed 15km/h --distance 20m --ratio 0.1 --meter "EV 12" --time 2min --camera demo/kit/box-a.json --paper demo/kit/positive.json
          foramen motion turning --turn 20s --radius 30cm --distance 6m --spokes 6 --fill 0.25 --ratio 3 --meter "EV 12" --camera demo/kit/box-a.json --paper demo/kit/positive.json
          foramen motion lamp --candela 20 --number 24 --speed 0.5m/s --distance 15m --meter "EV -2" --time 10min --light lamp --camera demo/kit/box-a.json --paper demo/kit/positive.json
          foramen motion trail --of moon --meter "EV -4" --time 30min --camera demo/kit/box-a.json --paper demo/kit/positive.json
        """)
    {
        Passing(page), Turning(page), Lamp(page), Trail(page),
    };

    private static Option<string> Distance() => new("--distance") { Description = "How far away it is, such as 20m.", HelpName = "LENGTH", Required = true };

    private static Option<string> Speed() => new("--speed") { Description = "How fast across the line of sight, such as 15km/h; 0m/s for what stands still.", HelpName = "SPEED", Required = true };

    private static Option<int> Number() => new("--number") { Description = "How many pass during the exposure; one where nothing is said.", HelpName = "COUNT", DefaultValueFactory = _ => 1 };

    private static Option<double> Ratio() => new("--ratio") { Description = "Its luminance over the background's; 0 for black, 2 for a stop brighter.", HelpName = "RATIO", Required = true };

    private static Command Passing(Page page)
    {
        var ground = new MotionGround();
        var width = new Option<string>("--width") { Description = "How wide one is along its way, such as 50cm.", HelpName = "LENGTH", Required = true };
        var (speed, distance, ratio, number) = (Speed(), Distance(), Ratio(), Number());
        var verb = ground.On(new Command("passing", "Walkers, cyclists, boats: what crosses the picture.") { width, speed, distance, ratio, number });
        verb.SetAction(parsed =>
        {
            var (camera, _, paper) = ground.Read(parsed);
            var passers = new Passers
            {
                Width = QuantityText.Length(parsed.GetRequiredValue(width), "the width of what passes"),
                Speed = QuantityText.MotionSpeed(parsed.GetRequiredValue(speed), "the speed"),
                Distance = QuantityText.Length(parsed.GetRequiredValue(distance), "the distance"),
                LuminanceRatio = parsed.GetValue(ratio),
                Number = parsed.GetValue(number),
            };
            var covering = passers.During(paper.Exposure.Time);
            var ways = paper.WaysFor(passers, camera);
            var path = passers.ImagePath(camera.FocalDistance, paper.Exposure.Time);
            return Show(page, parsed.GetValue(ground.Json), Report("passing", paper, covering.Share, path, paper.Trace(covering)) with
            {
                HiddenFromSeconds = ways?.TimeToHide?.Seconds,
                HidingHoleMm = ways?.HoleToHide?.Millimetres,
                CoverHoleSeconds = ways?.CoverHoleFor?.Seconds,
                StandStillSeconds = ways?.StandStillToShow?.Seconds,
                NumberToShow = ways?.NumberToShow,
            });
        });
        return verb;
    }

    private static Command Turning(Page page)
    {
        var ground = new MotionGround();
        var turn = new Option<string>("--turn") { Description = "Time of one turn, such as 20s.", HelpName = "TIME", Required = true };
        var radius = new Option<string>("--radius") { Description = "From the hub to the rim, such as 30cm.", HelpName = "LENGTH", Required = true };
        var spokes = new Option<int>("--spokes") { Description = "Even spokes; 1 for a crank.", HelpName = "COUNT", Required = true };
        var fill = new Option<double>("--fill") { Description = "Part of the circle that spokes fill, 0 to 1.", HelpName = "PART", Required = true };
        var (distance, ratio) = (Distance(), Ratio());
        var verb = ground.On(new Command("turning", "Wheels, cranks, sails: what turns before a background.") { turn, radius, spokes, fill, distance, ratio });
        verb.SetAction(parsed =>
        {
            var (camera, response, paper) = ground.Read(parsed);
            var wheel = new Turning
            {
                TurnTime = QuantityText.Duration(parsed.GetRequiredValue(turn), "the time of a turn"),
                Radius = QuantityText.Length(parsed.GetRequiredValue(radius), "the wheel’s radius"),
                Distance = QuantityText.Length(parsed.GetRequiredValue(distance), "the distance"),
                Spokes = parsed.GetValue(spokes),
                Fill = parsed.GetValue(fill),
                LuminanceRatio = parsed.GetValue(ratio),
            };
            var time = paper.Exposure.Time;
            var path = wheel.StreakAtRim(camera.FocalDistance, time);
            var still = wheel.LooksStill(camera.FocalDistance, time, Length.FromMetres(Spot(camera, response).Metres / 2));
            if (still)
            {
                page.Note("It turns by less than half a spot's width at the rim: on the sheet nothing moves, and spokes and gaps stay as they are.");
            }

            var covering = still ? Covering.Of(1, wheel.LuminanceRatio, time, softEdged: false) : wheel.During(time);
            return Show(page, parsed.GetValue(ground.Json), Report("turning", paper, covering.Share, path, paper.Trace(covering)) with
            {
                ArcDeg = wheel.ArcDegrees(time),
                FullDiscSeconds = wheel.TimeForFullDisc.Seconds,
            });
        });
        return verb;
    }

    private static Command Lamp(Page page)
    {
        var ground = new MotionGround();
        var candela = new Option<double>("--candela") { Description = "Light it sends towards the camera, cd.", HelpName = "CANDELA", Required = true };
        var (speed, distance, number) = (Speed(), Distance(), Number());
        var verb = ground.On(new Command("lamp", "Lamps that cross the picture at dusk and at night, or stand in it.") { candela, speed, distance, number });
        verb.SetAction(parsed =>
        {
            var (camera, response, paper) = ground.Read(parsed);
            var lamp = new PassingLamp
            {
                Intensity = LuminousIntensity.FromCandelas(parsed.GetValue(candela)),
                Distance = QuantityText.Length(parsed.GetRequiredValue(distance), "the distance"),
                Speed = QuantityText.MotionSpeed(parsed.GetRequiredValue(speed), "the speed"),
                Number = parsed.GetValue(number),
            };
            var time = paper.Exposure.Time;
            var spot = Spot(camera, response);
            var share = lamp.OnPoint(spot, camera.FocalDistance, time).Seconds / time.Seconds;
            var trace = paper.Trace(lamp, camera.Hole.Diameter, spot, camera.FocalDistance);
            return Show(page, parsed.GetValue(ground.Json), Report("lamp", paper, share, lamp.Streak(camera.FocalDistance, time), trace));
        });
        return verb;
    }

    private static Command Trail(Page page)
    {
        var ground = new MotionGround();
        var of = new Option<string>("--of") { Description = "moon (full), sun or star.", HelpName = "BODY", Required = true };
        var magnitude = new Option<double>("--magnitude") { Description = "A star's magnitude; 0 where nothing is said.", HelpName = "NUMBER" };
        var declination = new Option<string?>("--declination") { Description = "How far from the sky's equator, such as 20deg; on it where nothing is said.", HelpName = "ANGLE" };
        var verb = ground.On(new Command("trail", "Stars, the moon and the sun: what the turning sky draws.") { of, magnitude, declination });
        verb.SetAction(parsed =>
        {
            var (camera, response, paper) = ground.Read(parsed);
            var body = parsed.GetRequiredValue(of) switch
            {
                "moon" => SkyBody.FullMoon,
                "sun" => SkyBody.Sun,
                "star" => SkyBody.Star(parsed.GetValue(magnitude)),
                var other => throw new RefusalException($"What leaves the trail is \"{other}\"; it should be moon, sun or star."),
            };
            var north = parsed.GetValue(declination) is { } text ? QuantityText.Angle(text, "the declination") : Angle.Zero;
            var time = paper.Exposure.Time;
            var arc = SkyTrail.OfStar(north, time);
            var spot = Spot(camera, response);
            var share = body.OnPoint(spot, camera.FocalDistance, north, time).Seconds / time.Seconds;
            if (body == SkyBody.Sun)
            {
                page.Note("Never look at the sun through the hole, a tube or any sighting aid.");
            }

            page.Note("Light of stars, moon and sun is for clear air and the body high; lower down it is less, and a smaller moon gives far less.");
            return Show(
                page,
                parsed.GetValue(ground.Json),
                Report("trail", paper, share, Length.FromMetres(camera.FocalDistance.Metres * arc.Radians), paper.Trace(body, north, camera, spot)) with { ArcDeg = arc.Degrees });
        });
        return verb;
    }

    private static Length Spot(PinholeCamera camera, PaperResponse response)
        => PointSpread.Of(camera, PaperLight.Of(response.Light.ToSpectrum(), response.Paper.Sensitivity)).DiameterHolding(0.8);

    private static MotionReport Report(string kind, MotionOnPaper paper, double share, Length path, MotionTrace trace) => new()
    {
        Kind = kind,
        ExposureSeconds = paper.Exposure.Time.Seconds,
        CoveredShare = share,
        ImagePathMm = path.Millimetres,
        BackgroundDensity = trace.Bare.Value,
        TracedDensity = trace.Traced.Value,
        LeastSeenDensity = trace.LeastSeen,
        Verdict = trace.Verdict.ToString().ToLowerInvariant(),
    };

    private static int Show(Page page, bool json, MotionReport report) => page.Show(json, report, ReportJson.Default.MotionReport, () => Write(page, report));

    private static void Write(Page page, MotionReport report)
    {
        var culture = CultureInfo.CurrentCulture;
        var rows = new List<IReadOnlyList<string>>
        {
            new[] { "on the sheet", report.Verdict switch { "vanishes" => "vanishes", "ghost" => "a ghost", _ => "stays" } },
            new[] { "density", string.Create(culture, $"{report.TracedDensity:0.00} on a background of {report.BackgroundDensity:0.00}; seen from a difference of {report.LeastSeenDensity:0.00} (assumed)") },
            new[] { "exposure", string.Create(culture, $"{report.ExposureSeconds:0.#} s, a point covered for {report.CoveredShare * report.ExposureSeconds:0.00} s of it") },
            new[] { "image goes", string.Create(culture, $"{report.ImagePathMm:0.0} mm") },
        };
        void Add(string what, double? value, string unit)
        {
            if (value is { } known)
            {
                rows.Add([what, string.Create(culture, $"{known:0.##} {unit}")]);
            }
        }

        Add(report.Kind == "trail" ? "the sky turns" : "turns through", report.ArcDeg, "°");
        Add("disc full after", report.FullDiscSeconds, "s");
        Add("hidden from", report.HiddenFromSeconds, "s of exposure");
        Add("with a hole of", report.HidingHoleMm, "mm");
        Add("or cover the hole for", report.CoverHoleSeconds, "s while they pass");
        Add("seen if it stands for", report.StandStillSeconds, "s");
        Add("seen as a band from", report.NumberToShow, "passing");
        page.Table(["", ""], rows);
    }
}
