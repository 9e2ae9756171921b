using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Unicode;
using Foramen.Engine.Quantities;
using Foramen.Journal.Entries;

namespace Foramen.Journal.Exchange;

/// <summary>One entry as one line of JSON: in a journal file, in a store, on the wire. The body stands in it byte for byte.</summary>
public static class EntryLine
{
    private const string BodyStart = "\"body\":";
    private const string HashStart = ",\"hash\":\"";
    private const string InstantFormat = "yyyy-MM-dd'T'HH:mm:ss.fff'Z'";

    /// <summary>The line, without a line break.</summary>
    public static string Write(Entry entry)
    {
        // Ids, devices, kinds and hashes hold no character that JSON would escape.
        var line = new StringBuilder(entry.Body.Length + 400)
            .Append("{\"id\":\"").Append(entry.Id.ToString())
            .Append("\",\"device\":\"").Append(entry.Device.Text)
            .Append("\",\"sequence\":").Append(entry.Sequence.ToString(CultureInfo.InvariantCulture))
            .Append(",\"at\":\"").Append(entry.At.UtcDateTime.ToString(InstantFormat, CultureInfo.InvariantCulture))
            .Append("\",\"offsetMinutes\":").Append(((int)entry.At.Offset.TotalMinutes).ToString(CultureInfo.InvariantCulture))
            .Append(",\"kind\":\"").Append(entry.Kind)
            .Append("\",\"version\":").Append(entry.Version.ToString(CultureInfo.InvariantCulture));
        if (entry.RedactedFrom is { } full)
        {
            line.Append(",\"redactedFrom\":\"").Append(full).Append('"');
        }

        return line.Append(",\"body\":").Append(entry.Body).Append(",\"hash\":\"").Append(entry.Hash).Append("\"}").ToString();
    }

    /// <summary>Reads a line.</summary>
    /// <param name="line">One line of JSON.</param>
    /// <param name="check">When to check its hash.</param>
    /// <exception cref="RefusalException">Not an entry, or damaged; the sentence says where.</exception>
    public static Entry Read(string line, HashCheck check = HashCheck.Now) => Read(Encoding.UTF8.GetBytes(line), check);

    /// <summary>Reads a line of UTF-8.</summary>
    /// <param name="line">One line of JSON.</param>
    /// <param name="check">When to check its hash.</param>
    /// <exception cref="RefusalException">Not an entry, or damaged; the sentence says where.</exception>
    public static Entry Read(ReadOnlySpan<byte> line, HashCheck check = HashCheck.Now)
    {
        if (!Utf8.IsValid(line))
        {
            throw new RefusalException("The line is not UTF-8 text.");
        }

        try
        {
            return ReadMembers(line, check);
        }
        catch (JsonException e)
        {
            throw new RefusalException($"The line is not JSON of at most {Entry.MaxDepth} levels; the trouble is at byte {e.BytePositionInLine}.", e);
        }
        catch (InvalidOperationException e)
        {
            // Half a character pair, written as an escape.
            throw new RefusalException("The line holds text that is not Unicode.", e);
        }
    }

