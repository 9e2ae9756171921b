using System.CommandLine;
using Foramen.Cli.Options;
using Foramen.Cli.Time;
using Foramen.Engine.Bath;
using Foramen.Engine.Camera;
using Foramen.Engine.Exposure;
using Foramen.Engine.Light;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using Foramen.Exchange.Forecast;
using Foramen.Exchange.Places;

namespace Foramen.Cli.Outings;

/// <summary>The outing that a command line asks for: places, windows, the day's plan.</summary>
internal sealed class OutingDay
{
    private const long LargestForecastBytes = 1 << 20;
    private static readonly Stops OneStop = Stops.FromValue(1);

    public required LocalDay Day { get; init; }

    public required DateTimeOffset From { get; init; }

    public required DateTimeOffset To { get; init; }

    public required WindowWish Wish { get; init; }

    public required IReadOnlyList<PlaceWindows> Places { get; init; }

    public required OutingPlan? Plan { get; init; }

    public required PinholeCamera? Camera { get; init; }

    public required PhotographicPaper? Paper { get; init; }

    /// <summary>What lamps light; null where nothing was said of any.</summary>
    public required Luminance? Lamplit { get; init; }

    /// <summary>How long a mid-tone of that takes; null without camera and paper.</summary>
    public required NightExposure? LamplitExposure { get; init; }

    public required IReadOnlyList<string> Packing { get; init; }

    public required IReadOnlyList<string> Cautions { get; init; }

    public static OutingDay Read(ParseResult parsed, OutingOptions options)
    {
        var day = LocalDay.Parse(parsed.GetRequiredValue(options.Date), parsed.GetRequiredValue(options.Zone));
        var days = (int)Guard.Within(parsed.GetValue(options.Days), 1, 366, "the number of days");
        var from = parsed.GetValue(options.From) is { } begin ? day.At(begin, "The beginning") : day.Start;
        var to = parsed.GetValue(options.To) is { } end ? day.Later(days - 1).At(end, "The end") : day.Later(days - 1).End;
        if (to <= from)
        {
            throw new RefusalException("The day ends before it begins; say an earlier --from or a later --to.");
        }

        var camera = parsed.GetValue(options.Camera) is { } cameraFile ? CommonOptions.CameraOf(cameraFile) : null;
        var paper = parsed.GetValue(options.Paper) is { } paperFile ? CommonOptions.PaperOf(paperFile) : null;
        var response = paper is null ? null : PaperResponse.Of(paper, CommonOptions.LightOf(parsed.GetValue(options.Light)));
        var wish = new WindowWish
        {
            SunOnFacade = !parsed.GetValue(options.AnySun),
            SunOffHole = parsed.GetValue(options.OffHole),
            LeastRaking = AngleOf(parsed.GetValue(options.LeastRaking), "the least raking angle") ?? Angle.Zero,
            LongestExposure = TimeOf(parsed.GetValue(options.Longest), "the longest exposure"),
            Cover = SkyCover.Find(parsed.GetRequiredValue(options.Sky)),
        };
        Luminance? lamplit = parsed.GetValue(options.Lamplit) is { } lamps ? LamplitText.Luminance(lamps, LightMeter.Usual) : null;
        var facing = AngleOf(parsed.GetValue(options.Facing), "what the facade faces");
        var path = parsed.GetRequiredValue(options.Places);
        var places = PlacesOf(path).Select(record =>
        {
            record = record.FacadeBearingDeg is null && record.CameraBearingDeg is null && facing is { } said ? record with { FacadeBearingDeg = said.Degrees } : record;
            var place = InFile(path, () => record.ToPlace(camera));
            var exposure = camera is not null && response is not null ? new FacadeExposure(camera, response, InFile(path, record.ToRendering)) : null;
            return new PlaceWindows(
                record,
                place,
                exposure,
                WindowFinder.Find(place, wish, exposure, from, to),
                lamplit is { } lit ? DuskBalance.Find(place.Position, lit, OneStop, from, to) : []);
        }).ToList();

        var plan = days > 1 ? null : OutingPlan.For(
            [.. places.Select(place => OutingStop.At(place.Place, place.Windows, place.Exposure, wish.Cover, from, to, place.Record.Sheets ?? 2))],
            TimesOf(parsed, options),
            CloudOf(parsed, options),
            from,
            to,
            (int)Guard.Within(parsed.GetValue(options.Sheets), 1, 100, "the number of sheets"));
        return new OutingDay
        {
            Day = day,
            From = from,
            To = to,
            Wish = wish,
            Places = places,
            Plan = plan,
            Camera = camera,
            Paper = paper,
            Lamplit = lamplit,
            LamplitExposure = lamplit is { } said && camera is not null && paper is not null
                ? NightExposure.Of(camera, PaperResponse.Of(paper, LightColour.Lamp), said, Engine.Scene.Rendering.Mid)
                : null,
            Packing = PackingOf(plan, camera),
            Cautions = CautionsOf(places, wish, plan),
        };
    }

