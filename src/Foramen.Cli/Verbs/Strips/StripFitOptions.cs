using System.CommandLine;
using Foramen.Cli.Kit;
using Foramen.Cli.Output;
using Foramen.Cli.Strips;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using Foramen.Journal.Kit;

namespace Foramen.Cli.Verbs.Strips;

/// <summary>Which strips, of which box: files beside a paper file, or a journal.</summary>
internal sealed class StripFitOptions
{
    public Argument<string[]> Files { get; } = new("strips") { Description = "Strip files of the same box, processed alike.", Arity = ArgumentArity.ZeroOrMore };

    public Option<string?> Paper { get; } = new("--paper") { Description = "Paper file: the box as it is known so far.", HelpName = "FILE" };

    public Option<string?> Journal { get; } = new("--journal") { Description = "Or: a journal whose strips are meant.", HelpName = "FILE" };

    public Option<string?> Box { get; } = new("--box") { Description = "The box in the journal, by name or id. Not needed while there is one.", HelpName = "BOX" };

    public void AddTo(Command verb)
    {
        verb.Arguments.Add(Files);
        verb.Options.Add(Paper);
        verb.Options.Add(Journal);
        verb.Options.Add(Box);
    }

    public (PaperDefinition Box, IReadOnlyList<Strip> Strips) Read(ParseResult parsed, Page page)
    {
        var files = parsed.GetValue(Files) ?? [];
        if (parsed.GetValue(Journal) is { } journal)
        {
            return files.Length == 0 && parsed.GetValue(Paper) is null
                ? StripInput.Journal(journal, parsed.GetValue(Box), page)
                : throw new RefusalException("Name strip files and a paper file, or a journal; not both.");
        }

        if (files.Length == 0)
        {
            throw new RefusalException("Name at least one strip file (make one with foramen strip read), or a journal with --journal.");
        }

        var paper = parsed.GetValue(Paper) ?? throw new RefusalException("Say which box the strips are of: --paper FILE.");
        Strip[] strips = [.. files.Select(StripInput.File)];
        return (KitFile.Paper(paper), strips);
    }

    public static StripFit Fit(PaperDefinition box, IReadOnlyList<Strip> strips)
    {
        var paper = box.ToPaper();
        return StripFit.Of(strips, paper.Kind, paper.Sensitivity, StripPrior.For(paper));
    }
}
