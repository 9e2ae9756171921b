using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Unicode;
using Foramen.Engine.Quantities;
using Foramen.Journal.Entries;

namespace Foramen.Journal.Exchange;

/// <summary>
/// The journal as a file that outlives this software: JSON lines in UTF-8, a header and one entry a line. docs/journal-format.md is the exact
/// description.
/// </summary>
public static class JournalFile
{
    /// <summary>The version this code writes.</summary>
    public const int FormatVersion = 1;

    /// <summary>The usual ending of a file's name.</summary>
    public const string Extension = ".foramen.jsonl";

    /// <summary>The media type of JSON lines.</summary>
    public const string MediaType = "application/jsonl";

    private const string HeaderMember = "foramenJournal";

    /// <summary>The whole set as a file, in its order, with what stands in a conflict at the end.</summary>
    /// <param name="entries">The entries.</param>
    /// <param name="withoutPlaces">Whether to leave coordinates out: see <see cref="PlaceRemoval"/>.</param>
    public static byte[] Write(EntrySet entries, bool withoutPlaces = false)
    {
        var ordered = entries.InOrder.Select(item => item.Entry).ToList();
        var counting = ordered.ToHashSet();
        var rest = entries.All.Where(entry => !counting.Contains(entry)).OrderBy(entry => entry.Id).ThenBy(entry => entry.Hash, StringComparer.Ordinal);
        return Write(ordered.Concat(rest), withoutPlaces);
    }

    /// <summary>These entries as a file, in this order.</summary>
    /// <param name="entries">The entries.</param>
    /// <param name="withoutPlaces">Whether to leave coordinates out: see <see cref="PlaceRemoval"/>.</param>
    public static byte[] Write(IEnumerable<Entry> entries, bool withoutPlaces = false)
    {
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"{{\"{HeaderMember}\":{FormatVersion}");
        text.Append(withoutPlaces ? ",\"withoutPlaces\":true}\n" : "}\n");
        foreach (var entry in entries)
        {
            text.Append(EntryLine.Write(withoutPlaces ? PlaceRemoval.From(entry) : entry)).Append('\n');
        }

        return Encoding.UTF8.GetBytes(text.ToString());
    }

    /// <summary>
    /// Reads a file: keeps what is good, lists what is not. Changes nothing; join <see cref="ImportResult.Entries"/> to a set to take it in. A file of a
    /// newer format is read as far as its lines can be understood.
    /// </summary>
    /// <param name="file">The bytes of the file, any bytes.</param>
    /// <param name="limits">How much to take in.</param>
    /// <exception cref="RefusalException">The file has neither the header nor one good entry: it is no journal at all.</exception>
    public static ImportResult Read(ReadOnlySpan<byte> file, ImportLimits? limits = null)
    {
        limits ??= ImportLimits.Usual;
        var entries = new List<Entry>();
        var bad = new List<BadLine>();
        var badCount = 0;
        var format = 0;
        var withoutPlaces = false;
        var number = 0;
        var rest = file.StartsWith("\uFEFF"u8) ? file[3..] : file;
        while (!rest.IsEmpty)
        {
            var end = rest.IndexOf((byte)'\n');
            var line = Trim(end < 0 ? rest : rest[..end]);
            rest = end < 0 ? [] : rest[(end + 1)..];
            number++;
            if (line.IsEmpty)
            {
                continue;
            }

            if (line.Length > limits.MaxLineBytes)
            {
                Bad($"The line has {line.Length} bytes; at most {limits.MaxLineBytes} are allowed.");
                continue;
            }

            if (number == 1 && TryReadHeader(line, out format, out withoutPlaces))
            {
                continue;
            }

            if (entries.Count >= limits.MaxEntries)
            {
                Bad($"The file has more than {limits.MaxEntries} entries; what follows from this line on was not read.");
                break;
            }

            // Once nothing more is listed, rubbish is counted without the cost of saying what is wrong with it.
            if (bad.Count >= limits.MaxListed && (line[0] != '{' || line[^1] != '}'))
            {
                badCount++;
                continue;
            }

            try
            {
                entries.Add(EntryLine.Read(line));
            }
            catch (RefusalException e)
            {
                Bad(number == 1 ? "The first line should be the header, {\"" + HeaderMember + "\":1}; it is damaged or missing." : e.Message);
            }
        }

        return format > 0 || entries.Count > 0
            ? new ImportResult(format, withoutPlaces, entries, bad, badCount)
            : throw new RefusalException("This is not a Foramen journal: its first line should begin with {\"" + HeaderMember + "\":1.");

        void Bad(string sentence)
        {
            badCount++;
            if (bad.Count < limits.MaxListed)
            {
                bad.Add(new BadLine(number, sentence));
            }
        }
    }

    private static ReadOnlySpan<byte> Trim(ReadOnlySpan<byte> line) => line.Trim(" \t\r"u8);

    private static bool TryReadHeader(ReadOnlySpan<byte> line, out int format, out bool withoutPlaces)
    {
        format = 0;
        withoutPlaces = false;
        if (!Utf8.IsValid(line))
        {
            return false;
        }

        var found = 0;
        var places = true;
        try
        {
            var reader = new Utf8JsonReader(line, new JsonReaderOptions { MaxDepth = Entry.MaxDepth });
            if (!reader.Read() || reader.TokenType != JsonTokenType.StartObject)
            {
                return false;
            }

            while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
            {
                var name = JsonText.OrNull(ref reader);
                reader.Read();
                if (name == HeaderMember && (reader.TokenType != JsonTokenType.Number || !reader.TryGetInt32(out found)))
                {
                    return false;
                }

                places &= name != "withoutPlaces" || reader.TokenType != JsonTokenType.True;
                reader.Skip();
            }

            // Reading on past the object makes rubbish behind it show.
            if (reader.TokenType != JsonTokenType.EndObject || reader.Read() || found < 1)
            {
                return false;
            }
        }
        catch (JsonException)
        {
            return false;
        }

        format = found;
        withoutPlaces = !places;
        return true;
    }
}
