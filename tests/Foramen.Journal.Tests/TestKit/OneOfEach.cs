using System.Text.Json;
using Foramen.Journal.Bodies;
using Foramen.Journal.Kit;
using static Foramen.Journal.Tests.TestKit.Make;

namespace Foramen.Journal.Tests.TestKit;

/// <summary>A full example of every kind of body. All invented.</summary>
internal static class OneOfEach
{
    public static readonly Ulid Sheet = Id(901);
    public static readonly Ulid Tone = Id(902);
    public static readonly Ulid Camera = Id(903);
    public static readonly Ulid Paper = Id(904);
    public static readonly Ulid Place = Id(905);
    public static readonly Ulid Outing = Id(906);
    public static readonly Ulid Bottle = Id(907);
    public static readonly Ulid Fixer = Id(908);
    public static readonly Ulid Kit = Id(909);
    public static readonly Ulid Mask = Id(910);
    public static readonly Ulid Motion = Id(911);
    public static readonly Ulid Strip = Id(911);
    public static readonly string ContentHash = new('a', 64);

    public static IReadOnlyList<EntryBody> Bodies =>
    [
        new CameraDefined
        {
            Camera = Camera,
            Definition = new CameraDefinition
            {
                Name = "Box A", HoleDiameterMillimetres = 0.35, HoleDiameterRelativeSd = 0.05, HoleThicknessMillimetres = 0.05,
                FocalDistanceRelativeSd = 0.005, FocalDistanceMillimetres = 63, SheetWidthMillimetres = 127, SheetHeightMillimetres = 102, PaperShape = "flat",
                HoleOffsetXMillimetres = 0.5, HoleOffsetYMillimetres = -1, WallRadiusMillimetres = 60, Note = "leans a little",
            },
        },
        new PaperDefined
        {
            Paper = Paper,
            Strips = [Strip],
            Definition = new PaperDefinition
            {
                Name = "box of May", Kind = "directPositive", DMin = 0.07, DMax = 1.9, IsoRange = 90, Asymmetry = 1.2, Sensitivity = "blue",
                Speed = new SpeedDefinition { ExposureIndex = 3, AtSeconds = 60, LightKelvin = 5500, SdStops = 0.35 },
                Failure = new FailureDefinition { Law = "schwarzschild", Exponent = 0.9, ExponentSd = 0.05 }, Note = "new",
            },
        },
        new PlaceDefined
        {
            Place = Place, Name = "canal basin", LatitudeDegrees = 52.5, LongitudeDegrees = 5.25, FacesDegrees = 210, FacadeFacesDegrees = 25, ReflectancePercent = 40,
            Shades = [new PlaceShade { Name = "row of poplars", LeftDegrees = 350, RightDegrees = 20, TopDegrees = 15, Falls = ShadeFalls.OnBoth }],
            Note = "Café at the corner; mind the water's edge.",
        },
        new OutingStarted { Outing = Outing, Name = "first Sunday of May", Place = Place, Note = "windy" },
        new SheetStarted { Sheet = Sheet, Outing = Outing, Camera = Camera, Paper = Paper, Place = Place, Name = "the elevator", Note = "one" },
        new PhotographAdded
        {
            Sheet = Sheet, ContentHash = ContentHash, WidthPixels = 4000, HeightPixels = 3000, MediaType = "image/jpeg", ByteCount = 3_000_000,
            Facts = new PhotographedHow
            {
                ExposureSeconds = 0.002, FNumber = 1.8, IsoSpeed = 50, BrightnessValue = 8.2, FocalLength35Millimetres = 26, ColourSpace = "sRGB",
                Orientation = 6, TakenLocal = "2026-05-03T12:00:05", LatitudeDegrees = 52.5, LongitudeDegrees = 5.25,
            },
        },
        new FrameChosen
        {
            Sheet = Sheet, Orientation = SheetOrientation.Upright, AimPanDegrees = -3, AimTiltDegrees = 12, BearingDegrees = 210, PhotographFieldDegrees = 69,
            MarginLeftPercent = 12, MarginRightPercent = 14, MarginTopPercent = 6, MarginBottomPercent = -2, DistanceMetres = 90, Note = "from the bridge",
        },
        new ToneRead
        {
            Sheet = Sheet, Tone = Tone, Name = "pale concrete", LuminanceCandelasPerSquareMetre = 5200, Rendering = WantedRendering.TexturedHighlight,
            SdStops = 0.3, Limit = ReadingLimit.AtLeast, ActinicRatio = 1.25, LightKelvin = 5500, Source = ReadingSource.Photograph, AsRead = "EV 15.3", PhotographX = 0.5, PhotographY = 0.25,
        },
        new ToneRemoved { Sheet = Sheet, Tone = Tone },
        new MotionMarked
        {
            Sheet = Sheet, Motion = Motion,
            Definition = new MotionDefinition
            {
                Name = "crank wheel", How = "turns", Left = 0.25, Top = 0.5, Width = 0.125, Height = 0.25, TurnSeconds = 20, Anticlockwise = true, ReachOfWidth = 0.1, SwingSeconds = 2,
                CrossingSeconds = 40, Upright = true, WidthMetres = 1.7, SpeedMetresPerSecond = 4.2, DistanceMetres = 20, LuminanceRatio = 0.25, Number = 3, Candelas = 40, MovesFrom = 0.25, MovesTo = 0.75,
            },
        },
        new MotionStarted { Sheet = Sheet, Motion = Motion, SecondsAgo = 5 },
        new MotionStopped { Sheet = Sheet, Motion = Motion, SecondsAgo = 2 },
        new MotionRemoved { Sheet = Sheet, Motion = Motion },
        new PlanMade
        {
            Sheet = Sheet, ExposureSeconds = 120, FlashSeconds = 4, FlashFraction = 0.6, FlashLuminanceCandelasPerSquareMetre = 900, Odds = 0.62, LimitedBy = "paper speed", LightKelvin = 5500,
            Tones = [new PlannedTone { Tone = Tone, Density = 0.2, DensitySd = 0.1, Fate = ToneFate.AsWanted, FromAimStops = -0.25, ChanceAsWanted = 0.8 }], Note = "waits for the cloud",
        },
        new FlashStarted { Sheet = Sheet, PlannedSeconds = 4, PointedAt = "grey card" },
        new FlashFinished { Sheet = Sheet, GivenSeconds = 4.2 },
        new HoleOpened { Sheet = Sheet, LightStops = 0, Light = LightWord.Sun, SecondsAgo = 1 },
        new LightChanged { Sheet = Sheet, LightStops = -2, Light = LightWord.Cloud, SecondsAgo = 3.5 },
        new HoleClosed { Sheet = Sheet, SecondsAgo = 2 },
        new BathStarted { Sheet = Sheet, TemperatureCelsius = 19.5, Bottle = Bottle, Note = "third sheet of this bottle" },
        new BathStep { Sheet = Sheet, Step = BathKind.Developer, PlannedSeconds = 90, SecondsAgo = 1 },
        new BathFinished { Sheet = Sheet, SecondsAgo = 1 },
        new PrintJudged
        {
            Sheet = Sheet, Keeper = true, Tones = [new JudgedTone { Tone = Tone, LighterByStops = 0.5 }, new JudgedTone { LighterByStops = -2, Fate = ToneFate.Blocked, MeasuredDensity = 1.62, SdStops = 0.12 }],
            Causes = [MishapCause.Light, MishapCause.Motion], Note = "good sky",
        },
        new ScanAdded { Sheet = Sheet, ContentHash = ContentHash, WidthPixels = 6000, HeightPixels = 4800, MediaType = "image/png", ByteCount = 9, DotsPerInch = 1200 },
        new BottleMixed
        {
            Bottle = Bottle, Contents = BottleContents.Developer, Name = "half a litre", VolumeMillilitres = 500, CapacityMillilitres = 550, CoveringMillilitres = 150,
            WaterParts = 9, TemperatureCelsius = 20, Note = "tap water", SecondsAgo = 60,
            Developer = new DeveloperDefinition
            {
                TimeSeconds = 75, MinimumSeconds = 70, Q10 = 2.1, CapacitySquareMetresPerLitre = 5.7, ActivityLimit = 0.6, AppearanceFactor = 7.5, OpenLossPerHour = 0.02,
                ClosedLossPerDay = 0.01, KnownDays = 30,
            },
            Fixer = new FixerDefinition { Kind = "ammoniumPaper", SilverLimitGramsPerLitre = 2, AreaLimitSquareMetresPerLitre = 2.73 },
        },
        new BottleToppedUp { Bottle = Bottle, PouredMillilitres = 28.5, FreshMillilitres = 30, Strength = 1, SecondsAgo = 5 },
        new BottleWarmthRead { Bottle = Bottle, TemperatureCelsius = 18.5, SecondsAgo = 2 },
        new BottleOpened { Bottle = Bottle, SecondsAgo = 60 },
        new BottleClosed { Bottle = Bottle, SecondsAgo = 60 },
        new BottleDiscarded { Bottle = Bottle, Why = "brown as coffee; into the waste can", SecondsAgo = 1 },
        new DevelopedIn
        {
            Sheet = Sheet, Bottle = Bottle, TemperatureCelsius = 18.5, DevelopedSeconds = 92, AppearedAfterSeconds = 11, LostMillilitres = 1.5, MeanDensity = 0.8,
            Colour = DeveloperColour.Straw, SecondsAgo = 10,
        },
        new FixedIn { Sheet = Sheet, Bottle = Fixer, TemperatureCelsius = 17 },
        new KitPlanned { Kit = Kit, Name = "ten sheets at the basin", Lines = ["10 sheets of paper in a lightproof box", "gloves"] },
        new KitPacked { Kit = Kit, Line = 1, Packed = true },
        new HoleMeasured { Camera = Camera, DiameterMillimetres = 0.352, DiameterSdMillimetres = 0.0021, Roundness = 0.971, BurrMillimetres = 0.004, DotsPerInch = 4800 },
        new ChamberMeasured { Camera = Camera, FocalDistanceMillimetres = 63.4, FocalDistanceSdMillimetres = 0.3 },
        new MaskDefined
        {
            Mask = Mask,
            Camera = Camera,
            Definition = new MaskDefinition
            {
                Name = "date", Shape = "text", Text = "20 JUNE", Path = "M0 0H10V10Z", HeightOverWidth = 0.5, WidthMillimetres = 30, XMillimetres = 40, YMillimetres = -44,
                TurnDegrees = 2, Sense = "blocks", Place = "tray", DistanceMillimetres = 3,
            },
        },
        new StripMade
        {
            Strip = Strip, Paper = Paper, Purpose = StripPurpose.Curve, OnStripLux = 0.08, LightKelvin = 5503, LightSdStops = 0.2, Seconds = [8, 16, 32, 64],
            InSeveralOpenings = true, Note = "at the white wall",
        },
        new StripRead
        {
            Strip = Strip, By = StripReader.Eye, Densities = [1.8, 1.1, null, 0.2], DensitySd = 0.06, MaskedDensity = 1.9, FoggedDensity = 0.07,
            FirstTone = 1, LastTone = 3, Match = new StripMatch { Step = 2, Density = 0.75 }, Note = "dry",
        },
        new EntryVoided { Entry = Id(7), Why = "touched by mistake" },
        new EntryAmended { Entry = Id(8), Body = JsonDocument.Parse("""{"sheet":"01JTAMR500000000000000000R"}""").RootElement, Why = "wrong sheet" },
    ];
}
