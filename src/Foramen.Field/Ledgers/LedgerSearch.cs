using Foramen.Field.Texts;
using Foramen.Journal.Listing;

namespace Foramen.Field.Ledgers;

/// <summary>What of the ledger is shown, and in which groups.</summary>
/// <param name="Text">Words that must all occur in a sheet's name, note, outing, place, camera, paper or light; empty for all.</param>
/// <param name="Kept">Keepers, those that were not kept, or (null) all.</param>
/// <param name="By">What stands together.</param>
public sealed record LedgerSearch(string Text = "", bool? Kept = null, LedgerGrouping By = LedgerGrouping.None)
{
    /// <summary>The sheets asked for, newest first, in groups by name; a single group without a name where nothing is grouped.</summary>
    public IReadOnlyList<(string? Group, IReadOnlyList<LedgerRow> Rows)> In(IReadOnlyList<LedgerRow> rows)
    {
        var found = rows.Reverse().Where(Fits).ToList();
        return By == LedgerGrouping.None
            ? [(null, found)]
            : [.. found
                .GroupBy(GroupOf, StringComparer.Ordinal)
                .OrderBy(group => group.Key is null)
                .ThenBy(group => group.Key, StringComparer.CurrentCulture)
                .Select(group => (group.Key ?? Words.Records.NotSaid, (IReadOnlyList<LedgerRow>)[.. group]))];
    }

    private bool Fits(LedgerRow row)
        => (Kept is not { } kept || row.Keeper == kept)
            && Text.Split(' ', StringSplitOptions.RemoveEmptyEntries).All(word => Said(row).Any(text => text.Contains(word, StringComparison.CurrentCultureIgnoreCase)));

    private string? GroupOf(LedgerRow row) => By switch
    {
        LedgerGrouping.Paper => row.Paper,
        LedgerGrouping.Place => row.Place ?? row.Outing,
        _ => row.Light,
    };

    private static IEnumerable<string> Said(LedgerRow row)
        => new[] { Words.Records.Name(row), row.Note, row.Outing, row.Place, row.Camera, row.Paper, row.Light }.OfType<string>();
}
