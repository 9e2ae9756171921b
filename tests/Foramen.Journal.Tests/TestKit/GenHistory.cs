using System.Text.Json;
using CsCheck;
using Foramen.Journal.Bodies;
using Foramen.Journal.Entries;
using Foramen.Journal.Kit;
using static Foramen.Journal.Tests.TestKit.Make;

namespace Foramen.Journal.Tests.TestKit;

/// <summary>
/// Histories of up to three devices whose clocks stand still, jump and disagree, with few sheets and tones so that entries meet, with
/// voidings and amendments of anything (also of what comes later, or never), kinds of the future, copied installations and contradicting copies.
/// </summary>
internal static class GenHistory
{
    public static readonly DeviceId[] Devices = [Phone, Desk, DeviceId.Parse("tablet")];

    private static readonly double[] ClockSteps = [0, 0, 0.001, 1, 30, 600, -5, -3600, 86_400];
    private static readonly double[] ClockOffsets = [0, 0, -3600, 7200];

    private static readonly Gen<Move> GenMove = Gen.Select(
        Gen.Int[0, 2], Gen.Int[0, ClockSteps.Length - 1], Gen.Int[0, 46], Gen.Int[0, 1_000_000], Gen.Int[0, 19],
        (device, clock, what, pick, oddity) => new Move(device, clock, what, pick, oddity));

    public static readonly Gen<Entry[]> Histories = Gen.Select(GenMove.Array[0, 40], Gen.Int[0, ClockOffsets.Length - 1].Array[3]).Select(Play);

    public static Entry[] Shuffled(IEnumerable<Entry> entries, int seed)
    {
        var copy = entries.ToArray();
        new Random(seed).Shuffle(copy);
        return copy;
    }

    private static Entry[] Play(Move[] moves, int[] offsets)
    {
        var clocks = offsets.Select(offset => Noon.AddSeconds(ClockOffsets[offset])).ToArray();
        var sequences = new int[Devices.Length];
        var entries = new List<Entry>();
        for (var i = 0; i < moves.Length; i++)
        {
            var move = moves[i];
            clocks[move.Device] = clocks[move.Device].AddSeconds(ClockSteps[move.Clock]);
            // Oddity 0: a copied installation uses a number again. Oddity 1: a copy of an entry with another content. Oddity 2: a copy without its body's places.
            sequences[move.Device] += move.Oddity == 0 && sequences[move.Device] > 0 ? 0 : 1;
            var id = Id(move.Oddity == 1 && i > 0 ? 1 + (move.Pick % i) : i + 1);
            var full = move.Oddity == 2 && i > 0 ? entries[move.Pick % i].Hash : null;
            if (move.Oddity == 2 && i > 0)
            {
                id = entries[move.Pick % i].Id;
            }

            var (kind, version, body) = Say(move, moves.Length);
            entries.Add(Entry.CreateRaw(id, Devices[move.Device], sequences[move.Device], clocks[move.Device], kind, version, body, full));
        }

        return [.. entries];
    }

