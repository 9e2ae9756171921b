using System.Globalization;
using System.Text.RegularExpressions;
using Foramen.Engine.Light;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;

namespace Foramen.Cli.Tones;

/// <summary>
/// A tone as typed: a name, how it should come out, and where it is or what a meter read of it.
/// <c>elevator: textured highlight at 45%,30%</c>, <c>wall: mid at 10%,60% to 20%,70%</c>, <c>doorway: open shadow reads EV 9.3</c>.
/// </summary>
/// <param name="Name">The tone's name.</param>
/// <param name="Rendering">How it should come out.</param>
/// <param name="Source">Where it was read.</param>
internal sealed partial record ToneText(string Name, Rendering Rendering, ToneSource Source)
{
    private const string Examples = "\"elevator: textured highlight at 45%,30%\" or \"doorway: open shadow reads EV 9.3\"";

    private static readonly (string Words, Rendering Rendering)[] Renderings =
    [
        ("open shadow", Rendering.OpenShadow),
        ("mid", Rendering.Mid),
        ("textured highlight", Rendering.TexturedHighlight),
        ("may burn", Rendering.MayBurn),
        ("may block", Rendering.MayBlock),
    ];

    /// <summary>Reads one tone.</summary>
    /// <exception cref="RefusalException">Not a tone, an unknown rendering, a place outside the photograph or a reading that is none.</exception>
    public static ToneText Parse(string text, LightMeter meter)
    {
        var match = Pattern().Match((text ?? "").Trim());
        if (!match.Success)
        {
            throw new RefusalException($"The tone \"{text}\" is not clear; write {Examples}.");
        }

        var name = match.Groups["name"].Value.Trim();
        var words = match.Groups["rendering"].Value.Trim();
        var known = Array.Find(Renderings, entry => string.Equals(entry.Words, words, StringComparison.OrdinalIgnoreCase));
        if (known.Words is null)
        {
            throw new RefusalException($"The tone \"{name}\" should come out as \"{words}\", which is not known; say one of {string.Join(", ", Renderings.Select(r => r.Words))}.");
        }

        ToneSource source = match.Groups["reading"].Success
            ? new HandReading(ReadingText.Luminance(match.Groups["reading"].Value, meter, $"the tone \"{name}\""))
            : match.Groups["x2"].Success
                ? Rectangle(match, name)
                : PointInPhotograph.FromFractions(Percent(match, "x1", name), Percent(match, "y1", name));
        return new ToneText(name, known.Rendering, source);
    }

    private static RectangleInPhotograph Rectangle(Match match, string name)
    {
        var (left, top, right, bottom) = (Percent(match, "x1", name), Percent(match, "y1", name), Percent(match, "x2", name), Percent(match, "y2", name));
        return right > left && bottom > top
            ? RectangleInPhotograph.FromFractions(left, top, right - left, bottom - top)
            : throw new RefusalException($"The rectangle of the tone \"{name}\" is empty; name its upper left corner first, then its lower right.");
    }

    private static double Percent(Match match, string group, string name)
    {
        if (!double.TryParse(match.Groups[group].ValueSpan, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var percent))
        {
            throw new RefusalException($"The tone \"{name}\" lies at \"{match.Groups[group].Value}\" %, which is not a number; write {Examples}.");
        }

        return percent <= 100
            ? percent / 100
            : throw new RefusalException(FormattableString.Invariant($"The tone \"{name}\" lies at {percent:0.#} %, outside the photograph; both places run from 0% to 100%, from the left and from the top."));
    }

    [GeneratedRegex(@"^(?<name>[^:]{1,80}):(?<rendering>[a-zA-Z ]+?)\s+(at\s+(?<x1>[\d.]{1,8})\s*%\s*,\s*(?<y1>[\d.]{1,8})\s*%(\s+to\s+(?<x2>[\d.]{1,8})\s*%\s*,\s*(?<y2>[\d.]{1,8})\s*%)?|reads\s+(?<reading>.{1,60}))$", RegexOptions.CultureInvariant)]
    private static partial Regex Pattern();
}
