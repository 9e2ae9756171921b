using System.Globalization;
using System.Text;

namespace Foramen.Journal.Listing;

/// <summary>
/// The ledger as comma-separated values (RFC 4180) with a line of names, UTF-8; numbers and times in the invariant culture, units in the names. A text that a
/// spreadsheet would take for a formula is preceded by an apostrophe.
/// </summary>
public static class LedgerCsv
{
    /// <summary>Usual ending of the file.</summary>
    public const string Extension = ".csv";

    /// <summary>Its media type (RFC 7111).</summary>
    public const string MediaType = "text/csv";

    private static readonly (string Name, Func<LedgerRow, string?> Value)[] Columns =
    [
        ("number", row => Text(row.Number)),
        ("sheet", row => row.Sheet.ToString()),
        ("name", row => Safe(row.Name)),
        ("loadedAt", row => row.LoadedAt?.ToString("yyyy-MM-ddTHH:mm:sszzz", CultureInfo.InvariantCulture)),
        ("outing", row => Safe(row.Outing)),
        ("place", row => Safe(row.Place)),
        ("camera", row => Safe(row.Camera)),
        ("paper", row => Safe(row.Paper)),
        ("light", row => row.Light),
        ("plannedSeconds", row => Text(row.PlannedSeconds)),
        ("flashSeconds", row => Text(row.FlashSeconds)),
        ("odds", row => Text(row.Odds)),
        ("openSeconds", row => Text(row.OpenSeconds)),
        ("keeper", row => row.Keeper switch { true => "yes", false => "no", null => null }),
        ("lighterByStops", row => Text(row.LighterByStops)),
        ("causes", row => string.Join(' ', row.Causes.Select(cause => cause.ToString().ToLowerInvariant()))),
        ("note", row => Safe(row.Note)),
    ];

    /// <summary>These rows as a file.</summary>
    public static byte[] Write(IEnumerable<LedgerRow> rows)
    {
        var text = new StringBuilder();
        Line(text, Columns.Select(column => column.Name));
        foreach (var row in rows)
        {
            Line(text, Columns.Select(column => column.Value(row) ?? ""));
        }

        return Encoding.UTF8.GetBytes(text.ToString());
    }

    private static void Line(StringBuilder text, IEnumerable<string> values) => text.AppendJoin(',', values.Select(Quoted)).Append("\r\n");

    private static string Quoted(string value) => value.AsSpan().ContainsAny(",\"\r\n") ? $"\"{value.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : value;

    private static string? Safe(string? value) => value is ['=' or '+' or '-' or '@' or '\t' or '\r', ..] ? "'" + value : value;

    private static string? Text(double? value) => value?.ToString("0.####", CultureInfo.InvariantCulture);
}
