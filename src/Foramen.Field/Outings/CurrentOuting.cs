using Foramen.Journal.Fold;

namespace Foramen.Field.Outings;

/// <summary>Which outing a new sheet belongs to.</summary>
public static class CurrentOuting
{
    /// <summary>An outing lasts for this long after it was started.</summary>
    public static readonly TimeSpan Length = TimeSpan.FromHours(18);

    /// <summary>The latest outing that is not over, or null.</summary>
    public static Outing? Of(Ledger ledger, DateTimeOffset now)
        => ledger.Outings.All.LastOrDefault(outing => outing.Started is { } started && now - started.At < Length);
}
