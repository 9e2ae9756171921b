using System.Text.Json.Serialization;

namespace Foramen.Journal.Bodies;

/// <summary>Reading and writing of bodies without reflection, so that the browser can trim. Options are set in <see cref="BodyJson"/>.</summary>
[JsonSourceGenerationOptions(GenerationMode = JsonSourceGenerationMode.Metadata)]
[JsonSerializable(typeof(CameraDefined))]
[JsonSerializable(typeof(PaperDefined))]
[JsonSerializable(typeof(PlaceDefined))]
[JsonSerializable(typeof(OutingStarted))]
[JsonSerializable(typeof(SheetStarted))]
[JsonSerializable(typeof(PhotographAdded))]
[JsonSerializable(typeof(FrameChosen))]
[JsonSerializable(typeof(ToneRead))]
[JsonSerializable(typeof(ToneRemoved))]
[JsonSerializable(typeof(PlanMade))]
[JsonSerializable(typeof(FlashStarted))]
[JsonSerializable(typeof(FlashFinished))]
[JsonSerializable(typeof(HoleOpened))]
[JsonSerializable(typeof(LightChanged))]
[JsonSerializable(typeof(HoleClosed))]
[JsonSerializable(typeof(BathStarted))]
[JsonSerializable(typeof(BathStep))]
[JsonSerializable(typeof(BathFinished))]
[JsonSerializable(typeof(PrintJudged))]
[JsonSerializable(typeof(ScanAdded))]
[JsonSerializable(typeof(EntryVoided))]
[JsonSerializable(typeof(EntryAmended))]
internal sealed partial class BodyJsonContext : JsonSerializerContext;
