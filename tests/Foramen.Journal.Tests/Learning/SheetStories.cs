using Foramen.Journal.Bodies;
using Foramen.Journal.Entries;
using Foramen.Journal.Fold;
using Foramen.Journal.Kit;
using static Foramen.Journal.Tests.TestKit.Make;

namespace Foramen.Journal.Tests.Learning;

/// <summary>Sheets whose lessons can be reckoned by hand: one camera, a paper without failure (Schwarzschild's p = 1) or with p = 0.5, one tone of 1000 cd/m².</summary>
internal static class SheetStories
{
    public static readonly Ulid Camera = Id(40_001);
    public static readonly Ulid Paper = Id(40_002);
    public static readonly Ulid Failing = Id(40_003);
    public static readonly Ulid FirstOuting = Id(40_004);

    public static EntryBody[] Gear =>
    [
        new CameraDefined
        {
            Camera = Camera,
            Definition = new CameraDefinition { Name = "box", HoleDiameterMillimetres = 0.35, HoleThicknessMillimetres = 0, FocalDistanceMillimetres = 63, SheetWidthMillimetres = 127, SheetHeightMillimetres = 102 },
        },
        PaperOf(Paper, 1),
        PaperOf(Failing, 0.5),
    ];

    public static PaperDefined PaperOf(Ulid paper, double exponent) => new()
    {
        Paper = paper,
        Definition = new PaperDefinition
        {
            Name = "box of May", Kind = "directPositive", Speed = new SpeedDefinition { ExposureIndex = 3, AtSeconds = 60, SdStops = 0.25 },
            Failure = new FailureDefinition { Law = "schwarzschild", Exponent = exponent, ExponentSd = 0.04 },
        },
    };

    public static Ulid SheetId(int number) => Id(41_000 + number);

    public static Ulid ToneId(int number) => Id(42_000 + number);

    public static SheetStarted Started(int number, Ulid? outing = null, Ulid? paper = null)
        => new() { Sheet = SheetId(number), Outing = outing, Camera = Camera, Paper = paper ?? Paper, Name = $"sheet {number}" };

    public static ToneRead Tone(int number, WantedRendering rendering = WantedRendering.Mid, double luminance = 1000, int tone = 0)
        => new() { Sheet = SheetId(number), Tone = ToneId((10 * number) + tone), Name = $"tone {tone}", LuminanceCandelasPerSquareMetre = luminance, Rendering = rendering };

    public static PlanMade Plan(int number, double seconds = 10) => new() { Sheet = SheetId(number), ExposureSeconds = seconds };

    public static PrintJudged Judged(int number, double lighter = 0, bool keeper = true, params MishapCause[] causes)
        => new() { Sheet = SheetId(number), Keeper = keeper, Tones = [new JudgedTone { LighterByStops = lighter }], Causes = causes.Length == 0 ? null : causes };

    /// <summary>What a phone wrote, an entry a minute from noon on.</summary>
    public static Ledger Folded(params IEnumerable<EntryBody> bodies) => Ledger.Of(EntrySet.Of(Phoned([.. Gear.Concat(bodies).Select((body, i) => (60.0 * i, body))])));

    /// <summary>A sheet of a paper with a tone, and what was done at its hole at so many seconds of an hour after noon.</summary>
    public static Sheet AtTheHole(double? planned, params (double Seconds, EntryBody Body)[] events)
    {
        IEnumerable<(double, EntryBody)> all = Gear.Append(Started(1)).Append(Tone(1)).Concat(planned is { } seconds ? [Plan(1, seconds)] : []).Select((body, i) => ((double)i, body));
        return Ledger.Of(EntrySet.Of(Phoned([.. all, .. events.Select(one => (3600 + one.Seconds, one.Body))]))).Sheets.Find(SheetId(1))!;
    }
}
