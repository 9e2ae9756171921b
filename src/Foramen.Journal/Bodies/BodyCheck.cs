using Foramen.Engine.Quantities;

namespace Foramen.Journal.Bodies;

/// <summary>Ranges that many bodies share.</summary>
internal static class BodyCheck
{
    public const double DaySeconds = 86_400;
    private const int MaxName = 200;
    private const int MaxNote = 20_000;
    private const int MaxPixels = 100_000;

    public static void Name(string? text, string what) => Length(text, MaxName, what);

    public static void Note(string? text) => Length(text, MaxNote, "the note");

    public static void Required(string text, string what)
    {
        if (string.IsNullOrWhiteSpace(text))
        {
            throw new RefusalException($"{char.ToUpperInvariant(what[0])}{what[1..]} is empty; it should be a word or two.");
        }

        Name(text, what);
    }

    public static void Optional(double? value, double min, double max, string what, string unit = "")
    {
        if (value is { } number)
        {
            Guard.Within(number, min, max, what, unit);
        }
    }

    public static void Count<T>(IReadOnlyList<T>? list, int max, string what)
    {
        if (list is not null && (list.Count > max || list.Any(item => item is null)))
        {
            throw new RefusalException($"There are {list.Count} {what}, or an empty one among them; at most {max} are allowed, none empty.");
        }
    }

    public static void Picture(string hash, int width, int height, string mediaType, long? bytes)
    {
        if (!ContentHash.Is(hash))
        {
            throw new RefusalException("The content hash should be SHA-256 as 64 lower-case hexadecimal digits.");
        }

        Guard.Within(width, 1, MaxPixels, "the picture's width", "pixels");
        Guard.Within(height, 1, MaxPixels, "the picture's height", "pixels");
        Required(mediaType, "the media type");
        Optional(bytes, 0, 1e12, "the picture's size", "bytes");
    }

    private static void Length(string? text, int max, string what)
    {
        if (text is not null && text.Length > max)
        {
            throw new RefusalException($"{char.ToUpperInvariant(what[0])}{what[1..]} has {text.Length} characters; at most {max} are allowed.");
        }
    }
}