    /// <summary>
    /// A line of a device's own store, on trust: as <see cref="Write"/> has written it, it is only cut into its members, neither its body nor its hash is looked at; check
    /// it later with <see cref="Entry.IsIntact"/>. Any other line is read as by <see cref="Read(string, HashCheck)"/>.
    /// </summary>
    /// <exception cref="RefusalException">Not an entry, or damaged; the sentence says where.</exception>
    public static Entry ReadTrusted(string line)
    {
        var rest = line.AsSpan();
        if (!Cut(ref rest, "{\"id\":\"", '"', out var id)
            || !Cut(ref rest, ",\"device\":\"", '"', out var device)
            || !Cut(ref rest, ",\"sequence\":", ',', out var sequence)
            || !Cut(ref rest, "\"at\":\"", '"', out var at)
            || !Cut(ref rest, ",\"offsetMinutes\":", ',', out var offset)
            || !Cut(ref rest, "\"kind\":\"", '"', out var kind)
            || !Cut(ref rest, ",\"version\":", ',', out var version)
            || !rest.StartsWith(BodyStart, StringComparison.Ordinal)
            || rest.Length < BodyStart.Length + HashStart.Length + 68
            || !rest[^(66 + HashStart.Length)..].StartsWith(HashStart, StringComparison.Ordinal)
            || !long.TryParse(sequence, NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            || !int.TryParse(offset, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var minutes)
            || !int.TryParse(version, NumberStyles.None, CultureInfo.InvariantCulture, out var edition))
        {
            return Read(line);
        }

        var body = rest[BodyStart.Length..^(66 + HashStart.Length)];
        var hash = rest[^66..^2];
        return body[0] != '{' || body[^1] != '}' || !rest.EndsWith("\"}", StringComparison.Ordinal) || !ContentHash.Is(hash)
            ? Read(line)
            : Entry.Assemble(Ulid.Parse(id.ToString()), DeviceId.Parse(device.ToString()), number, Instant(at.ToString(), minutes), kind.ToString(), edition, body.ToString(), null, hash.ToString());
    }

    private static bool Cut(ref ReadOnlySpan<char> rest, string before, char end, out ReadOnlySpan<char> member)
    {
        member = default;
        if (!rest.StartsWith(before, StringComparison.Ordinal))
        {
            return false;
        }

        rest = rest[before.Length..];
        var length = rest.IndexOf(end);
        if (length < 0)
        {
            return false;
        }

        member = rest[..length];
        rest = rest[(length + 1)..];
        return true;
    }

    private static Entry ReadMembers(ReadOnlySpan<byte> line, HashCheck check)
    {
        var reader = new Utf8JsonReader(line, new JsonReaderOptions { MaxDepth = Entry.MaxDepth });
        if (!reader.Read() || reader.TokenType != JsonTokenType.StartObject)
        {
            throw new RefusalException("The line should be one JSON object.");
        }

        string? id = null, device = null, at = null, kind = null, body = null, hash = null, redactedFrom = null;
        long? sequence = null, offsetMinutes = null, version = null;
        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            var name = reader.GetString()!;
            reader.Read();
            switch (name)
            {
                case "id":
                    id = Text(ref reader, name, id);
                    break;
                case "device":
                    device = Text(ref reader, name, device);
                    break;
                case "sequence":
                    sequence = Whole(ref reader, name, sequence);
                    break;
                case "at":
                    at = Text(ref reader, name, at);
                    break;
                case "offsetMinutes":
                    offsetMinutes = Whole(ref reader, name, offsetMinutes);
                    break;
                case "kind":
                    kind = Text(ref reader, name, kind);
                    break;
                case "version":
                    version = Whole(ref reader, name, version);
                    break;
                case "redactedFrom":
                    redactedFrom = Text(ref reader, name, redactedFrom);
                    break;
                case "body":
                    body = Body(ref reader, line, body);
                    break;
                case "hash":
                    hash = Text(ref reader, name, hash);
                    break;
                default:
                    // The hash does not cover it, so it could neither be trusted nor passed on.
                    throw new RefusalException($"The entry has a member “{Short(name)}”, which this format does not know.");
            }
        }

        // One more read refuses what stands behind the object.
        reader.Read();

        var written = Need(hash, "hash");
        if (!ContentHash.Is(written))
        {
            throw new RefusalException("The entry's “hash” should be 64 lower-case hexadecimal digits.");
        }

        var entry = Entry.Assemble(
            Ulid.Parse(Need(id, "id")),
            DeviceId.Parse(Need(device, "device")),
            Need(sequence, "sequence"),
            Instant(Need(at, "at"), Need(offsetMinutes, "offsetMinutes")),
            Need(kind, "kind"),
            (int)Math.Clamp(Need(version, "version"), 0, int.MaxValue),
            Need(body, "body"),
            redactedFrom,
            check == HashCheck.Later ? written : null);
        return entry.Hash == written
            ? entry
            : throw new RefusalException("The entry does not match its hash; it was damaged or changed.");
    }

