using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using System.Text.Unicode;
using Foramen.Engine.Quantities;

namespace Foramen.Journal.Bodies;

/// <summary>Bodies to and from JSON.</summary>
public static class BodyJson
{
    /// <summary>Deepest nesting of a body.</summary>
    public const int MaxDepth = 63;

    // Letters of any script stay readable in the file; only what could break a page or a line is escaped.
    private static readonly BodyJsonContext Context = new(new JsonSerializerOptions
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
        RespectNullableAnnotations = true,
        MaxDepth = MaxDepth,
        Encoder = JavaScriptEncoder.Create(UnicodeRanges.All),
    });

    /// <summary>A body as JSON on one line.</summary>
    /// <exception cref="RefusalException">A body of a type this version does not know.</exception>
    public static string Write(EntryBody body)
        => JsonSerializer.Serialize(body, InfoOf(body.Kind) ?? throw new RefusalException($"There is no kind “{body.Kind}” here."));

    /// <summary>Reads a body by its kind and version. Never throws: see <see cref="BodyReading"/>.</summary>
    public static BodyReading Read(string kind, int version, string body)
    {
        if (InfoOf(kind) is not { } info)
        {
            return BodyReading.Unknown;
        }

        try
        {
            if (JsonSerializer.Deserialize(body, info) is not EntryBody read)
            {
                return new BodyReading(null, $"The body of this {kind} is empty.");
            }

            if (version > read.SchemaVersion)
            {
                return BodyReading.Unknown;
            }

            read.Check();
            return new BodyReading(read, null);
        }
        catch (RefusalException e)
        {
            return new BodyReading(null, e.Message);
        }
        catch (Exception e) when (e is JsonException or InvalidOperationException or FormatException or OverflowException)
        {
            return version > 1 ? BodyReading.Unknown : new BodyReading(null, $"The body of this {kind} does not fit its schema: {OneLine(e.Message)}");
        }
    }

    private static string OneLine(string message) => message.ReplaceLineEndings(" ");

    private static JsonTypeInfo? InfoOf(string kind) => kind switch
    {
        EntryKind.CameraDefined => Context.CameraDefined,
        EntryKind.PaperDefined => Context.PaperDefined,
        EntryKind.PlaceDefined => Context.PlaceDefined,
        EntryKind.OutingStarted => Context.OutingStarted,
        EntryKind.SheetStarted => Context.SheetStarted,
        EntryKind.PhotographAdded => Context.PhotographAdded,
        EntryKind.FrameChosen => Context.FrameChosen,
        EntryKind.ToneRead => Context.ToneRead,
        EntryKind.ToneRemoved => Context.ToneRemoved,
        EntryKind.MotionMarked => Context.MotionMarked,
        EntryKind.MotionRemoved => Context.MotionRemoved,
        EntryKind.MotionStarted => Context.MotionStarted,
        EntryKind.MotionStopped => Context.MotionStopped,
        EntryKind.PlanMade => Context.PlanMade,
        EntryKind.FlashStarted => Context.FlashStarted,
        EntryKind.FlashFinished => Context.FlashFinished,
        EntryKind.HoleOpened => Context.HoleOpened,
        EntryKind.LightChanged => Context.LightChanged,
        EntryKind.HoleClosed => Context.HoleClosed,
        EntryKind.BathStarted => Context.BathStarted,
        EntryKind.BathStep => Context.BathStep,
        EntryKind.BathFinished => Context.BathFinished,
        EntryKind.PrintJudged => Context.PrintJudged,
        EntryKind.ScanAdded => Context.ScanAdded,
        EntryKind.BottleMixed => Context.BottleMixed,
        EntryKind.BottleToppedUp => Context.BottleToppedUp,
        EntryKind.BottleWarmthRead => Context.BottleWarmthRead,
        EntryKind.BottleOpened => Context.BottleOpened,
        EntryKind.BottleClosed => Context.BottleClosed,
        EntryKind.BottleDiscarded => Context.BottleDiscarded,
        EntryKind.SheetDeveloped => Context.DevelopedIn,
        EntryKind.SheetFixed => Context.FixedIn,
        EntryKind.KitPlanned => Context.KitPlanned,
        EntryKind.KitPacked => Context.KitPacked,
        EntryKind.HoleMeasured => Context.HoleMeasured,
        EntryKind.ChamberMeasured => Context.ChamberMeasured,
        EntryKind.MaskDefined => Context.MaskDefined,
        EntryKind.StripMade => Context.StripMade,
        EntryKind.StripRead => Context.StripRead,
        EntryKind.EntryVoided => Context.EntryVoided,
        EntryKind.EntryAmended => Context.EntryAmended,
        _ => null,
    };
}
