using System.Text;
using Foramen.Pages.Speed;

namespace Foramen.Pages;

/// <summary>docs/guide/README.md: every picture that is there, in the order of docs/guide/sights.md.</summary>
public static class GuidePage
{
    /// <summary>The page.</summary>
    /// <param name="folder">docs/guide.</param>
    /// <exception cref="PageException">A picture that no sight explains.</exception>
    public static string Write(string folder)
    {
        var sights = File.ReadLines(Path.Combine(folder, "sights.md")).Select(MarkResults.Cells).Where(cells => cells is [var name, _, _] && name != "sight").Select(cells => cells!).ToList();
        var pictures = Directory.EnumerateFiles(folder, "*.jpg").Select(file => Path.GetFileNameWithoutExtension(file)).Order(StringComparer.Ordinal).ToList();
        if (pictures.Find(picture => !sights.Exists(sight => picture == $"phone-{sight[0]}" || picture == $"desktop-{sight[0]}")) is { } unknown)
        {
            throw new PageException($"docs/guide/{unknown}.jpg is explained nowhere; give its sight a row in docs/guide/sights.md, or remove the picture.");
        }

        var text = new StringBuilder();
        void Line(string line = "") => text.Append(line).Append('\n');
        Line("# Field, step by step");
        Line();
        Line("Every step and place on a phone (390 × 844) and on a large screen (1280 × 800), with the invented demo outing. The pictures are taken by");
        Line("`FORAMEN_GUIDE=1 dotnet exec tests/Foramen.EndToEnd/bin/Release/net10.0/Foramen.EndToEnd.dll -class '*EveryStepTests'`, so they show what the app is. This page is");
        Line("made of them and of [sights.md](sights.md) by `tools/pages guide`; do not edit it. What to do and why: [the guide](../guide.md).");
        foreach (var sight in sights)
        {
            var taken = new[] { ("phone", "phone"), ("desktop", "large screen") }.Where(size => pictures.Contains($"{size.Item1}-{sight[0]}")).ToList();
            if (taken.Count > 0)
            {
                Line();
                Line($"## {sight[1]}");
                Line();
                Line(sight[2]);
                Line();
                Line(string.Join(' ', taken.Select(size => $"![{sight[1]}, {size.Item2}]({size.Item1}-{sight[0]}.jpg)")));
            }
        }

        return text.ToString();
    }
}
