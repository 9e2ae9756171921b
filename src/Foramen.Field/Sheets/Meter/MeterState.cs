using Foramen.Engine.Exposure;
using Foramen.Engine.Light;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using Foramen.Field.Components;
using Foramen.Journal;
using Foramen.Journal.Bodies;

namespace Foramen.Field.Sheets.Meter;

/// <summary>The tones of a sheet: read from the photograph by a touch, or from a meter by typing, and how they stand against the paper's reach.</summary>
public sealed class MeterState(SheetState sheet, SheetScene scenes)
{
    /// <summary>The scene as it stands; null until <see cref="LoadAsync"/>, or without camera and paper.</summary>
    public MeteredScene? Scene { get; private set; }

    /// <summary>Colour of the light.</summary>
    public LightColour Light { get; private set; } = MeteredScene.UsualLight;

    /// <summary>Why the last reading was refused, in a sentence.</summary>
    public string? Message { get; private set; }

    /// <summary>Whether the photograph's luminances are known, so that a touch is a reading.</summary>
    public bool TouchReads => Scene?.Photograph?.WhiteLuminance is not null;

    /// <summary>Whether there is a photograph at all.</summary>
    public bool HasPhotograph => Scene?.Photograph is not null;

    /// <summary>Reads the journal anew.</summary>
    public async Task LoadAsync()
    {
        Light = MeteredScene.LightOf(sheet.Sheet);
        await ReadAsync();
    }

    /// <summary>Turns to another colour of light; tones that were read keep theirs until they are read again, except their light, which is written anew.</summary>
    public async Task<bool> ChangeLightAsync(LightColour light)
    {
        Light = light;
        await ReadAsync();
        if (Scene is null || sheet.Sheet is not { Tones.IsEmpty: false } one)
        {
            return true;
        }

        // The paper sees a coloured tone differently in another light, so what came from the photograph is read again.
        var again = one.Tones.Select(tone => (EntryBody)(Again(tone.Body) with { LightKelvin = light.Temperature.Kelvin })).ToList();
        return await WriteAsync(again);
    }

    /// <summary>Reads the tone at a place of the photograph.</summary>
    /// <param name="x">From 0 at the left to 1 at the right.</param>
    /// <param name="y">From 0 at the top to 1 at the bottom.</param>
    /// <param name="name">What to call it.</param>
    /// <param name="rendering">How it is wanted.</param>
    /// <param name="reading">A meter's reading of that place; null to read the photograph itself.</param>
    public Task<bool> ReadPlaceAsync(double x, double y, string name, WantedRendering rendering, string? reading = null) => TryAsync(() =>
    {
        if (reading is not null)
        {
            return ByHand(name, rendering, reading) with { PhotographX = x, PhotographY = y };
        }

        if (Scene?.Photograph is not { } photograph)
        {
            throw new RefusalException("There is no photograph to touch; type a reading.");
        }

        return FromPhotograph(sheet.Session.NewId(), name, rendering, x, y, photograph);
    });

    /// <summary>Takes a meter's reading of a tone.</summary>
    public Task<bool> ReadByHandAsync(string name, WantedRendering rendering, string reading) => TryAsync(() => ByHand(name, rendering, reading));

    /// <summary>Takes a tone off the ladder.</summary>
    public Task<bool> RemoveAsync(Ulid tone) => WriteAsync([new ToneRemoved { Sheet = sheet.Id, Tone = tone }]);

    /// <summary>Wants a tone otherwise.</summary>
    public Task<bool> RenderAsync(Ulid tone, WantedRendering rendering)
        => sheet.Sheet?.Tones.Find(read => read.Body.Tone == tone) is { } known
            ? WriteAsync([known.Body with { Rendering = rendering }])
            : Task.FromResult(false);

