using Foramen.Engine.Light;
using Foramen.Engine.Quantities;
using Foramen.Exif;
using Foramen.Field.Components;
using Foramen.Field.Texts;
using Foramen.Field.Time;
using Foramen.Journal;
using Foramen.Journal.Bodies;
using Foramen.Journal.Fold;
using Foramen.Journal.Kit;
using Foramen.Journal.Listing;

namespace Foramen.Field.Ledgers;

/// <summary>What a sheet's card says: how it was made, tone by tone, and how it came out.</summary>
public sealed class CardFacts
{
    private readonly Ledger ledger;
    private readonly Sheet sheet;
    private readonly LedgerRow row;
    private readonly PlaceDefined? place;

    private CardFacts(Ledger ledger, Sheet sheet)
    {
        (this.ledger, this.sheet, row) = (ledger, sheet, LedgerRow.Of(ledger, sheet));
        var outing = sheet.Started?.Body.Outing is { } id ? ledger.Outings.Find(id)?.Started?.Body : null;
        place = (sheet.Started?.Body.Place ?? outing?.Place) is { } at ? ledger.Places.Find(at)?.Body : null;
        Name = SheetSummary.NameOf(ledger, sheet);
    }

    /// <summary>The sheet's name, or its number.</summary>
    public string Name { get; }

    /// <summary>The picture to show; null where there is none.</summary>
    public string? PictureHash => sheet.PictureHash;

    /// <summary>Whether that is the print itself and not the photograph of its subject.</summary>
    public bool ShowsPrint => !sheet.Scans.IsEmpty;

    /// <summary>Whether the journal knows where it was made.</summary>
    public bool HasPlace => place is { LatitudeDegrees: not null, LongitudeDegrees: not null };

    /// <summary>The verdict; null before it was judged.</summary>
    public bool? Keeper => row.Keeper;

    /// <summary>What was noted.</summary>
    public string? Note => row.Note;

    /// <summary>What went wrong.</summary>
    public IReadOnlyList<MishapCause> Causes => row.Causes;

    /// <summary>The card of a sheet; null where the ledger does not know it.</summary>
    public static CardFacts? Of(Ledger ledger, Ulid id) => ledger.Sheets.Find(id) is { Withdrawn: false } sheet ? new CardFacts(ledger, sheet) : null;

    /// <summary>How it was made, as pairs of a name and what it was; what was never written down is left out.</summary>
    /// <param name="withPlace">Whether the place is said too.</param>
    public IReadOnlyList<(string Name, string Value)> Made(bool withPlace)
    {
        var made = new List<(string Name, string Value)>();
        void Add(string name, string? value)
        {
            if (!string.IsNullOrEmpty(value))
            {
                made.Add((name, value));
            }
        }

        Add(Words.Cards.Day, (OpenedAt ?? row.LoadedAt)?.ToString("yyyy-MM-dd HH:mm", System.Globalization.CultureInfo.InvariantCulture));
        Add(Words.Cards.Outing, row.Outing);
        Add(Words.Cards.Place, withPlace ? Words.Cards.Where(place) : null);
        Add(Words.Sheets.Camera, Words.Cards.CameraLine(Camera));
        Add(Words.Sheets.Paper, Words.Cards.PaperLine(ledger.PaperOf(sheet)?.Body));
        Add(Words.Cards.Light, row.Light);
        Add(Words.Cards.Flash, FlashSeconds is { } flash ? Words.Plan.TimeShown(flash) : null);
        Add(Words.Cards.Planned, row.PlannedSeconds is { } planned ? TimeText.Spoken(planned) : null);
        Add(Words.Cards.Open, row.OpenSeconds is { } open ? TimeText.Spoken(open) : null);
        Add(Words.Cards.Odds, row.Odds is { } odds ? Words.Plan.Percent(odds) : null);
        foreach (var (bath, seconds) in Baths)
        {
            Add(Words.Cards.Bath(bath), TimeText.Spoken(seconds));
        }

        return made;
    }

    /// <summary>Each tone: its name, how it was wanted, the density that was planned, and how it was judged or measured; nulls where nothing was said.</summary>
    public IReadOnlyList<(string Name, WantedRendering Wanted, double? Planned, JudgedTone? Judged)> Tones
    {
        get
        {
            var judged = sheet.Judgement?.Body.Tones ?? [];
            var planned = sheet.Plan?.Body.Tones ?? [];
            return
            [
                .. sheet.Tones.Select(tone => (
                    tone.Body.Name,
                    tone.Body.Rendering,
                    planned.FirstOrDefault(one => one.Tone == tone.Body.Tone)?.Density,
                    judged.FirstOrDefault(one => one.Tone == tone.Body.Tone))),
            ];
        }
    }

    /// <summary>What goes into a picture file of the print.</summary>
    /// <param name="withPlace">Whether the place goes out too.</param>
    public PictureFacts ForFile(bool withPlace) => new()
    {
        Title = Name,
        ExposureTime = (row.OpenSeconds ?? row.PlannedSeconds) is { } seconds ? Duration.FromSeconds(seconds) : null,
        FNumber = Camera?.ToCamera().FNumber,
        FocalDistance = Camera?.ToCamera().FocalDistance,
        OpenedAt = OpenedAt ?? row.LoadedAt,
        Place = withPlace && place is { LatitudeDegrees: { } latitude, LongitudeDegrees: { } longitude } ? GeographicPosition.FromDegrees(latitude, longitude) : null,
    };

    private CameraDefinition? Camera => ledger.CameraOf(sheet)?.Body;

    private DateTimeOffset? OpenedAt => sheet.HoleEvents.FirstOrDefault(happened => happened.Kind == HoleEventKind.Opened) is { } opened
        ? opened.At.AddSeconds(-opened.SecondsAgo)
        : null;

    // What was given, or else what was planned.
    private double? FlashSeconds => sheet.Flashes is [.., { GivenSeconds: { } given }] ? given : row.FlashSeconds > 0 ? row.FlashSeconds : null;

    private IEnumerable<(BathKind Bath, double Seconds)> Baths => sheet.Bath is { Finished: { } finished } run
        ? run.Steps.Select((step, index) => (step.Body.Step, run.SecondsIn(index, finished.At)))
        : [];
}
