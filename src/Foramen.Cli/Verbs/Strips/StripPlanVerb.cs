using System.CommandLine;
using System.Globalization;
using Foramen.Cli.Options;
using Foramen.Cli.Output;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;

namespace Foramen.Cli.Verbs.Strips;

/// <summary><c>foramen strip plan</c>: times of the patches, and every move of the card.</summary>
internal static class StripPlanVerb
{
    public static Command Create(Page page)
    {
        var first = new Option<string>("--first") { Description = "Time of the least exposed patch, such as 8s.", HelpName = "TIME", Required = true };
        var step = new Option<double>("--step") { Description = "Stops from patch to patch, 0.17 to 3; 0.5 where nothing is said.", HelpName = "STOPS", DefaultValueFactory = _ => 0.5 };
        var count = new Option<int>("--count") { Description = "Number of patches, 3 to 24; 8 where nothing is said.", HelpName = "N", DefaultValueFactory = _ => 8 };
        var way = new Option<string>("--way") { Description = "hole (closed for every move of the card), cover or uncover (a card under steady light); hole where nothing is said.", HelpName = "WAY", DefaultValueFactory = _ => "hole" };
        var least = new Option<string?>("--least") { Description = "Shortest stretch of light you can keep; 2s by hand.", HelpName = "TIME" };
        var json = CommonOptions.Json();
        var verb = new Command("plan", "Plans a strip: the time of each patch, and the moves of the card that give it.") { first, step, count, way, least, json };
        verb.SetAction(parsed =>
        {
            var plan = StripPlan.Create(
                QuantityText.Duration(parsed.GetRequiredValue(first), "the time of the first patch"),
                Stops.FromValue(parsed.GetValue(step)),
                parsed.GetValue(count),
                WayOf(parsed.GetRequiredValue(way)),
                parsed.GetValue(least) is { } shortest ? QuantityText.Duration(shortest, "the shortest stretch of light") : null);
            var report = new StripPlanReport
            {
                Way = parsed.GetRequiredValue(way),
                StepStops = plan.Ratio.Value,
                Seconds = [.. plan.Steps.Select(one => one.Total.Seconds)],
                Moves = [.. plan.Moves.Select(move => new StripMoveReport(move.From.Seconds, move.Light.Seconds, Then(plan.Way, move)))],
                TotalSeconds = plan.Longest.Seconds,
            };
            return page.Show(parsed.GetValue(json), report, ReportJson.Default.StripPlanReport, () => Write(page, report));
        });
        return verb;
    }

    private static StripWay WayOf(string text) => text switch
    {
        "hole" => StripWay.HoleAsShutter,
        "cover" => StripWay.Covering,
        "uncover" => StripWay.Uncovering,
        _ => throw new RefusalException($"The way is “{text}”; it should be hole, cover or uncover."),
    };

    private static string Then(StripWay way, StripMove move) => (way, move.CardPatch) switch
    {
        (_, null) => "end the light",
        (StripWay.HoleAsShutter, { } patch) => $"close, cover patch {patch}, open again",
        (StripWay.Covering, { } patch) => $"cover patch {patch}",
        (_, { } patch) => $"uncover patch {patch}",
    };

    private static void Write(Page page, StripPlanReport report)
    {
        var culture = CultureInfo.CurrentCulture;
        page.Line("Keep one patch more masked from all light, and let one corner get far more than the last patch.");
        page.Table(["patch", "light"], report.Seconds.Select((seconds, i) => (IReadOnlyList<string>)[(i + 1).ToString(culture), string.Create(culture, $"{seconds:0.0} s")]));
        page.Line(report.Way == "uncover" ? "Begin with all patches covered but the last." : "Begin with all patches uncovered.");
        page.Table(["", "", ""], report.Moves.Select(move => (IReadOnlyList<string>)
        [
            string.Create(culture, $"from {move.FromSeconds:0.0} s"), string.Create(culture, $"light for {move.LightSeconds:0.0} s"), "then " + move.Then,
        ]));
    }
}
