using System.Globalization;
using System.Text;
using Foramen.EndToEnd.Stage;

namespace Foramen.EndToEnd.Walks;

/// <summary>docs/scenarios.md: what every walk took.</summary>
internal static class ScenarioPage
{
    public static async Task WriteAsync(IReadOnlyList<(Scenario Scenario, Walker Walker)> walked)
    {
        var text = new StringBuilder();
        void Line(string line = "") => text.Append(line).Append('\n');
        Line("# Twelve walks");
        Line();
        Line("What somebody does with the app, from the first start to the evening, walked by a script in a real browser at 390 × 844 as someone new would, and");
        Line("counted. Written by");
        Line("`FORAMEN_WALKS=1 dotnet exec tests/Foramen.EndToEnd/bin/Release/net10.0/Foramen.EndToEnd.dll -class '*WalkTests'`; do not edit it. Walks and stumbles are in");
        Line("`tests/Foramen.EndToEnd/Walks`.");
        Line();
        Line("- **step**: one thing to decide or do. **touches**: taps and drags; a field counts one, a file two. **keys**: characters typed.");
        Line("- **hands and mind**: the keystroke-level model ([Card, Moran and Newell 1980](references.bib)): 1.35 s to make up one's mind before each step, 1.1 s a touch,");
        Line("  0.28 s a key. These operator times are quoted from memory, were measured at desks, and are for someone who knows the way and makes no");
        Line("  mistake: an estimate of the least it takes, not of a beginner, of reading or of scrolling. No person has been timed.");
        Line("- **machine**: from the first touch of a step until the app had answered, all steps together, in this run; the script's own time is in it.");
        Line("  Exposures and baths are not: the page's clock is put forward.");
        Line();
        Line($"{DateTime.UtcNow:yyyy-MM-dd}, {Environment.ProcessorCount} processors, headless Chromium, other work on the machine at the same time.");
        Line();
        Line("| | scenario | steps | touches | keys | hands and mind, s | machine, s | stumbles found and mended |");
        Line("| ---: | --- | ---: | ---: | ---: | ---: | ---: | --- |");
        foreach (var ((scenario, walker), index) in walked.Select((walk, index) => (walk, index)))
        {
            var hands = KeystrokeLevel.Seconds(walker.Steps, walker.Touches, walker.Keys);
            Line(string.Create(CultureInfo.InvariantCulture,
                $"| {index + 1} | {scenario.Name} | {walker.Steps} | {walker.Touches} | {walker.Keys} | {hands:0} | {walker.Machine.TotalSeconds:0.0} | {(scenario.Stumbles.Length > 0 ? string.Join("; ", scenario.Stumbles) : "none found")} |"));
        }

        await File.WriteAllTextAsync(Path.Combine(Repository.Root, "docs", "scenarios.md"), text.ToString());
    }
}
