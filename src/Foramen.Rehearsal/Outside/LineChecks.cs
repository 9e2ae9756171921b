using Foramen.Engine.Quantities;
using Foramen.Rehearsal.Lines;

namespace Foramen.Rehearsal.Outside;

/// <summary>Ranges of what comes from outside.</summary>
internal static class LineChecks
{
    private static readonly string[] Renderings = ["openShadow", "mid", "texturedHighlight", "mayBurn", "mayBlock"];
    private static readonly string[] Causes = ["frame", "motion", "light", "process", "leak", "other"];

    public static ExposeLine Checked(this ExposeLine line, string where)
    {
        Guard.Within(line.Seconds, 0.01, 21_600, $"the exposure time of {where}", "s");
        Guard.Within(line.FlashSeconds, 0, 21_600, $"the flash of {where}", "s");
        if (line.Odds is { } odds)
        {
            Guard.Within(odds, 0, 1, $"the odds of {where}");
        }

        return line;
    }

    public static SheetLine Checked(this SheetLine line)
    {
        var where = $"sheet {line.Number}";
        Known(string.IsNullOrWhiteSpace(line.Sky) || line.Sky.Length > 80 ? null : "", [""], $"The sky of {where} should have 1 to 80 characters.");
        Guard.Within(line.FNumber, 8, 2000, $"the f-number of {where}");
        Guard.Within(line.SheetsInBottle, 0, 10_000, $"the sheets in the bottle of {where}");
        Known(line.Label.Kind, ["negative", "directPositive"], $"The kind of paper of {where} should be negative or directPositive.");
        Guard.Within(line.Label.ExposureIndex, 0.01, 1000, $"the exposure index of {where}");
        Guard.Within(line.Label.AtSeconds, 0.001, 86_400, $"the time of the exposure index of {where}", "s");
        Guard.Within(line.Label.IsoRange, 30, 250, $"the ISO range of {where}");
        Guard.Within(line.Label.DMin, 0, 0.5, $"the least density of {where}");
        Guard.Within(line.Label.DMax, line.Label.DMin + 0.8, 4, $"the greatest density of {where}");
        Guard.Within(line.Label.FailureExponent, 0.5, 1, $"the failure exponent of {where}");
        Guard.Within(line.Tones.Count, 1, 60, $"the number of tones of {where}");
        foreach (var tone in line.Tones)
        {
            Known(tone.Rendering, Renderings, $"The rendering \"{tone.Rendering}\" of {where} should be one of {string.Join(", ", Renderings)}.");
            Guard.Within(tone.Ev, -10, 24, $"a reading of {where}", "EV");
        }

        if (line.Tones.All(tone => tone.Rendering is "mayBurn" or "mayBlock") || line.Tones.Select(tone => tone.Name).Distinct().Count() < line.Tones.Count)
        {
            throw new RefusalException($"The tones of {where} should have names of their own, and one at least should be wanted.");
        }

        if (line.CardEv is { } card)
        {
            Guard.Within(card, -10, 24, $"the reading of the card of {where}", "EV");
        }

        line.Oracle?.Checked($"the oracle of {where}");
        return line;
    }

    public static JudgedLine Checked(this JudgedLine line, SheetLine sheet)
    {
        foreach (var tone in line.Tones)
        {
            Guard.Within(tone.LighterByStops, -10, 10, $"the judgement of \"{tone.Name}\" on sheet {sheet.Number}", "stops");
            Known(tone.Name, [.. sheet.Tones.Select(one => one.Name)], $"The tone \"{tone.Name}\" was judged on sheet {sheet.Number}, which has none of that name.");
            Known(tone.Lost ?? "burnt", ["burnt", "blocked"], $"The tone \"{tone.Name}\" on sheet {sheet.Number} is lost as \"{tone.Lost}\"; it should be burnt or blocked.");
        }

        foreach (var cause in line.Causes)
        {
            Known(cause, Causes, $"The cause \"{cause}\" on sheet {sheet.Number} should be one of {string.Join(", ", Causes)}.");
        }

        return line;
    }

    private static void Known(string? value, string[] known, string sentence)
    {
        if (value is null || !known.Contains(value))
        {
            throw new RefusalException(sentence);
        }
    }
}
