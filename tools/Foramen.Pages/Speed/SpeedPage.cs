using System.Globalization;
using System.Text;

namespace Foramen.Pages.Speed;

/// <summary>docs/speed.md: everything that must be reached, with what was measured last.</summary>
public static class SpeedPage
{
    /// <summary>The page.</summary>
    /// <exception cref="PageException">A result of a mark that nobody has stated.</exception>
    public static string Write(IReadOnlyList<(string Heading, IReadOnlyList<Mark> Marks)> register, IReadOnlyList<MarkResult> results)
    {
        var known = register.SelectMany(group => group.Marks).ToDictionary(mark => mark.Id);
        if (results.FirstOrDefault(result => !known.TryGetValue(result.Mark, out var mark) || !mark.IsMeasured) is { } unknown)
        {
            throw new PageException($"bench/results/{unknown.File} measures {unknown.Mark}, which is no measured mark of bench/marks.md.");
        }

        var of = results.ToLookup(result => result.Mark);
        var measured = known.Values.Where(mark => mark.IsMeasured).ToList();
        var missing = measured.Where(mark => !of.Contains(mark.Id)).ToList();
        var failed = measured.Where(mark => of[mark.Id].Any(result => !mark.IsReachedBy(result.Figure))).ToList();
        var text = new StringBuilder();
        void Line(string line = "") => text.Append(line).Append('\n');
        Line("# Speed, and what else must be reached");
        Line();
        Line("Composed by `tools/pages speed` from [bench/marks.md](../bench/marks.md) (what must be reached) and the files under `bench/results` (what was measured last);");
        Line("`bench/all` measures everything again and composes it. Do not edit it: a test fails while it is not up to date. A ratio is our median over the peer's median of the");
        Line("same run and means something on another machine; a plain time means something only on the machine beside it. Where one mark was measured on");
        Line("several inputs, each must reach it.");
        Line();
        Line(string.Create(CultureInfo.InvariantCulture, $"Of {measured.Count} marks that are measured {measured.Count - missing.Count - failed.Count} are reached, {failed.Count} are not, and {missing.Count} have not been measured."));
        foreach (var (title, marks) in new[] { ("Not reached", failed), ("Not measured yet", missing) })
        {
            if (marks.Count > 0)
            {
                Line();
                Line($"**{title}:** {string.Join("; ", marks.Select(mark => $"{mark.What} ({mark.MustBe})"))}.");
            }
        }

        foreach (var (heading, marks) in register)
        {
            Line();
            Line($"## {heading}");
            Line();
            Line("| what | measured | ours | against | figure | must be | reached | date | machine |");
            Line("| --- | --- | --- | --- | --- | --- | --- | --- | --- |");
            foreach (var mark in marks)
            {
                if (!mark.IsMeasured)
                {
                    Line($"| {mark.What} | held by a test, {mark.By} | | | | {mark.MustBe} | by the test | each `./test` | any |");
                    continue;
                }

                foreach (var one in of[mark.Id])
                {
                    Line($"| {mark.What} | {one.Measured} | {one.Ours} | {one.Against} | {one.Figure} | {mark.MustBe} | {(mark.IsReachedBy(one.Figure) ? "yes" : "**no**")} | {one.Date} | {one.Machine} |");
                }

                if (!of.Contains(mark.Id))
                {
                    Line($"| {mark.What} | **not measured yet**; by {mark.By} | | | | {mark.MustBe} | **unknown** | | |");
                }
            }
        }

        return text.ToString();
    }
}
