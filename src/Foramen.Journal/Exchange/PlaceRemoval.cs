using System.Text;
using System.Text.Json;
using Foramen.Journal.Entries;

namespace Foramen.Journal.Exchange;

/// <summary>
/// Takes coordinates out of entries before a journal is shared: every member, at any depth and in any kind of entry, whose name begins with
/// <c>latitude</c>, <c>longitude</c>, <c>altitude</c> or <c>gps</c>, whatever the case. Names and notes that people wrote stay.
/// </summary>
public static class PlaceRemoval
{
    private static readonly string[] Prefixes = ["latitude", "longitude", "altitude", "gps"];

    /// <summary>
    /// The entry without coordinates: itself if it has none, else a copy with its own hash that says which entry it was made from, so that it
    /// neither replaces nor contradicts the full one where both meet.
    /// </summary>
    public static Entry From(Entry entry)
    {
        var bytes = Encoding.UTF8.GetBytes(entry.Body);
        var body = Without(bytes);
        return body is null
            ? entry
            : Entry.CreateRaw(
                entry.Id, entry.Device, entry.Sequence, entry.At, entry.Kind, entry.Version, body, entry.RedactedFrom ?? entry.Hash);
    }

    // Cuts the members out of the raw bytes, each with one comma beside it; all else stays as it was, to the byte.
    private static string? Without(byte[] body)
    {
        List<byte>? kept = null;
        var from = 0;
        var reader = new Utf8JsonReader(body, new JsonReaderOptions { MaxDepth = Entry.MaxDepth });
        while (reader.Read())
        {
            if (reader.TokenType != JsonTokenType.PropertyName || !IsPlace(ref reader))
            {
                continue;
            }

            kept ??= new List<byte>(body.Length);
            kept.AddRange(body.AsSpan(from, (int)reader.TokenStartIndex - from));
            reader.Read();
            reader.Skip();
            from = (int)reader.BytesConsumed;
            var comma = from;
            while (IsSpace(body[comma]))
            {
                comma++;
            }

            if (body[comma] == (byte)',')
            {
                from = comma + 1;
                continue;
            }

            while (IsSpace(kept[^1]))
            {
                kept.RemoveAt(kept.Count - 1);
            }

            if (kept[^1] == (byte)',')
            {
                kept.RemoveAt(kept.Count - 1);
            }
        }

        kept?.AddRange(body.AsSpan(from));
        return kept is null ? null : Encoding.UTF8.GetString(kept.ToArray());
    }

    private static bool IsSpace(byte character) => character is (byte)' ' or (byte)'\t';

    private static bool IsPlace(ref Utf8JsonReader reader)
        => JsonText.OrNull(ref reader) is { } name && Prefixes.Any(prefix => name.StartsWith(prefix, StringComparison.OrdinalIgnoreCase));
}
