using System.Buffers.Binary;
using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Serialization;
using Foramen.Engine.Quantities;

namespace Foramen.Journal;

/// <summary>
/// The name of an entry, or of a thing that entries speak of (a sheet, a camera, a tone): 48 bits of Unix milliseconds, then 80 bits of chance,
/// written as 26 characters of Crockford's base 32 (the public ULID specification). Ordered by value, which is also the order of the text.
/// </summary>
/// <remarks>The default value is <c>00000000000000000000000000</c>. Immutable. Nothing here draws chance or reads a clock: both come in.</remarks>
[JsonConverter(typeof(UlidJsonConverter))]
public readonly record struct Ulid : IComparable<Ulid>
{
    /// <summary>Characters of the text form.</summary>
    public const int TextLength = 26;

    /// <summary>Bytes of chance in one id.</summary>
    public const int ChanceBytes = 10;

    private const string Alphabet = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";

    // By code of the character: its digit, or 255. A start of the app reads a hundred thousand ids, so no character is searched for.
    private static readonly byte[] Digits =
        [.. Enumerable.Range(0, 128).Select(code => Alphabet.IndexOf(char.ToUpperInvariant((char)code), StringComparison.Ordinal) is >= 0 and var digit ? (byte)digit : byte.MaxValue)];

    private readonly UInt128 value;

    private Ulid(UInt128 value) => this.value = value;

    /// <summary>The milliseconds since 1970-01-01T00:00:00Z in it.</summary>
    public long UnixMilliseconds => (long)(value >> 80);

    /// <summary>An id from an instant and ten bytes of chance.</summary>
    /// <param name="at">The instant, 1970 or later; only its milliseconds count.</param>
    /// <param name="chance">Exactly ten bytes from a good source of chance.</param>
    /// <exception cref="RefusalException">An instant before 1970, or another number of bytes.</exception>
    public static Ulid From(DateTimeOffset at, ReadOnlySpan<byte> chance)
    {
        var milliseconds = at.ToUnixTimeMilliseconds();
        if (milliseconds < 0)
        {
            throw new RefusalException("An id cannot be made for an instant before 1970; set the clock.");
        }

        if (chance.Length != ChanceBytes)
        {
            throw new RefusalException($"An id takes {ChanceBytes} bytes of chance, not {chance.Length}.");
        }

        var number = (UInt128)(ulong)milliseconds;
        foreach (var part in chance)
        {
            number = (number << 8) | part;
        }

        return new Ulid(number);
    }

    /// <summary>The 16 bytes of the value, most significant first: their order is that of the ids.</summary>
    public byte[] ToBytes()
    {
        var bytes = new byte[16];
        BinaryPrimitives.WriteUInt128BigEndian(bytes, value);
        return bytes;
    }

    /// <summary>Reads the text form; upper or lower case.</summary>
    /// <exception cref="RefusalException">The text is not an id.</exception>
    public static Ulid Parse(string text)
        => TryParse(text, out var id) ? id : throw new RefusalException(
            $"“{Shown(text)}” is not an id; an id has {TextLength} characters of Crockford's base 32.");

    /// <summary>Reads the text form; upper or lower case.</summary>
    public static bool TryParse([NotNullWhen(true)] string? text, out Ulid id) => TryParse(text.AsSpan(), out id);

    /// <summary>Reads the text form; upper or lower case.</summary>
    public static bool TryParse(ReadOnlySpan<char> text, out Ulid id)
    {
        id = default;
        // 26 characters of five bits hold 130; the first may only use three.
        if (text.Length != TextLength || text[0] is < '0' or > '7')
        {
            return false;
        }

        // 63 bits, 5 and 60: in parts the arithmetic stays that of the machine.
        if (!TryRead(text[..13], out var first) || !TryRead(text[13..14], out var between) || !TryRead(text[14..], out var last))
        {
            return false;
        }

        id = new Ulid(new UInt128((first << 1) | (between >> 4), (between << 60) | last));
        return true;
    }

    /// <inheritdoc/>
    public int CompareTo(Ulid other) => value.CompareTo(other.value);

    /// <summary>Whether the left comes first.</summary>
    public static bool operator <(Ulid left, Ulid right) => left.value < right.value;

    /// <summary>Whether the left comes first, or both are the same.</summary>
    public static bool operator <=(Ulid left, Ulid right) => left.value <= right.value;

    /// <summary>Whether the left comes last.</summary>
    public static bool operator >(Ulid left, Ulid right) => left.value > right.value;

    /// <summary>Whether the left comes last, or both are the same.</summary>
    public static bool operator >=(Ulid left, Ulid right) => left.value >= right.value;

    /// <summary>The 26 characters, in upper case.</summary>
    public override string ToString() => string.Create(TextLength, value, static (text, number) =>
    {
        for (var i = TextLength - 1; i >= 0; i--)
        {
            text[i] = Alphabet[(int)(uint)(number & 31)];
            number >>= 5;
        }
    });

    private static bool TryRead(ReadOnlySpan<char> digits, out ulong number)
    {
        number = 0;
        foreach (var character in digits)
        {
            var digit = character < Digits.Length ? Digits[character] : byte.MaxValue;
            if (digit == byte.MaxValue)
            {
                return false;
            }

            number = (number << 5) | digit;
        }

        return true;
    }

    private static string Shown(string? text) => text is null ? "" : text.Length <= 40 ? text : text[..40] + "…";
}
