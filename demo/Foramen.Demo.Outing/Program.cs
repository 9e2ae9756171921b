// Writes the demo outing, demo/canal-basin.foramen.jsonl: an invented day at an invented canal basin, the same every time.
// Run from the repository's root: dotnet run --project demo/Foramen.Demo.Outing
using Foramen.Demo.Outing;
using Foramen.Engine.Light;
using Foramen.Journal;
using Foramen.Journal.Bodies;
using Foramen.Journal.Entries;
using Foramen.Journal.Exchange;
using Foramen.Journal.Kit;

var root = args.Length > 0 ? args[0] : "demo";
var notebook = new Notebook(DeviceId.Parse("demo-phone"), new DateTimeOffset(2026, 5, 8, 20, 15, 0, TimeSpan.FromHours(2)));

CameraDefinition boxA = Kit.Camera(Path.Combine(root, "kit/box-a.json")), tin = Kit.Camera(Path.Combine(root, "kit/tin.json"));
PaperDefinition positive = Kit.Paper(Path.Combine(root, "kit/positive.json")), gradeTwo = Kit.Paper(Path.Combine(root, "kit/grade-2.json"));
Ulid boxAId = notebook.Name("Box A"), tinId = notebook.Name("Tin"), positiveId = notebook.Name("positive"), gradeTwoId = notebook.Name("grade 2");
notebook.Write(new CameraDefined { Camera = boxAId, Definition = boxA });
notebook.Wait(60);
notebook.Write(new CameraDefined { Camera = tinId, Definition = tin });
notebook.Wait(60);
notebook.Write(new PaperDefined { Paper = positiveId, Definition = positive });
notebook.Wait(60);
notebook.Write(new PaperDefined { Paper = gradeTwoId, Definition = gradeTwo });

notebook.Wait(TimeSpan.FromDays(1).TotalSeconds);
notebook.WaitUntil(11, 30);
var bottles = Bottles.Mix(notebook);
notebook.WaitUntil(13, 40);
Ulid place = notebook.Name("canal basin"), outing = notebook.Name("outing");
notebook.Write(new PlaceDefined
{
    Place = place, Name = "Canal basin", LatitudeDegrees = 52.5, LongitudeDegrees = 5.25, FacesDegrees = 320,
    Note = "Invented. Firm quay on the south side; the towpath is narrow, so mind the cyclists and the water's edge.",
});
notebook.Wait(20);
notebook.Write(new OutingStarted { Outing = outing, Name = "Second Saturday of May", Place = place, Note = "Half a litre of developer, ten sheets." });

SheetStarted Begin(string name, Ulid camera, Ulid paper)
    => new() { Sheet = notebook.Name(name), Outing = outing, Camera = camera, Paper = paper, Name = name };

// In the dark tent the developer stands in a tray from now on.
notebook.WaitUntil(14, 10);
notebook.Write(new BottleOpened { Bottle = bottles.Developer });

// 1. All goes well.
notebook.WaitUntil(14, 18);
var elevator = new SheetStory(notebook, Begin("The grain elevator", boxAId, positiveId), boxA, positive, LightColour.Noon);
elevator.Photograph(Path.Combine(root, "canal-basin.jpg"), new PhotographedHow
{
    ExposureSeconds = 1 / 1600.0, FNumber = 2.2, IsoSpeed = 50, FocalLength35Millimetres = 14, ColourSpace = "sRGB", Orientation = 1, TakenLocal = "2026-05-09T14:20:00",
});
elevator.Frame(new FrameChosen
{
    Sheet = elevator.Id, Orientation = SheetOrientation.Upright, AimPanDegrees = 2, AimTiltDegrees = 9, BearingDegrees = 318, MarginLeftPercent = 14,
    MarginRightPercent = 11, MarginTopPercent = 8, MarginBottomPercent = 5, DistanceMetres = 85, PhotographFieldDegrees = 102.0,
});
// Luminances and places as in demo/canal-basin.truth.json.
elevator.Meter(
    new DemoTone("elevator in the sun", 9025, WantedRendering.TexturedHighlight, -8, 25, (0.3465, 0.275)),
    new DemoTone("edge of a silo", 2193, WantedRendering.OpenShadow, -6, 25, (0.3585, 0.275)),
    new DemoTone("trees", 836, WantedRendering.MayBlock, -38, -8, (0.10, 0.4725)),
    new DemoTone("blue sky", 2563, WantedRendering.MayBurn, 20, 40, (0.66, 0.13)));
elevator.Plan();
elevator.Expose(60);
elevator.Process(bottles, 19.5, appeared: 10.5, colour: DeveloperColour.Clear, note: "First sheet of this bottle.");
elevator.Judge(true, [elevator.Came("elevator in the sun", 0.25), elevator.Came("edge of a silo", 0)], [], "The board marks in the concrete can be read.");

// 2. A cloud after a quarter of a minute.
notebook.WaitUntil(15, 10);
var weir = new SheetStory(notebook, Begin("White water at the weir", boxAId, positiveId), boxA, positive, LightColour.Noon);
weir.Frame(new FrameChosen { Sheet = weir.Id, Orientation = SheetOrientation.Level, AimTiltDegrees = -4, BearingDegrees = 75, DistanceMetres = 22 });
weir.Meter(
    new DemoTone("white water", 8200, WantedRendering.TexturedHighlight, -10, -8),
    new DemoTone("wet stone", 2200, WantedRendering.OpenShadow, 30, -20),
    new DemoTone("bank under the alders", 420, WantedRendering.MayBlock, 45, 30));
