using System.Buffers.Binary;
using System.Globalization;
using Foramen.Engine.Learning;
using Foramen.Journal;
using Foramen.Journal.Bodies;
using Foramen.Journal.Entries;
using Foramen.Journal.Fold;
using Foramen.Journal.Kit;
using Foramen.Journal.Learning;

namespace Foramen.Bench;

/// <summary>
/// A made-up journal of a thousand sheets, seeded: outings of six sheets to five places under three skies, with two cameras and five boxes, each of which is off its
/// label by an amount that nobody knows, as are the user's meter and each sky; a sheet scatters by 0.3 stops, a reading by 0.2, one judgement in forty is plain
/// wrong, and all are rounded to half stops. Tones that would be burnt or blocked are judged so, as bounds. Every step of the app leaves its entry.
/// </summary>
internal sealed class LongHistory
{
    private const int SheetsOfAnOuting = 6;
    private static readonly DateTimeOffset End = new(2026, 5, 9, 18, 0, 0, TimeSpan.FromHours(2));
    private static readonly DeviceId Device = DeviceId.Parse("bench-phone");

    private static readonly (string Name, double Kelvin, double Offset, double Luminance)[] Skies =
        [("sun", 5500, 0.15, 2400), ("overcast", 6500, -0.3, 700), ("shade", 8000, 0.4, 300)];

    private static readonly (string Name, WantedRendering Rendering, double Stops, double Offset)[] Tones =
        [("doorway", WantedRendering.OpenShadow, -1.2, 0.15), ("wall", WantedRendering.Mid, 0, 0), ("path", WantedRendering.TexturedHighlight, 1.1, -0.2), ("sky", WantedRendering.MayBurn, 3, 0)];

    private static readonly double[] BoxOffsets = [0.5, -0.35, 0.1, -0.6, 0.25];
    private static readonly double[] CameraOffsets = [0.1, -0.15];
    private static readonly string[] Places = ["Elevator", "Lock house", "Crane", "Basin wall", "Gasworks"];
    private const double MeterOffset = -0.2;

    private readonly Random chance;
    private readonly List<Entry> entries = [];
    private readonly List<SheetPlan> sheets = [];
    private readonly Ulid[] boxes = new Ulid[BoxOffsets.Length];
    private readonly Ulid[] cameras = new Ulid[CameraOffsets.Length];
    private readonly Ulid[] places = new Ulid[Places.Length];
    private int ids;
    private DateTimeOffset at;

    private LongHistory(int seed) => chance = new Random(seed);

    /// <summary>The entries, in order, of one device. The last is a judgement.</summary>
    public static IReadOnlyList<Entry> Of(int sheets, int seed = 1)
    {
        // What label and description foretell is asked of the ledger itself: first at a guessed time, then at one that suits the label, then judged by the hidden truth.
        var history = new LongHistory(seed);
        history.Draw(sheets);
        history.Write();
        foreach (var round in (bool[])[false, true])
        {
            var lessons = LedgerLessons.Of(Ledger.Of(EntrySet.Of(history.entries)));
            if (lessons.LeftOut.Count > 0)
            {
                throw new InvalidOperationException($"A sheet of the made-up history teaches nothing: {lessons.LeftOut[0]}");
            }

            var foretold = lessons.Evidence.ToDictionary(one => lessons.SheetOf[one.Id]);
            foreach (var sheet in history.sheets)
            {
                sheet.Take(foretold[sheet.Id], round);
            }

            history.Write();
        }

        return history.entries;
    }

    private static double Rounded(double stops) => Math.Clamp(Math.Round(2 * stops) / 2, -4, 4);

    private double Normal() => Math.Sqrt(-2 * Math.Log(1 - chance.NextDouble())) * Math.Cos(2 * Math.PI * chance.NextDouble());

    private Ulid Id()
    {
        var bytes = new byte[Ulid.ChanceBytes];
        BinaryPrimitives.WriteInt32BigEndian(bytes.AsSpan(6), ++ids);
        return Ulid.From(End.AddDays(-1000), bytes);
    }

