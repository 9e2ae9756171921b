using System.Buffers;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using Foramen.Engine.Quantities;
using Foramen.Journal.Bodies;

namespace Foramen.Journal.Entries;

/// <summary>
/// One thing that happened, as one device wrote it down. Never edited, never deleted. The body is kept as the very text it came in, so that
/// kinds and members this version does not know are passed on untouched; <see cref="Hash"/> covers everything.
/// </summary>
/// <remarks>Two entries are equal if their hashes are. Immutable.</remarks>
public sealed class Entry : IEquatable<Entry>
{
    /// <summary>Largest body, in bytes of UTF-8; with it a line of a journal file stays under 1 MiB.</summary>
    public const int MaxBodyBytes = 1_047_552;

    /// <summary>Deepest nesting of a line of a journal file: a body, and the line around it.</summary>
    public const int MaxDepth = BodyJson.MaxDepth + 1;

    /// <summary>Largest sequence number: every whole number up to it is exact in any JSON reader.</summary>
    public const long MaxSequence = 9_007_199_254_740_991;

    private const int MaxKindLength = 64;
    private const string CanonicalMark = "foramen-entry-1";

    private static readonly UTF8Encoding StrictUtf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    private static readonly SearchValues<char> KindCharacters =
        SearchValues.Create("ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789.-");

    private BodyReading? reading;

    private Entry(
        Ulid id, DeviceId device, long sequence, DateTimeOffset at, string kind, int version, string body, string? redactedFrom, string hash)
    {
        Id = id;
        Device = device;
        Sequence = sequence;
        At = at;
        Kind = kind;
        Version = version;
        Body = body;
        RedactedFrom = redactedFrom;
        Hash = hash;
    }

    /// <summary>The entry's name.</summary>
    public Ulid Id { get; }

    /// <summary>The device that wrote it.</summary>
    public DeviceId Device { get; }

    /// <summary>The device's own count of its entries, from 1.</summary>
    public long Sequence { get; }

    /// <summary>When, by the device's clock, to the millisecond, with the local offset from UTC. The clock may have been wrong.</summary>
    public DateTimeOffset At { get; }

    /// <summary>What kind of thing happened: see <see cref="EntryKind"/>. May be one that this version does not know.</summary>
    public string Kind { get; }

    /// <summary>Version of the body's schema, from 1. May be newer than what this version knows.</summary>
    public int Version { get; }

    /// <summary>The body: one JSON object, on one line, as it came.</summary>
    public string Body { get; }

    /// <summary>
    /// The hash of the entry that this is a shortened copy of (places removed before sharing), or null for the entry itself. Where both are
    /// at hand, the entry itself counts.
    /// </summary>
    public string? RedactedFrom { get; }

    /// <summary>SHA-256 over the canonical bytes, 64 lower-case hexadecimal digits. docs/journal-format.md says what the bytes are.</summary>
    public string Hash { get; }

    /// <summary>A new entry with a typed body.</summary>
    /// <param name="id">Its name.</param>
    /// <param name="device">The device that writes it.</param>
    /// <param name="sequence">The device's next number: 1 to 2⁵³ − 1.</param>
    /// <param name="at">Now, by the device's clock, with its local offset; cut to milliseconds; 1970 to 2199.</param>
    /// <param name="body">What happened.</param>
    /// <exception cref="RefusalException">A value outside its range, in the envelope or in the body.</exception>
    public static Entry Create(Ulid id, DeviceId device, long sequence, DateTimeOffset at, EntryBody body)
    {
        body.Check();
        return CreateRaw(id, device, sequence, at, body.Kind, body.SchemaVersion, BodyJson.Write(body));
    }

    /// <summary>An entry with a body in its raw text; the kind need not be known here.</summary>
    /// <exception cref="RefusalException">A value outside its range, or a body that is not one JSON object on one line within the limits.</exception>
    public static Entry CreateRaw(
        Ulid id, DeviceId device, long sequence, DateTimeOffset at, string kind, int version, string body, string? redactedFrom = null)
    {
        CheckBody(body);
        return Assemble(id, device, sequence, at, kind, version, body, redactedFrom);
    }