weir.Plan(note: "The water will be silk at this length.");
weir.Expose(45, (15, -2, LightWord.Cloud), (55, -1, LightWord.ThinCloud));
weir.Process(bottles, 19, appeared: 11.5, topUp: 50);
weir.Judge(true, [weir.Came("white water", -0.25), weir.Came("wet stone", -0.25)], [], "Worth the wait for the cloud.");

// 3. The lift bridge opens in the middle of it.
notebook.WaitUntil(15, 50);
var bridge = new SheetStory(notebook, Begin("The lift bridge before four", tinId, gradeTwoId), tin, gradeTwo, LightColour.Noon);
bridge.Frame(new FrameChosen { Sheet = bridge.Id, Orientation = SheetOrientation.Level, AimTiltDegrees = 3, BearingDegrees = 255, DistanceMetres = 30, MarginTopPercent = 2 });
bridge.Meter(
    new DemoTone("painted steel", 2400, WantedRendering.Mid, 0, 5),
    new DemoTone("deck from below", 750, WantedRendering.OpenShadow, 10, -10),
    new DemoTone("sky over the water", 7000, WantedRendering.MayBurn, 0, 30));
bridge.Plan();
bridge.Expose(30);
bridge.Process(bottles, 18.5);
bridge.Judge(false, [bridge.Came("painted steel", 0.5)], [MishapCause.Motion, MishapCause.Frame], "It opened on the hour, and the counterweight is cut off. Come at ten past.");

// 4. Open shade with a flash; people pass, so the hole is covered for a while.
notebook.WaitUntil(16, 50);
var organ = new SheetStory(notebook, Begin("Street organ at the pump house", tinId, gradeTwoId), tin, gradeTwo, LightColour.OpenShade);
organ.Frame(new FrameChosen { Sheet = organ.Id, Orientation = SheetOrientation.Level, BearingDegrees = 20, DistanceMetres = 4.5, MarginLeftPercent = 9, MarginRightPercent = 12 });
organ.Meter(
    new DemoTone("white organ front", 1300, WantedRendering.TexturedHighlight, -8, 0),
    new DemoTone("brick of the pump house", 240, WantedRendering.OpenShadow, 25, 10),
    new DemoTone("dark doorway", 40, WantedRendering.MayBlock, 38, -8));
organ.Plan(flashAt: 900, note: "The crank wheel will be a disc.");
if (notebook.Ledger.Sheets.Find(organ.Id)!.Plan!.Body.FlashSeconds > 0)
{
    organ.Flash("white wall of the pump house, in shade");
}

organ.Expose(50, (35, 0, LightWord.Covered), (25, 0, LightWord.Sun));
var mistaken = notebook.Entries[^2];
organ.Process(bottles, 18, topUp: 50, colour: DeveloperColour.Straw, note: "The bottle has cooled.");
organ.Judge(
    true, [organ.Came("white organ front", -0.5), organ.Came("brick of the pump house", -0.25)], [MishapCause.Process],
    "A little dark: the developer was cold. The wheel is a fine grey disc.");
notebook.Wait(120);
notebook.Write(new EntryAmended
{
    Entry = mistaken.Id, Why = "The shade is as metered; “reading” says it better than “sun”.",
    Body = System.Text.Json.JsonDocument.Parse(BodyJson.Write(new LightChanged { Sheet = organ.Id, LightStops = 0, Light = LightWord.Reading })).RootElement,
});

// The tray goes back into its bottle before the light is good again.
notebook.WaitUntil(17, 50);
notebook.Write(new BottleClosed { Bottle = bottles.Developer });

// 5. Begun, metered, planned, with a touch by mistake that is taken back: to go on with.
notebook.WaitUntil(18, 5);
var again = new SheetStory(notebook, Begin("The lift bridge, closed", tinId, gradeTwoId), tin, gradeTwo, LightColour.Noon);
again.Frame(new FrameChosen { Sheet = again.Id, Orientation = SheetOrientation.Level, AimTiltDegrees = 5, BearingDegrees = 252, DistanceMetres = 34, MarginTopPercent = 9 });
again.Meter(
    new DemoTone("painted steel", 2000, WantedRendering.Mid, 0, 5),
    new DemoTone("deck from below", 640, WantedRendering.OpenShadow, 10, -10),
    new DemoTone("sky over the water", 6200, WantedRendering.MayBurn, 0, 30));
var touched = again.Say(10, new ToneRemoved { Sheet = again.Id, Tone = again["painted steel"] });
again.Say(4, new EntryVoided { Entry = touched.Id, Why = "Touched by mistake." });
again.Plan();

var path = Path.Combine(root, "canal-basin" + JournalFile.Extension);
File.WriteAllBytes(path, JournalFile.Write(EntrySet.Of(notebook.Entries)));
Console.WriteLine($"{notebook.Entries.Count} entries in {path}");
foreach (var sheet in notebook.Ledger.Sheets.All)
{
    Console.WriteLine(FormattableString.Invariant($"{sheet.Started!.Body.Name}: {sheet.Plan?.Body.ExposureSeconds} s, flash {sheet.Plan?.Body.FlashSeconds} s, odds {sheet.Plan?.Body.Odds}, open {sheet.TallyAt(notebook.Now).ElapsedSeconds} s, {sheet.Step}"));
}