    private void Draw(int count)
    {
        for (var i = 0; i < boxes.Length; i++)
        {
            boxes[i] = Id();
        }

        for (var i = 0; i < cameras.Length; i++)
        {
            cameras[i] = Id();
        }

        for (var i = 0; i < places.Length; i++)
        {
            places[i] = Id();
        }

        for (var i = 0; i < count; i++)
        {
            var sky = chance.Next(Skies.Length);
            var box = Math.Min(boxes.Length - 1, ((i * boxes.Length) + chance.Next(60)) / count);
            var camera = chance.Next(3) == 0 ? 1 : 0;
            var inBottle = i % SheetsOfAnOuting;
            var truth = BoxOffsets[box] + CameraOffsets[camera] + MeterOffset + Skies[sky].Offset - (0.06 * inBottle) + (0.3 * Normal());
            sheets.Add(new SheetPlan
            {
                Id = Id(),
                Sky = sky,
                Box = box,
                Camera = camera,
                Light = Skies[sky].Luminance * Math.Pow(2, 0.8 * Normal()),
                Odds = Math.Clamp(0.55 + (0.15 * Normal()), 0.05, 0.95),
                Margin = Math.Round(Math.Clamp(5 + (3 * Normal()), 0.5, 15), 1),
                Aim = 2.5 * Normal(),
                MinutesToNext = 12 + chance.Next(20),
                Tones = [.. Tones.Select(tone => new TonePlan { Id = Id(), Off = truth + tone.Offset + (0.36 * Normal()) + (chance.Next(40) == 0 ? 2.5 : 0) })],
            });
        }
    }

    private void Write()
    {
        entries.Clear();
        (ids, at) = (1_000_000, End.AddDays(-2.0 * sheets.Count / SheetsOfAnOuting));
        for (var i = 0; i < cameras.Length; i++)
        {
            Say(new CameraDefined
            {
                Camera = cameras[i],
                Definition = i == 0
                    ? new CameraDefinition { Name = "Box A", HoleDiameterMillimetres = 0.35, HoleDiameterRelativeSd = 0.03, FocalDistanceMillimetres = 63, SheetWidthMillimetres = 127, SheetHeightMillimetres = 102, PaperShape = "flat" }
                    : new CameraDefinition { Name = "Tin", HoleDiameterMillimetres = 0.3, HoleDiameterRelativeSd = 0.05, FocalDistanceMillimetres = 45, SheetWidthMillimetres = 102, SheetHeightMillimetres = 76, PaperShape = "curved", WallRadiusMillimetres = 45 },
            });
        }

        for (var i = 0; i < places.Length; i++)
        {
            Say(new PlaceDefined { Place = places[i], Name = Places[i], LatitudeDegrees = 52.5 + (0.01 * i), LongitudeDegrees = 5.25, FacesDegrees = 60 * i });
        }

        var box = -1;
        var outing = default(Ulid);
        for (var i = 0; i < sheets.Count; i++)
        {
            var sheet = sheets[i];
            for (; box < sheet.Box; box++)
            {
                Say(new PaperDefined { Paper = boxes[box + 1], Definition = Box(box + 1) });
            }

            if (i % SheetsOfAnOuting == 0)
            {
                at = End.AddDays(-2.0 * (sheets.Count - i) / SheetsOfAnOuting).AddHours(-8);
                outing = Id();
                Say(new OutingStarted { Outing = outing, Name = string.Create(CultureInfo.InvariantCulture, $"Outing {1 + (i / SheetsOfAnOuting)}"), Place = places[i / SheetsOfAnOuting % places.Length] });
            }

            Write(sheet, outing);
            at = at.AddMinutes(sheet.MinutesToNext);
        }
    }