    private static (string Kind, int Version, string Body) Say(Move move, int count)
    {
        var sheet = Id(10_000 + (move.Pick % 3));
        var tone = Id(20_000 + (move.Pick / 3 % 2));
        var bottle = Id(30_000 + (move.Pick / 7 % 2));
        var kit = Id(40_000);
        var target = Id(1 + (move.Pick % (count + 2)));
        var stops = -(move.Pick % 4);
        switch (move.What)
        {
            case 31:
                return ("moon.watched", 1, $$"""{"sheet":"{{sheet}}","phase":{{move.Pick}}}""");
            case 32:
                return (EntryKind.HoleOpened, 2, """{"shutter":"new"}""");
            case 33:
                return (EntryKind.LightChanged, 1, """{"light":"purple"}""");
        }

        EntryBody body = move.What switch
        {
            0 => new SheetStarted { Sheet = sheet, Camera = OneOfEach.Camera, Paper = OneOfEach.Paper, Outing = OneOfEach.Outing, Name = $"sheet {move.Pick}" },
            1 => (OneOfEach.Bodies[0] as CameraDefined)!,
            2 => (OneOfEach.Bodies[1] as PaperDefined)!,
            3 => new OutingStarted { Outing = OneOfEach.Outing, Name = $"day {move.Pick % 5}" },
            4 => new PlaceDefined { Place = OneOfEach.Place, Name = $"place {move.Pick % 5}" },
            5 => new ToneRead { Sheet = sheet, Tone = tone, Name = "tone", LuminanceCandelasPerSquareMetre = 1 + move.Pick, Rendering = WantedRendering.Mid },
            6 => new ToneRemoved { Sheet = sheet, Tone = tone },
            7 => new PlanMade { Sheet = sheet, ExposureSeconds = 1 + (move.Pick % 300), FlashSeconds = move.Pick % 3 },
            8 => new FlashStarted { Sheet = sheet, PlannedSeconds = 4 },
            9 => new FlashFinished { Sheet = sheet },
            10 => new HoleOpened { Sheet = sheet },
            11 => new LightChanged { Sheet = sheet, LightStops = stops, Light = (LightWord)(move.Pick % 5), SecondsAgo = move.Pick % 7 == 0 ? 20 : null },
            12 => new HoleClosed { Sheet = sheet },
            13 => new BathStarted { Sheet = sheet },
            14 => new BathStep { Sheet = sheet, Step = (BathKind)(move.Pick % 5), PlannedSeconds = 60 },
            15 => new BathFinished { Sheet = sheet },
            16 => new PrintJudged { Sheet = sheet, Keeper = move.Pick % 2 == 0 },
            17 => new FrameChosen { Sheet = sheet, Orientation = SheetOrientation.Upright },
            20 => new BottleMixed { Bottle = bottle, Contents = (BottleContents)(move.Pick % 2), Name = "bottle", VolumeMillilitres = 200 + (move.Pick % 300) },
            21 => new BottleToppedUp { Bottle = bottle, PouredMillilitres = move.Pick % 40, FreshMillilitres = move.Pick % 50 },
            22 => new BottleWarmthRead { Bottle = bottle, TemperatureCelsius = 15 + (move.Pick % 10), SecondsAgo = move.Pick % 7 == 0 ? 20 : null },
            23 => new BottleOpened { Bottle = bottle },
            24 => new BottleClosed { Bottle = bottle },
            25 => new BottleDiscarded { Bottle = bottle },
            26 or 27 => new DevelopedIn { Sheet = sheet, Bottle = bottle, TemperatureCelsius = 15 + (move.Pick % 10), AppearedAfterSeconds = move.Pick % 3 == 0 ? 10 : null },
            28 => new FixedIn { Sheet = sheet, Bottle = bottle },
            29 => new KitPlanned { Kit = kit, Name = "kit", Lines = ["paper", $"{move.Pick % 5} gloves"] },
            30 => new KitPacked { Kit = kit, Line = move.Pick % 3, Packed = move.Pick % 2 == 0 },
            34 => new HoleMeasured { Camera = OneOfEach.Camera, DiameterMillimetres = 0.3 + (move.Pick % 9 / 100.0), DiameterSdMillimetres = 0.002 },
            35 => new ChamberMeasured { Camera = OneOfEach.Camera, FocalDistanceMillimetres = 60 + (move.Pick % 9), FocalDistanceSdMillimetres = 0.3 },
            36 => new MaskDefined
            {
                Mask = OneOfEach.Mask,
                Definition = new MaskDefinition { Name = "mask", Shape = "text", Text = $"NO {move.Pick % 9}", WidthMillimetres = 20, DistanceMillimetres = 3 },
            },
            37 => new StripMade { Strip = Id(50_000), Paper = OneOfEach.Paper, Purpose = StripPurpose.Flash, OnStripLux = 1, LightKelvin = 5500, Seconds = [1, 2 + (move.Pick % 5)] },
            38 => new StripRead { Strip = Id(50_000), By = StripReader.Scan, FirstTone = 1 + (move.Pick % 3) },
            39 => new MotionMarked
            {
                Sheet = sheet,
                Motion = OneOfEach.Motion,
                Definition = new MotionDefinition { Name = "wheel", How = "turns", Left = 0.2, Top = 0.3, Width = 0.1, Height = 0.1, TurnSeconds = 1 + (move.Pick % 30) },
            },
            40 => new MotionStarted { Sheet = sheet, Motion = OneOfEach.Motion, SecondsAgo = move.Pick % 7 == 0 ? 20 : null },
            41 => new MotionStopped { Sheet = sheet, Motion = OneOfEach.Motion },
            42 => new MotionRemoved { Sheet = sheet, Motion = OneOfEach.Motion },
            18 or 19 => new EntryVoided { Entry = target },
            _ => new EntryAmended { Entry = target, Body = Amended(move, sheet) },
        };
        return (body.Kind, 1, BodyJson.Write(body));
    }

    private static JsonElement Amended(Move move, Ulid sheet)
        => JsonDocument.Parse(move.Pick % 4 == 0 ? """{"nothing":"useful"}""" : $$"""{"sheet":"{{sheet}}","name":"amended {{move.Pick}}","lightStops":-1,"light":"cloud"}""")
            .RootElement;

    private sealed record Move(int Device, int Clock, int What, int Pick, int Oddity);
}
