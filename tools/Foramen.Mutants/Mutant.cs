using System.Globalization;
using System.Text.Json.Nodes;

namespace Foramen.Mutants;

/// <summary>One change, as the report has it.</summary>
internal sealed record Mutant(string File, JsonObject Json)
{
    public int Id => int.Parse((string)Json["id"]!, CultureInfo.InvariantCulture);

    public MutantStatus? Status
    {
        get => Enum.TryParse<MutantStatus>((string)Json["status"]!, out var status) ? status : null;
        set => Json["status"] = value.ToString();
    }

    public int Line => (int)Json["location"]!["start"]!["line"]!;

    public string Becomes => $"{Json["mutatorName"]}: {((string)Json["replacement"]!).ReplaceLineEndings(" ")}";
}
