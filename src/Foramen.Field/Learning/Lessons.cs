using Foramen.Engine.Learning;
using Foramen.Field.Storage;
using Foramen.Field.Time;
using Foramen.Journal.Fold;
using Foramen.Journal.Learning;

namespace Foramen.Field.Learning;

/// <summary>What the journal on this device teaches; worked out once for each state of the journal.</summary>
public sealed class Lessons(JournalSession session, Clock clock)
{
    private (Ledger Ledger, LedgerLessons All, Beliefs Beliefs)? known;

    /// <summary>Every judged sheet as a lesson.</summary>
    public LedgerLessons All => Read().All;

    /// <summary>What is believed after them.</summary>
    public Beliefs Beliefs => Read().Beliefs;

    /// <summary>The share of keepers, with one kept and one lost sheet before the first (Laplace's rule of succession): never quite none or all.</summary>
    public double HitRate => (All.Keepers.Count(kept => kept) + 1.0) / (All.Keepers.Count + 2.0);

    private (Ledger Ledger, LedgerLessons All, Beliefs Beliefs) Read()
    {
        if (known is not { } read || !ReferenceEquals(read.Ledger, session.Ledger))
        {
            var lessons = LedgerLessons.Of(session.Ledger, known?.All);
            known = read = (session.Ledger, lessons, lessons.BeliefsAsOf(clock.Now));
        }

        return read;
    }
}
