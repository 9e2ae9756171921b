using System.Text.Json.Nodes;

namespace Foramen.Mutants;

/// <summary>The tool's list of mutants (the open report schema of mutation testing), of which the status is rewritten here.</summary>
internal sealed class MutantReport
{
    private readonly Lock gate = new();
    private readonly string path;
    private readonly JsonNode report;

    private MutantReport(string path, JsonNode report)
    {
        this.path = path;
        this.report = report;
        Mutants = [.. report["files"]!.AsObject().SelectMany(file => file.Value!["mutants"]!.AsArray().Select(mutant => new Mutant(file.Key, mutant!.AsObject())))];
    }

    public IReadOnlyList<Mutant> Mutants { get; }

    public static MutantReport Read(string path) => new(path, JsonNode.Parse(File.ReadAllText(path)) ?? throw new InvalidOperationException($"{path} is empty."));

    /// <summary>Notes what became of a mutant.</summary>
    public void Note(Mutant mutant, MutantStatus status)
    {
        lock (gate)
        {
            mutant.Status = status;
        }
    }

    public void Write()
    {
        lock (gate)
        {
            File.WriteAllText(path, report.ToJsonString());
        }
    }
}
