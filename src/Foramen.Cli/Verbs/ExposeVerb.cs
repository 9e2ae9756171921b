using System.CommandLine;
using Foramen.Cli.Options;
using Foramen.Cli.Output;
using Foramen.Cli.Scenes;

namespace Foramen.Cli.Verbs;

/// <summary><c>foramen expose</c>: how long to open the hole and how much to flash, and what will be lost.</summary>
internal static class ExposeVerb
{
    public static Command Create(Page page)
    {
        var scene = new SceneOptions();
        var second = new Option<bool>("--two-sheets") { Description = "Say also how to space two sheets, so that one of them is more likely a keeper." };
        var json = CommonOptions.Json();
        var verb = new Command(
            "expose",
            """
            From one photograph: how long to open the hole, how much to flash, how each tone comes out, and the odds of a keeper.

            Try:
              foramen expose demo/canal-basin.jpg --camera demo/kit/box-a.json --paper demo/kit/positive.json
              foramen expose demo/canal-basin.jpg --camera demo/kit/box-a.json --paper demo/kit/positive.json
                --tone "elevator: textured highlight at 45%,30%" --tone "towpath: mid at 40%,85%" --light noon --two-sheets
            """);
        scene.AddTo(verb);
        verb.Options.Add(second);
        verb.Options.Add(json);
        verb.SetAction(parsed =>
        {
            var setup = SceneSetup.Read(parsed, scene);
            var forecast = setup.Planner.Recommend();
            var report = ExposeReporting.Report(setup, forecast, parsed.GetValue(second) ? setup.Planner.BracketAround(forecast) : null);
            return page.Show(parsed.GetValue(json), report, ReportJson.Default.ExposeReport, () => ExposeReporting.Write(page, report));
        });
        return verb;
    }
}
