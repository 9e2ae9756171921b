using Foramen.Engine.Quantities;
using Foramen.Field.Sheets.Expose;
using Foramen.Field.Storage;
using Foramen.Field.Texts;
using Foramen.Journal;
using Foramen.Journal.Bodies;
using Foramen.Journal.Kit;

namespace Foramen.Field.Sheets.Judge;

/// <summary>A judgement while it is being made, and what it means once it is.</summary>
public sealed class JudgeState
{
    private const int PreviewLongSide = 640;

    private readonly SheetState sheet;

    /// <summary>Begins with what was judged before, if anything was.</summary>
    public JudgeState(SheetState sheet)
    {
        this.sheet = sheet;
        var said = sheet.Sheet?.Judgement?.Body;
        var tones = sheet.Sheet?.Tones ?? [];
        Tones = tones.IsEmpty
            ? [new ToneVerdict(null, Words.Judge.Whole, null).Taking(Said(null))]
            : [.. tones.Select(tone => new ToneVerdict(tone.Body.Tone, tone.Body.Name, tone.Body.Rendering).Taking(Said(tone.Body.Tone)))];
        Keeper = said?.Keeper;
        Causes = [.. said?.Causes ?? []];
        Note = said?.Note ?? "";

        JudgedTone? Said(Ulid? tone) => said?.Tones?.FirstOrDefault(one => one.Tone == tone);
    }

    /// <summary>Tone by tone; the print as a whole where none was metered.</summary>
    public IReadOnlyList<ToneVerdict> Tones { get; }

    /// <summary>Worth keeping; null until said.</summary>
    public bool? Keeper { get; set; }

    /// <summary>What went wrong.</summary>
    public HashSet<MishapCause> Causes { get; }

    /// <summary>Anything else.</summary>
    public string Note { get; set; }

    /// <summary>Whether the sheet has been judged.</summary>
    public bool IsJudged => sheet.Sheet is { Judgement: not null };

    /// <summary>Whether the picture is judged turned into a positive: a paper negative.</summary>
    public bool IsNegative => sheet.Paper is { Kind: "negative" };

    /// <summary>The last photograph of the print; null where there is none.</summary>
    public string? PictureHash => sheet.Sheet is { Scans.IsEmpty: false } one ? one.Scans[^1].Body.ContentHash : null;

    /// <summary>Why a picture was not taken in; null where it was.</summary>
    public string? PictureRefusal { get; private set; }

    /// <summary>Says that something went wrong, or takes it back.</summary>
    public void Toggle(MishapCause cause)
    {
        if (!Causes.Remove(cause))
        {
            Causes.Add(cause);
        }
    }

    /// <summary>Writes the judgement.</summary>
    public Task<bool> SaveAsync() => sheet.WriteAsync(new PrintJudged
    {
        Sheet = sheet.Id,
        Keeper = Keeper!.Value,
        Tones = [.. Tones.Select(tone => tone.ToJudged())],
        Causes = Causes.Count == 0 ? null : [.. Causes.Order()],
        Note = Note.Trim() is { Length: > 0 } note ? note : null,
    });

    /// <summary>Takes in a photograph of the print.</summary>
    /// <param name="pictures">The pictures of this device.</param>
    /// <param name="inputId">The element that holds the file.</param>
    public async Task AddPictureAsync(IPictures pictures, string inputId)
    {
        PictureRefusal = null;
        try
        {
            if (await pictures.TakeAsync(inputId, PreviewLongSide) is { } taken)
            {
                await sheet.WriteAsync(new ScanAdded
                {
                    Sheet = sheet.Id,
                    ContentHash = taken.ContentHash,
                    MediaType = taken.MediaType,
                    WidthPixels = taken.FullWidth,
                    HeightPixels = taken.FullHeight,
                    ByteCount = taken.File.LongLength,
                });
            }
        }
        catch (Exception e) when (e is RefusalException or StoreRefusedException)
        {
            PictureRefusal = e.Message;
        }
    }

    /// <summary>What the judgement means for the next sheet in the same light; null where neither a plan nor a tone says so.</summary>
    public NextTime? NextTime(DateTimeOffset now)
    {
        var counting = Tones.Where(tone => tone.Counts).ToList();
        if (counting.Count == 0 || sheet.Sheet?.Plan?.Body is not { } plan)
        {
            return null;
        }

        var progress = new ExposeState(sheet).StandingAt(now) is { IsOpen: false, Progress: > 0 } standing ? standing.Progress : 1;
        var law = (sheet.Paper ?? PaperReading.Unknown("unknown", "negative")).ToPaper().Failure;
        return Judge.NextTime.From(law, progress * plan.ExposureSeconds, counting);
    }

    /// <summary>Loads the next sheet with the same camera and paper.</summary>
    /// <returns>The sheet; null where nothing was written.</returns>
    public async Task<Ulid?> StartNextAsync()
    {
        var started = sheet.Sheet!.Started?.Body;
        var next = sheet.Session.NewId();
        return await sheet.WriteAsync(new SheetStarted
        {
            Sheet = next,
            Camera = started?.Camera,
            Paper = started?.Paper,
            Outing = Outings.CurrentOuting.Of(sheet.Session.Ledger, sheet.Clock.Now)?.Id,
        }) ? next : null;
    }
}
