using System.Buffers;

namespace Foramen.Journal;

/// <summary>The name of a content: its SHA-256, written as 64 lower-case hexadecimal digits.</summary>
public static class ContentHash
{
    private const int Digits = 64;

    private static readonly SearchValues<char> HexDigits = SearchValues.Create("0123456789abcdef");

    /// <summary>Whether a text is written so.</summary>
    public static bool Is(ReadOnlySpan<char> text) => text.Length == Digits && !text.ContainsAnyExcept(HexDigits);
}
