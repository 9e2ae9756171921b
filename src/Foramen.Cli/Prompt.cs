using System.CommandLine;
using Foramen.Cli.Output;
using Foramen.Cli.Verbs;
using Foramen.Cli.Verbs.Motion;
using Foramen.Cli.Verbs.Strips;
using Foramen.Engine.Quantities;

namespace Foramen.Cli;

/// <summary>The prompt: one verb a file, plain words or JSON out, exit code 2 and one sentence for input that cannot be used.</summary>
internal static class Prompt
{
    /// <summary>Exit code when the input cannot be used.</summary>
    public const int RefusedExitCode = 2;

    /// <summary>Exit code when the user stopped it.</summary>
    public const int CancelledExitCode = 130;

    public static async Task<int> RunAsync(string[] arguments, TextWriter output, TextWriter errors, CancellationToken cancellation = default)
    {
        var root = new RootCommand(
            """
            Foramen: from one photograph to a pinhole exposure and a predicted print.

            Try:
              foramen expose demo/canal-basin.jpg --camera demo/kit/box-a.json --paper demo/kit/positive.json
              foramen preview demo/canal-basin.jpg --camera demo/kit/box-a.json --paper demo/kit/positive.json --out print.png

            Every number needs its unit (0.35mm, 90s). Every verb takes --json. Estimates are estimates.
            """);
        var page = new Page(output, errors);
        root.Subcommands.Add(SunVerb.Create(page));
        root.Subcommands.Add(OutingVerb.Create(page));
        root.Subcommands.Add(MeterVerb.Create(page));
        root.Subcommands.Add(MotionVerb.Create(page));
        root.Subcommands.Add(CameraVerb.Create(page));
        root.Subcommands.Add(HoleVerb.Create(page));
        root.Subcommands.Add(ScanVerb.Create(page));
        root.Subcommands.Add(MarksVerb.Create(page));
        root.Subcommands.Add(MaskVerb.Create(page));
        root.Subcommands.Add(PaperVerb.Create(page));
        root.Subcommands.Add(StripVerb.Create(page));
        root.Subcommands.Add(ExposeVerb.Create(page));
        root.Subcommands.Add(PreviewVerb.Create(page));
        root.Subcommands.Add(BathVerb.Create(page));
        root.Subcommands.Add(KitVerb.Create(page));
        root.Subcommands.Add(LearnVerb.Create(page));
        root.Subcommands.Add(RehearseVerb.Create(page, errors));
        root.Subcommands.Add(JournalVerb.Create(page));

        var parsed = root.Parse(arguments);
        if (parsed.Errors.Count > 0)
        {
            await errors.WriteLineAsync(Sentence(parsed.Errors[0].Message) + " Run foramen " + Verb(parsed) + "--help to see how.");
            return RefusedExitCode;
        }

        try
        {
            return await parsed.InvokeAsync(new InvocationConfiguration { Output = output, Error = errors, EnableDefaultExceptionHandler = false }, cancellation);
        }
        catch (RefusalException refusal)
        {
            await errors.WriteLineAsync(refusal.Message);
            return RefusedExitCode;
        }
        catch (OperationCanceledException)
        {
            await errors.WriteLineAsync("Stopped; nothing was written.");
            return CancelledExitCode;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            await errors.WriteLineAsync(Sentence(failure.Message));
            return RefusedExitCode;
        }
    }

    private static string Verb(ParseResult parsed) => parsed.CommandResult.Command is RootCommand ? "" : parsed.CommandResult.Command.Name + " ";

    private static string Sentence(string message)
    {
        var line = message.ReplaceLineEndings(" ").Trim();
        return line.EndsWith('.') ? line : line + ".";
    }
}