    private void Write(SheetPlan sheet, Ulid outing)
    {
        Say(new SheetStarted { Sheet = sheet.Id, Outing = outing, Camera = cameras[sheet.Camera], Paper = boxes[sheet.Box] });
        Say(new FrameChosen { Sheet = sheet.Id, Orientation = SheetOrientation.Level, AimPanDegrees = 1.5, AimTiltDegrees = 2, MarginLeftPercent = sheet.Margin, MarginRightPercent = sheet.Margin + 2, MarginTopPercent = sheet.Margin + 4, MarginBottomPercent = sheet.Margin + 1 });
        for (var i = 0; i < Tones.Length; i++)
        {
            Say(new ToneRead
            {
                Sheet = sheet.Id,
                Tone = sheet.Tones[i].Id,
                Name = Tones[i].Name,
                LuminanceCandelasPerSquareMetre = Math.Round(sheet.Light * Math.Pow(2, Tones[i].Stops), 3),
                Rendering = Tones[i].Rendering,
                LightKelvin = Skies[sheet.Sky].Kelvin,
                Source = ReadingSource.Luminance,
                SdStops = 0.2,
            });
        }

        Say(new PlanMade
        {
            Sheet = sheet.Id,
            ExposureSeconds = sheet.Seconds,
            Odds = Math.Round(sheet.Odds, 3),
            LightKelvin = Skies[sheet.Sky].Kelvin,
            Tones = [.. sheet.Tones.Select(tone => new PlannedTone { Tone = tone.Id, Density = 1, DensitySd = 0.2, FromAimStops = 0.1, ChanceAsWanted = 0.6 })],
        });
        Say(new HoleOpened { Sheet = sheet.Id, LightStops = 0, Light = LightWord.Sun });
        at = at.AddSeconds(sheet.Seconds);
        Say(new HoleClosed { Sheet = sheet.Id });
        Say(new BathStarted { Sheet = sheet.Id, TemperatureCelsius = 20 });
        Say(new BathStep { Sheet = sheet.Id, Step = BathKind.Developer, PlannedSeconds = 90 });
        at = at.AddSeconds(90);
        Say(new BathStep { Sheet = sheet.Id, Step = BathKind.Stop, PlannedSeconds = 30 });
        at = at.AddSeconds(30);
        Say(new BathStep { Sheet = sheet.Id, Step = BathKind.Fix, PlannedSeconds = 120 });
        at = at.AddSeconds(120);
        Say(new BathFinished { Sheet = sheet.Id });
        var cut = Math.Abs(sheet.Aim) > sheet.Margin;
        Say(new PrintJudged
        {
            Sheet = sheet.Id,
            Keeper = !cut && sheet.Tones.Take(3).All(tone => Math.Abs(tone.Seen) < 0.8),
            Causes = cut ? [MishapCause.Frame] : null,
            Tones = [.. sheet.Tones.Take(3).Select(tone => new JudgedTone { Tone = tone.Id, LighterByStops = tone.Seen, Fate = tone.Seen >= 2 ? ToneFate.Burnt : tone.Seen <= -2 ? ToneFate.Blocked : null })],
        });
    }

    private static PaperDefinition Box(int number) => new()
    {
        Name = string.Create(CultureInfo.InvariantCulture, $"direct-positive, box {number + 1}"),
        Kind = "directPositive",
        DMin = 0.08,
        DMax = 1.98,
        IsoRange = 90,
        Speed = new SpeedDefinition { ExposureIndex = 3, AtSeconds = 120, LightKelvin = 5500, SdStops = 0.5 },
        Sensitivity = "blue",
        Failure = new FailureDefinition { Law = "schwarzschild", Exponent = 0.9, ExponentSd = 0.05 },
    };

    private void Say(EntryBody body)
    {
        at = at.AddSeconds(8);
        entries.Add(Entry.Create(Id(), Device, entries.Count + 1, at, body));
    }

    private sealed class TonePlan
    {
        public required Ulid Id { get; init; }

        public required double Off { get; init; }

        public double Seen { get; set; }
    }

    private sealed class SheetPlan
    {
        public required Ulid Id { get; init; }

        public required int Sky { get; init; }

        public required int Box { get; init; }

        public required int Camera { get; init; }

        public required double Light { get; init; }

        public required double Odds { get; init; }

        public required double Margin { get; init; }

        public required double Aim { get; init; }

        public required int MinutesToNext { get; init; }

        public required TonePlan[] Tones { get; init; }

        public double Seconds { get; private set; } = 60;

        public void Take(Evidence foretold, bool judge)
        {
            // A direct positive gets lighter with time; the label's failure is close enough to nothing for one step.
            if (!judge)
            {
                Seconds = Math.Round(Math.Clamp(Seconds * Math.Pow(2, -foretold.Tones[1].Foretold.Value / 0.9), 2, 3600), 1);
                return;
            }

            for (var i = 0; i < foretold.Tones.Count; i++)
            {
                Tones[i].Seen = Rounded(foretold.Tones[i].Foretold.Value + Tones[i].Off);
            }
        }
    }
}
