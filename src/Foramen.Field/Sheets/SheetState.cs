using Foramen.Engine.Quantities;
using Foramen.Field.Storage;
using Foramen.Field.Time;
using Foramen.Journal;
using Foramen.Journal.Bodies;
using Foramen.Journal.Fold;
using Foramen.Journal.Kit;

namespace Foramen.Field.Sheets;

/// <summary>The sheet that a step's page works on: what the journal says of it now, and the way to write on.</summary>
public sealed class SheetState(JournalSession session, Clock clock)
{
    /// <summary>The sheet's id.</summary>
    public Ulid Id { get; private set; }

    /// <summary>What has happened to it; null where this journal does not know it.</summary>
    public Sheet? Sheet => Session.Ledger.Sheets.Find(Id);

    /// <summary>The camera as it was when the sheet was loaded.</summary>
    public CameraDefinition? Camera => Sheet is { } sheet ? Session.Ledger.CameraOf(sheet)?.Body : null;

    /// <summary>The paper as it was when the sheet was loaded.</summary>
    public PaperDefinition? Paper => Sheet is { } sheet ? Session.Ledger.PaperOf(sheet)?.Body : null;

    /// <summary>The journal, for what lies beyond this sheet.</summary>
    public JournalSession Session { get; } = session;

    /// <summary>Now.</summary>
    public Clock Clock { get; } = clock;

    /// <summary>Why the last write was refused, in a sentence; null where it was stored.</summary>
    public string? Refusal { get; private set; }

    /// <summary><see cref="Refusal"/> may have changed.</summary>
    public event Action? Tried;

    /// <summary>Turns to a sheet.</summary>
    public void Show(Ulid id)
    {
        Id = id;
        Refusal = null;
    }

    /// <summary>
    /// Writes what happened. True: it is stored, and <see cref="Sheet"/> shows it. False: nothing was written and <see cref="Refusal"/> says why;
    /// keep what the user typed on the screen.
    /// </summary>
    public async Task<bool> WriteAsync(params IReadOnlyList<EntryBody> bodies)
    {
        try
        {
            await Session.AppendAsync(bodies);
            Refusal = null;
            return true;
        }
        catch (Exception e) when (e is StoreRefusedException or RefusalException)
        {
            Refusal = e.Message;
            return false;
        }
        finally
        {
            Tried?.Invoke();
        }
    }
}