    private static string Text(ref Utf8JsonReader reader, string name, string? known)
    {
        Once(name, known is not null);
        return reader.TokenType == JsonTokenType.String
            ? reader.GetString()!
            : throw new RefusalException($"The entry's “{name}” should be a text.");
    }

    private static long Whole(ref Utf8JsonReader reader, string name, long? known)
    {
        Once(name, known is not null);
        return reader.TokenType == JsonTokenType.Number && reader.TryGetInt64(out var value)
            ? value
            : throw new RefusalException($"The entry's “{name}” should be a whole number.");
    }

    private static string Body(ref Utf8JsonReader reader, ReadOnlySpan<byte> line, string? known)
    {
        Once("body", known is not null);
        if (reader.TokenType != JsonTokenType.StartObject)
        {
            throw new RefusalException("The entry's “body” should be a JSON object.");
        }

        var start = (int)reader.TokenStartIndex;
        reader.Skip();
        var body = line[start..(int)reader.BytesConsumed];
        if (body.Length > Entry.MaxBodyBytes)
        {
            throw new RefusalException($"The body has {body.Length} bytes; at most {Entry.MaxBodyBytes} are allowed.");
        }

        return body.ContainsAny((byte)'\n', (byte)'\r')
            ? throw new RefusalException("The body holds a line break; it should be JSON on one line.")
            : Encoding.UTF8.GetString(body);
    }

    private static void Once(string name, bool seen)
    {
        if (seen)
        {
            throw new RefusalException($"The entry has “{name}” twice.");
        }
    }

    private static T Need<T>(T? value, string name)
        where T : class => value ?? throw Missing(name);

    private static long Need(long? value, string name) => value ?? throw Missing(name);

    private static RefusalException Missing(string name) => new($"The entry has no “{name}”.");

    private static DateTimeOffset Instant(string at, long offsetMinutes)
    {
        if (offsetMinutes is < -840 or > 840)
        {
            throw new RefusalException($"The offset from UTC is {offsetMinutes} min; it should be between -840 and 840 min.");
        }

        // Nearly always it is written just so; the general reader takes a quarter of a start of the app.
        if (!TryInstant(at, out var utc) && !DateTime.TryParseExact(
                at, InstantFormat, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal | DateTimeStyles.AdjustToUniversal, out utc)
            || utc.Year is < 1970 or > 2199)
        {
            throw new RefusalException($"“{Short(at)}” is not an instant like 2026-05-03T12:00:00.000Z between 1970 and 2199.");
        }

        return new DateTimeOffset(utc, TimeSpan.Zero).ToOffset(TimeSpan.FromMinutes(offsetMinutes));
    }

    // yyyy-MM-ddTHH:mm:ss.fffZ
    private static bool TryInstant(string at, out DateTime utc)
    {
        utc = default;
        if (at is not [_, _, _, _, '-', _, _, '-', _, _, 'T', _, _, ':', _, _, ':', _, _, '.', _, _, _, 'Z'])
        {
            return false;
        }

        var good = true;
        int Number(int from, int count)
        {
            var number = 0;
            for (var i = from; i < from + count; i++)
            {
                good &= char.IsAsciiDigit(at[i]);
                number = (10 * number) + (at[i] - '0');
            }

            return number;
        }

        var (year, month, day) = (Number(0, 4), Number(5, 2), Number(8, 2));
        var (hour, minute, second, milliseconds) = (Number(11, 2), Number(14, 2), Number(17, 2), Number(20, 3));
        if (!good || year is < 1 || month is < 1 or > 12 || day < 1 || day > DateTime.DaysInMonth(year, month) || hour > 23 || minute > 59 || second > 59)
        {
            return false;
        }

        utc = new DateTime(year, month, day, hour, minute, second, milliseconds, DateTimeKind.Utc);
        return true;
    }

    private static string Short(string text) => text.Length <= 40 ? text : text[..40] + "…";
}
