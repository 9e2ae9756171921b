using System.CommandLine;
using Foramen.Cli.Output;

namespace Foramen.Cli.Verbs.Strips;

/// <summary><c>foramen strip</c>: test strips, from the plan to a paper that is known.</summary>
internal static class StripVerb
{
    public static Command Create(Page page)
    {
        var verb = new Command(
            "strip",
            """
            Test strips: plan one, write down what was read on it, fit the paper's curve and speed, find its failure and its flash.

            Try:
              foramen strip plan --first 8s --step 0.5 --count 8
              foramen strip read --lux 0.05lx --light noon --times "8s 16s 32s 64s 128s" --densities "1.93 1.83 1.52 0.92 0.39" --by densitometer --save strip.json
              foramen strip fit strip.json --paper demo/kit/positive.json --save my-box.json
            """);
        verb.Subcommands.Add(StripPlanVerb.Create(page));
        verb.Subcommands.Add(StripReadVerb.Create(page));
        verb.Subcommands.Add(StripFitVerb.Create(page));
        verb.Subcommands.Add(StripFailureVerb.Create(page));
        verb.Subcommands.Add(StripFlashVerb.Create(page));
        return verb;
    }
}
