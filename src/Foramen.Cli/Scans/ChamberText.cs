using System.Text.RegularExpressions;
using Foramen.Engine.Camera;
using Foramen.Engine.Quantities;

namespace Foramen.Cli.Scans;

/// <summary>Marks seen on a print, as people type them.</summary>
internal static partial class ChamberText
{
    /// <summary>Reads <c>1m at 2.5m as 25.2mm</c>: how far apart, how far from the hole, how far apart on the print.</summary>
    public static ChamberMeasurement Parse(string text)
    {
        var match = Pattern().Match(text);
        return match.Success
            ? ChamberMeasurement.Of(
                QuantityText.Length(match.Groups["apart"].Value, "the distance between the marks"),
                QuantityText.Length(match.Groups["away"].Value, "the distance from the hole to the marks"),
                QuantityText.Length(match.Groups["seen"].Value, "the distance of the marks on the print"))
            : throw new RefusalException($"What was seen is \"{text}\"; write how far apart, how far away and how far apart on the print, such as \"1m at 2.5m as 25.2mm\".");
    }

    [GeneratedRegex(@"^\s*(?<apart>[0-9]\S*(\s?[a-z]+)?)\s+at\s+(?<away>[0-9]\S*(\s?[a-z]+)?)\s+as\s+(?<seen>[0-9]\S*(\s?[a-z]+)?)\s*$", RegexOptions.CultureInvariant)]
    private static partial Regex Pattern();
}
