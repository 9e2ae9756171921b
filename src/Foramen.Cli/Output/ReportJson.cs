using System.Text.Json.Serialization;

namespace Foramen.Cli.Output;

/// <summary>JSON of every report; the schemas in docs/schemas describe it and a test holds the two together.</summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, WriteIndented = true, UseStringEnumConverter = true)]
[JsonSerializable(typeof(MeterReport))]
[JsonSerializable(typeof(MotionReport))]
[JsonSerializable(typeof(PaperReport))]
[JsonSerializable(typeof(StripPlanReport))]
[JsonSerializable(typeof(StripFitReport))]
[JsonSerializable(typeof(StripFailureReport))]
[JsonSerializable(typeof(StripFlashReport))]
[JsonSerializable(typeof(ExposeReport))]
[JsonSerializable(typeof(PreviewReport))]
[JsonSerializable(typeof(CameraReport))]
[JsonSerializable(typeof(HoleReport))]
[JsonSerializable(typeof(ScanReport))]
[JsonSerializable(typeof(MarksReport))]
[JsonSerializable(typeof(MaskReport))]
[JsonSerializable(typeof(SunReport))]
[JsonSerializable(typeof(BathReport))]
[JsonSerializable(typeof(KitReport))]
[JsonSerializable(typeof(OutingReport))]
[JsonSerializable(typeof(RehearsalReport))]
[JsonSerializable(typeof(LearnReport))]
[JsonSerializable(typeof(JournalReport))]
[JsonSerializable(typeof(JournalImportReport))]
internal sealed partial class ReportJson : JsonSerializerContext;
