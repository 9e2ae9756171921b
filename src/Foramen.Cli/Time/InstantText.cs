using System.Globalization;
using System.Text.RegularExpressions;
using Foramen.Engine.Quantities;

namespace Foramen.Cli.Time;

/// <summary>Reads and writes instants as RFC 3339 has them: <c>2024-06-20T14:05:00+02:00</c>. The offset is never guessed.</summary>
internal static partial class InstantText
{
    private static readonly string[] Formats =
        ["yyyy-MM-dd'T'HH:mmzzz", "yyyy-MM-dd'T'HH:mm:sszzz", "yyyy-MM-dd'T'HH:mm:ss.FFFFFFFzzz"];

    /// <summary>Reads an instant.</summary>
    /// <exception cref="RefusalException">Not an instant, or one without an offset.</exception>
    public static DateTimeOffset Parse(string text, string what)
    {
        var trimmed = text.Trim();
        if (Pattern().Match(trimmed) is not { Success: true } match)
        {
            throw new RefusalException($"{what} is \"{text}\"; write it with its offset from universal time, such as 2024-06-20T14:05:00+02:00.");
        }

        if (!match.Groups["offset"].Success)
        {
            throw new RefusalException($"{what} is \"{text}\" without an offset from universal time; write it with one, such as {trimmed}+02:00 or {trimmed}Z.");
        }

        var plain = trimmed.EndsWith('Z') || trimmed.EndsWith('z') ? trimmed[..^1] + "+00:00" : trimmed;
        return DateTimeOffset.TryParseExact(plain.ToUpperInvariant(), Formats, CultureInfo.InvariantCulture, DateTimeStyles.None, out var instant)
            ? instant
            : throw new RefusalException($"{what} is \"{text}\", and there is no such day or time; write it like 2024-06-20T14:05:00+02:00.");
    }

    /// <summary>To the second, with the offset.</summary>
    public static string Of(DateTimeOffset instant)
        => new DateTimeOffset((instant.Ticks + (TimeSpan.TicksPerSecond / 2)) / TimeSpan.TicksPerSecond * TimeSpan.TicksPerSecond, instant.Offset)
            .ToString("yyyy-MM-dd'T'HH:mm:sszzz", CultureInfo.InvariantCulture);

    /// <summary>Hours and minutes, rounded.</summary>
    public static string Clock(DateTimeOffset instant) => instant.AddSeconds(30).ToString("HH:mm", CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^\d{4}-\d\d-\d\d[Tt]\d\d:\d\d(:\d\d(\.\d{1,7})?)?(?<offset>[Zz]|[+-]\d\d:\d\d)?$", RegexOptions.CultureInvariant)]
    private static partial Regex Pattern();
}