    /// <summary>The ladder: tones in stops about the mid-tone, as the paper sees them where the sheet sees them.</summary>
    public (IReadOnlyList<LadderRung> Rungs, double Top, double Bottom, double WithFlash) Ladder()
    {
        if (Scene is not { Tones.Count: > 0 } scene)
        {
            return ([], 0, 0, 0);
        }

        var curve = scene.Response.Paper.Curve;
        var iso = IsoPaperMeasures.Of(curve);
        var aim = RenderingBand.On(curve, Rendering.Mid).Aim!.Value.LuxSeconds;
        var (darkEnd, lightEnd) = curve.Kind == PaperKind.NegativeWorking
            ? (iso.LightestTone.LuxSeconds, iso.DarkestTone.LuxSeconds)
            : (iso.DarkestTone.LuxSeconds, iso.LightestTone.LuxSeconds);
        var (top, bottom) = (Math.Log2(lightEnd / aim), Math.Log2(darkEnd / aim));
        var withFlash = bottom - FlashEffect.Of(curve, UsefulFlash).VisibleGain.Value;

        var placed = scene.Placed();
        var middle = Enumerable.Range(0, placed.Count).FirstOrDefault(i => placed[i].Rendering == Rendering.Mid);
        var reference = Effect(placed[middle]);
        var rungs = placed.Select((tone, i) =>
        {
            var stops = Math.Log2(Effect(tone) / reference);
            var bound = tone.Limit switch { LuminanceLimit.AtLeast => "≥ ", LuminanceLimit.AtMost => "≤ ", _ => "" };
            // The journal may be a tone ahead of the scene: the page is drawn in between.
            var wanted = sheet.Sheet!.Tones.Find(read => read.Body.Tone == scene.Tones[i].Id)?.Body.Rendering;
            return new LadderRung(
                tone.Name, stops, wanted is { } rendering ? $"{bound}{Texts.Words.Meter.ShortRendering(rendering)}" : null, stops > top || stops < withFlash);
        }).ToList();
        return (rungs, top, bottom, withFlash);
    }

    /// <summary>The flash that the ladder assumes: most of what is usual, and not yet seen itself.</summary>
    private const double UsefulFlash = 0.8;

    private static double Effect(PlacedTone tone) => tone.OnSheet.Lux * tone.ActinicRatio;

    private ToneRead Again(ToneRead read)
        => read is { Source: ReadingSource.Photograph, PhotographX: { } x, PhotographY: { } y } && Scene?.Photograph is { WhiteLuminance: not null } photograph
            ? FromPhotograph(read.Tone, read.Name, read.Rendering, x, y, photograph)
            : read;

    private ToneRead FromPhotograph(Ulid id, string name, WantedRendering rendering, double x, double y, ScenePhotograph photograph)
    {
        var tone = ToneReader.FromPhotograph(name, Rendering.Mid, PointInPhotograph.FromFractions(x, y), photograph, Scene!.Sight);
        return new ToneRead
        {
            Sheet = sheet.Id,
            Tone = id,
            Name = name,
            Rendering = rendering,
            LuminanceCandelasPerSquareMetre = tone.Luminance.CandelasPerSquareMetre,
            ActinicRatio = tone.ActinicRatio,
            SdStops = tone.MeterSpread.Value,
            Limit = tone.ReadingLimit switch
            {
                LuminanceLimit.AtLeast => ReadingLimit.AtLeast,
                LuminanceLimit.AtMost => ReadingLimit.AtMost,
                _ => null,
            },
            LightKelvin = Light.Temperature.Kelvin,
            Source = ReadingSource.Photograph,
            PhotographX = x,
            PhotographY = y,
        };
    }

    private ToneRead ByHand(string name, WantedRendering rendering, string reading)
    {
        var luminance = ReadingText.Luminance(reading, LightMeter.Usual, $"“{name}”");
        var text = reading.Trim();
        return new ToneRead
        {
            Sheet = sheet.Id,
            Tone = sheet.Session.NewId(),
            Name = name,
            Rendering = rendering,
            LuminanceCandelasPerSquareMetre = luminance.CandelasPerSquareMetre,
            SdStops = HandReading.UsualSpread.Value,
            LightKelvin = Light.Temperature.Kelvin,
            Source = text.StartsWith("EV", StringComparison.OrdinalIgnoreCase) ? ReadingSource.ExposureValue
                : text.Contains("cd", StringComparison.Ordinal) ? ReadingSource.Luminance
                : text.Contains("lx", StringComparison.Ordinal) || text.Contains("lux", StringComparison.Ordinal) ? ReadingSource.Illuminance
                : ReadingSource.CameraSettings,
            AsRead = text,
        };
    }

    private async Task<bool> TryAsync(Func<ToneRead> read)
    {
        try
        {
            var body = read();
            Message = null;
            return await WriteAsync([body]);
        }
        catch (RefusalException refusal)
        {
            Message = refusal.Message;
            return false;
        }
    }

    private async Task<bool> WriteAsync(IReadOnlyList<EntryBody> bodies)
    {
        var written = await sheet.WriteAsync(bodies);
        await ReadAsync();
        return written;
    }

    private async Task ReadAsync()
    {
        try
        {
            Scene = await MeteredScene.OfAsync(sheet, scenes, Light);
        }
        catch (RefusalException refusal)
        {
            Scene = null;
            Message = refusal.Message;
        }
    }
}