    /// <summary>
    /// As <see cref="CreateRaw"/> for a body that has already been read as JSON, within the limits, from one line of strict UTF-8. The
    /// hash is computed unless it is given on trust.
    /// </summary>
    internal static Entry Assemble(
        Ulid id, DeviceId device, long sequence, DateTimeOffset at, string kind, int version, string body, string? redactedFrom, string? hash = null)
    {
        if (sequence is < 1 or > MaxSequence)
        {
            throw new RefusalException($"The sequence number is {sequence}; it should be between 1 and {MaxSequence}.");
        }

        var milliseconds = at.ToUnixTimeMilliseconds();
        if (at.UtcDateTime.Year is < 1970 or > 2199 || milliseconds < 0)
        {
            throw new RefusalException(string.Create(
                CultureInfo.InvariantCulture, $"The instant is {at.UtcDateTime:yyyy-MM-dd}; it should be between 1970 and 2199."));
        }

        if (!IsKind(kind))
        {
            throw new RefusalException("A kind has 1 to 64 letters, digits, dots and dashes, such as “hole.opened”.");
        }

        if (version < 1)
        {
            throw new RefusalException($"The schema version is {version}; it should be 1 or more.");
        }

        if (redactedFrom is not null && !ContentHash.Is(redactedFrom))
        {
            throw new RefusalException("The hash of the full entry should be 64 lower-case hexadecimal digits.");
        }

        var whole = DateTimeOffset.FromUnixTimeMilliseconds(milliseconds).ToOffset(at.Offset);
        hash ??= HashOf(id, device, sequence, whole, kind, version, body, redactedFrom);
        return new Entry(id, device, sequence, whole, kind, version, body, redactedFrom, hash);
    }

    /// <summary>Whether the hash fits the content. Always so unless the entry was read with <see cref="Exchange.HashCheck.Later"/>.</summary>
    public bool IsIntact() => Hash == HashOf(Id, Device, Sequence, At, Kind, Version, Body, RedactedFrom);

    /// <summary>Whether a text can be the kind of an entry.</summary>
    public static bool IsKind(string text) => text.Length is > 0 and <= MaxKindLength && !text.AsSpan().ContainsAnyExcept(KindCharacters);

    /// <summary>
    /// What the body says, by this version's knowledge. Unknown kinds and newer versions give neither body nor complaint; a body that does not
    /// fit its kind gives a complaint in one sentence. Read once and remembered.
    /// </summary>
    public BodyReading ReadBody() => reading ??= BodyJson.Read(Kind, Version, Body);

    /// <inheritdoc/>
    public bool Equals(Entry? other) => other is not null && Hash == other.Hash;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Entry);

    /// <inheritdoc/>
    public override int GetHashCode() => Hash.GetHashCode(StringComparison.Ordinal);

    /// <summary>Kind, device, number and id; for logs and failing tests.</summary>
    public override string ToString() => $"{Kind} {Device}#{Sequence} {Id}";

    private static void CheckBody(string body)
    {
        byte[] bytes;
        try
        {
            bytes = StrictUtf8.GetBytes(body);
        }
        catch (EncoderFallbackException e)
        {
            throw new RefusalException("The body holds half of a character pair; it should be whole Unicode text.", e);
        }

        if (bytes.Length > MaxBodyBytes)
        {
            throw new RefusalException($"The body has {bytes.Length} bytes; at most {MaxBodyBytes} are allowed.");
        }

        if (bytes.AsSpan().ContainsAny((byte)'\n', (byte)'\r'))
        {
            throw new RefusalException("The body holds a line break; it should be JSON on one line.");
        }

        if (bytes.Length == 0 || bytes[0] != (byte)'{' || bytes[^1] != (byte)'}')
        {
            throw new RefusalException("The body should be one JSON object, from { to }.");
        }

        try
        {
            var reader = new Utf8JsonReader(bytes, new JsonReaderOptions { MaxDepth = BodyJson.MaxDepth });
            while (reader.Read())
            {
            }
        }
        catch (JsonException e)
        {
            throw new RefusalException($"The body is not JSON of at most {BodyJson.MaxDepth} levels; the trouble is at byte {e.BytePositionInLine}.", e);
        }
    }

    private static string HashOf(
        Ulid id, DeviceId device, long sequence, DateTimeOffset at, string kind, int version, string body, string? redactedFrom)
    {
        // No field before the body can hold a line break, so the lines cannot be mistaken for one another.
        var head = string.Create(
            CultureInfo.InvariantCulture,
            $"{CanonicalMark}\n{id}\n{device.Text}\n{sequence}\n{at.ToUnixTimeMilliseconds()}\n{(int)at.Offset.TotalMinutes}\n{kind}\n{version}\n{redactedFrom}\n");
        var buffer = ArrayPool<byte>.Shared.Rent(Encoding.UTF8.GetMaxByteCount(head.Length + body.Length));
        try
        {
            var length = Encoding.UTF8.GetBytes(head, buffer);
            length += Encoding.UTF8.GetBytes(body, buffer.AsSpan(length));
            Span<byte> digest = stackalloc byte[SHA256.HashSizeInBytes];
            SHA256.HashData(buffer.AsSpan(0, length), digest);
            return Convert.ToHexStringLower(digest);
        }
        finally
        {
            ArrayPool<byte>.Shared.Return(buffer);
        }
    }
}
