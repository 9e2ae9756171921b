using System.Globalization;
using System.Text.RegularExpressions;
using Foramen.Engine.Camera;
using Foramen.Engine.Quantities;

namespace Foramen.Cli.Scans;

/// <summary>Places in a scan as people type them: pixels from its upper left corner.</summary>
internal static partial class ScanPoints
{
    /// <summary>Reads <c>10mm at 120,300 to 2120,310</c>.</summary>
    public static (Length Apart, PixelPoint From, PixelPoint To) Ruler(string text)
    {
        var match = RulerPattern().Match(text);
        return match.Success
            ? (QuantityText.Length(match.Groups["apart"].Value, "the distance between the ruler's marks"), Point(match, 1), Point(match, 2))
            : throw new RefusalException($"The ruler is \"{text}\"; write a distance and two places in pixels, such as \"10mm at 120,300 to 2120,310\".");
    }

    /// <summary>Reads <c>120,300 to 2120,310</c>.</summary>
    public static (PixelPoint From, PixelPoint To) Pair(string text, string what)
    {
        var match = PairPattern().Match(text);
        return match.Success
            ? (Point(match, 1), Point(match, 2))
            : throw new RefusalException($"{char.ToUpperInvariant(what[0])}{what[1..]} is \"{text}\"; write two places in pixels, such as \"120,300 to 2120,310\".");
    }

    /// <summary>Reads <c>40,60 600,30 610,270 30,240</c>: four corner marks, clockwise from the upper left.</summary>
    public static PixelPoint[] Four(string text)
    {
        var places = text.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(one => one.Split(',')).ToArray();
        return places.Length == 4 && Array.TrueForAll(places, place => place.Length == 2)
            ? [.. places.Select(place => PixelPoint.At(QuantityText.Number(place[0], "a corner mark"), QuantityText.Number(place[1], "a corner mark")))]
            : throw new RefusalException($"The corner marks are “{text}”; write four places in pixels, such as \"40,60 600,30 610,270 30,240\".");
    }

    private static PixelPoint Point(Match match, int number)
    {
        double At(string axis) => double.Parse(match.Groups[$"{axis}{number}"].Value, CultureInfo.InvariantCulture);
        return PixelPoint.At(At("x"), At("y"));
    }

    [GeneratedRegex(@"^\s*(?<apart>[0-9][^a]{0,30}?)\s+at\s+(?<x1>\d{1,6}(\.\d+)?)\s*,\s*(?<y1>\d{1,6}(\.\d+)?)\s+to\s+(?<x2>\d{1,6}(\.\d+)?)\s*,\s*(?<y2>\d{1,6}(\.\d+)?)\s*$", RegexOptions.CultureInvariant)]
    private static partial Regex RulerPattern();

    [GeneratedRegex(@"^\s*(?<x1>\d{1,6}(\.\d+)?)\s*,\s*(?<y1>\d{1,6}(\.\d+)?)\s+to\s+(?<x2>\d{1,6}(\.\d+)?)\s*,\s*(?<y2>\d{1,6}(\.\d+)?)\s*$", RegexOptions.CultureInvariant)]
    private static partial Regex PairPattern();
}
