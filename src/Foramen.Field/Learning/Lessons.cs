using Foramen.Engine.Learning;
using Foramen.Field.Storage;
using Foramen.Field.Time;
using Foramen.Journal.Fold;
using Foramen.Journal.Learning;

namespace Foramen.Field.Learning;

/// <summary>What the journal on this device teaches; worked out once for each state of the journal.</summary>
public sealed class Lessons(JournalSession session, Clock clock)
{
    // Some ten milliseconds in a browser, then the page has its turn.
    private const int SheetsAtOnce = 25;

    // While somebody waits for it the page has its turn less often.
    private const int SheetsAtOnceAwaited = 100;
    private static readonly TimeSpan PageTurn = TimeSpan.FromMilliseconds(5);

    private (Ledger Ledger, LedgerLessons All, Beliefs Beliefs)? known;
    private LedgerLessons? begun;

    /// <summary>Whether what the journal teaches can be had within a moment: it is worked out, or little of it is left to be.</summary>
    public bool IsAtHand => known is not null || SheetsLeft <= SheetsAtOnce;

    /// <summary>How many judged sheets are still to be worked out.</summary>
    public int SheetsLeft => session.Ledger.Sheets.All.Count(sheet => sheet is { Withdrawn: false, Judgement: not null }) - (begun?.Known ?? 0);

    /// <summary>Every judged sheet as a lesson.</summary>
    public LedgerLessons All => Read().All;

    /// <summary>What is believed after them.</summary>
    public Beliefs Beliefs => Read().Beliefs;

    /// <summary>The share of keepers, with one kept and one lost sheet before the first (Laplace's rule of succession): never quite none or all.</summary>
    public double HitRate => (All.Keepers.Count(kept => kept) + 1.0) / (All.Keepers.Count + 2.0);

    /// <summary>Works it out bit by bit while the page goes on, so that it is there when it is first asked for. Whoever asks before it is through waits for the rest alone.</summary>
    /// <param name="told">Told the sheets that are left, before each bit.</param>
    /// <param name="cancellation">Stops before the next bit.</param>
    public async Task PrepareAsync(Action<int>? told = null, CancellationToken cancellation = default)
    {
        await session.OpenAsync();
        while (known is null)
        {
            told?.Invoke(SheetsLeft);
            await Task.Delay(PageTurn, cancellation).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing | ConfigureAwaitOptions.ContinueOnCapturedContext);
            // Whoever else prepares it may have come to the end meanwhile.
            if (cancellation.IsCancellationRequested || known is not null)
            {
                return;
            }

            if (begun is { IsWhole: true })
            {
                _ = Read();
            }
            else
            {
                begun = LedgerLessons.Begun(session.Ledger, begun, told is null ? SheetsAtOnce : SheetsAtOnceAwaited);
            }
        }
    }

    private (Ledger Ledger, LedgerLessons All, Beliefs Beliefs) Read()
    {
        if (known is not { } read || !ReferenceEquals(read.Ledger, session.Ledger))
        {
            var lessons = LedgerLessons.Of(session.Ledger, known?.All ?? begun);
            known = read = (session.Ledger, lessons, lessons.BeliefsAsOf(clock.Now));
            begun = null;
        }

        return read;
    }
}
