using Foramen.Engine.Quantities;
using Foramen.Field.Storage;
using Foramen.Journal;
using Foramen.Journal.Bodies;

namespace Foramen.Field.Sheets;

/// <summary>Loading a sheet: which camera, which paper, and a name if it wants one.</summary>
public sealed class NewSheetState
{
    private readonly JournalSession session;

    /// <summary>Begins with the gear of the last sheet.</summary>
    public NewSheetState(JournalSession session)
    {
        this.session = session;
        var last = session.Ledger.Sheets.All.LastOrDefault(sheet => sheet.Started is not null)?.Started?.Body;
        Camera = last?.Camera is { } camera && session.Ledger.Cameras.Find(camera) is not null ? camera : Only(session.Ledger.Cameras.All.Select(item => item.Id));
        Paper = last?.Paper is { } paper && session.Ledger.Papers.Find(paper) is not null ? paper : Only(session.Ledger.Papers.All.Select(item => item.Id));
    }

    /// <summary>The camera.</summary>
    public Ulid? Camera { get; set; }

    /// <summary>The paper.</summary>
    public Ulid? Paper { get; set; }

    /// <summary>The name; may stay empty.</summary>
    public string Name { get; set; } = "";

    /// <summary>Why it was not stored.</summary>
    public string? Refusal { get; private set; }

    /// <summary>Whether all that is needed has been chosen.</summary>
    public bool IsReady => Camera is not null && Paper is not null;

    /// <summary>Writes that the sheet was loaded, in the latest outing of today.</summary>
    /// <returns>The sheet; null where nothing was written.</returns>
    public async Task<Ulid?> StartAsync(DateTimeOffset now)
    {
        var sheet = session.NewId();
        try
        {
            await session.AppendAsync(new SheetStarted
            {
                Sheet = sheet,
                Camera = Camera,
                Paper = Paper,
                Outing = Outings.CurrentOuting.Of(session.Ledger, now)?.Id,
                Name = Name.Trim() is { Length: > 0 } name ? name : null,
            });
            return sheet;
        }
        catch (Exception e) when (e is StoreRefusedException or RefusalException)
        {
            Refusal = e.Message;
            return null;
        }
    }

    private static Ulid? Only(IEnumerable<Ulid> ids) => ids.Take(2).ToList() is [var one] ? one : null;
}