    private static SheetTimes TimesOf(ParseResult parsed, OutingOptions options)
    {
        var usual = new SheetTimes();
        return new SheetTimes
        {
            SetUp = TimeOf(parsed.GetValue(options.SetUp), "the time to set up") ?? usual.SetUp,
            Flash = TimeOf(parsed.GetValue(options.Flash), "the time to load and flash") ?? usual.Flash,
            Processing = TimeOf(parsed.GetValue(options.Processing), "the time to process") ?? usual.Processing,
        };
    }

    private static CloudChance CloudOf(ParseResult parsed, OutingOptions options)
    {
        var percent = parsed.GetValue(options.Cloud);
        if (parsed.GetValue(options.Forecast) is not { } path)
        {
            return CloudChance.Of(Probability.FromFraction(Guard.Within(percent ?? 0, 0, 100, "the chance of cloud", "%") / 100));
        }

        if (percent is not null)
        {
            throw new RefusalException("Both --cloud and --forecast were given; say one of them.");
        }

        if (!File.Exists(path))
        {
            throw new RefusalException($"There is no forecast {path}.");
        }

        if (new FileInfo(path).Length > LargestForecastBytes)
        {
            throw new RefusalException($"{path} is larger than a megabyte, so it is no forecast of a day.");
        }

        return InFile(path, () =>
        {
            using var text = File.OpenText(path);
            return CloudForecastCsv.Read(text);
        });
    }

    private static IReadOnlyList<PlaceRecord> PlacesOf(string path)
    {
        var file = new FileInfo(path);
        if (!file.Exists)
        {
            throw new RefusalException($"There is no file of places {path}.");
        }

        if (file.Length > PlaceFile.LargestBytes)
        {
            throw new RefusalException($"{path} is larger than {PlaceFile.LargestBytes >> 20} MB; take only the places of the outing.");
        }

        return InFile(path, () => PlaceFile.Read(File.ReadAllBytes(path)));
    }

    private static IReadOnlyList<string> PackingOf(OutingPlan? plan, PinholeCamera? camera)
    {
        var sheets = Math.Max(1, plan?.Sheets ?? 1);
        return camera is null
            ? [FormattableString.Invariant($"{sheets + KitPlan.UsualSpares(sheets)} sheets of paper in a lightproof box")]
            : PackingList.For(KitPlan.For(new KitWish { Sheets = sheets, Size = camera.Sheet }));
    }

    private static List<string> CautionsOf(List<PlaceWindows> places, WindowWish wish, OutingPlan? plan)
    {
        var cautions = new List<string> { "Never look at the sun through the hole, a tube or any sighting aid." };
        foreach (var place in places)
        {
            var best = place.Windows.Select(one => place.Place.Standing(one.Best)).ToList();
            if (!wish.SunOffHole && best.Exists(standing => standing.OnHole))
            {
                cautions.Add($"{place.Place.Name}: the sun shines on the hole; shade it with a hand or a card, outside the picture.");
            }

            if (best.Exists(standing => standing.IsGrazing))
            {
                cautions.Add($"{place.Place.Name}: the light grazes the facade; it shows every unevenness and changes fast.");
            }
        }

        if (plan is not null && plan.LeftOut.Count > 0)
        {
            cautions.Add("Not every place fits into this day.");
        }

        cautions.AddRange(Engine.Bath.Cautions.Everywhere);
        return cautions;
    }

    private static Angle? AngleOf(string? text, string what) => text is null ? null : QuantityText.Angle(text, what);

    private static Duration? TimeOf(string? text, string what) => text is null ? null : QuantityText.Duration(text, what);

    private static T InFile<T>(string path, Func<T> read)
    {
        try
        {
            return read();
        }
        catch (RefusalException refusal)
        {
            throw new RefusalException($"{path}: {refusal.Message}", refusal);
        }
    }
}
