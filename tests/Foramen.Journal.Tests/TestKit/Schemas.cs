using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;

namespace Foramen.Journal.Tests.TestKit;

/// <summary>The published schemas of the journal, judged by an independent validator.</summary>
internal static class Schemas
{
    private static readonly EvaluationOptions Options = new() { OutputFormat = OutputFormat.List };
    private static readonly BuildOptions Build = new() { SchemaRegistry = new SchemaRegistry() };
    private static readonly JsonSchema BodiesSchema = JsonSchema.FromText(Text("journal-bodies"), Build);

    public static JsonObject Bodies { get; } = JsonNode.Parse(Text("journal-bodies"))!["$defs"]!.AsObject();

    public static JsonSchema Entry { get; } = From(Text("journal-entry"));

    public static JsonSchema Header { get; } = From(Text("journal-header"));

    public static JsonSchema Body(string kind) => From($$"""{"$schema":"https://json-schema.org/draft/2020-12/schema","$id":"urn:test:{{Guid.NewGuid()}}","$ref":"urn:foramen:journal-bodies:1#/$defs/{{kind}}"}""");

    public static bool Accepts(JsonSchema schema, string json) => schema.Evaluate(JsonDocument.Parse(json).RootElement, Options).IsValid;

    public static void AssertValid(JsonSchema schema, string json)
    {
        var result = schema.Evaluate(JsonDocument.Parse(json).RootElement, Options);
        var complaints = result.Details?.Where(detail => detail.Errors is not null)
            .SelectMany(detail => detail.Errors!.Select(error => $"{detail.InstanceLocation}: {error.Value}")) ?? [];
        Assert.True(result.IsValid, $"{json} {string.Join("; ", complaints)}");
    }

    private static JsonSchema From(string text)
    {
        Assert.NotNull(BodiesSchema);
        return JsonSchema.FromText(text, Build);
    }

    private static string Text(string name) => File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "schemas", name + ".schema.json"));
}
