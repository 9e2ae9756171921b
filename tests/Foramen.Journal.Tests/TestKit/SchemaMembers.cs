using System.Text.Json.Nodes;

namespace Foramen.Journal.Tests.TestKit;

/// <summary>The members that a published schema gives a body, at any depth, and examples with one of them changed.</summary>
internal static class SchemaMembers
{
    /// <summary>Every member of a kind that is not itself an object with members, with what the schema says of it. A list stands once as itself and once as what it lists.</summary>
    public static IEnumerable<(string[] Path, JsonObject Schema)> Of(string kind) => Of(Schemas.Bodies[kind]!.AsObject(), []);

    /// <summary>What a schema says once its references are followed.</summary>
    public static JsonObject Resolved(JsonObject schema)
    {
        var target = schema["$ref"] ?? schema["anyOf"]?.AsArray().Select(one => one!["$ref"]).FirstOrDefault(one => one is not null) ?? schema["items"]?["$ref"];
        return target is null
            ? schema["anyOf"]?.AsArray().Select(one => one!.AsObject()).FirstOrDefault(one => one["properties"] is not null) ?? schema
            : Schemas.Bodies[target.GetValue<string>()["#/$defs/".Length..]]!.AsObject();
    }

    /// <summary>Sets a member of an example; on the way through a list, in its first item.</summary>
    public static void Set(JsonObject json, string[] path, JsonNode? value)
    {
        JsonNode at = json;
        foreach (var name in path[..^1])
        {
            at = at[name]!;
            at = at is JsonArray list ? list[0]! : at;
        }

        at[path[^1]] = value;
    }

    /// <summary>A number as JSON. Whole numbers are written without a fraction, as pixels must be.</summary>
    public static JsonValue Number(double value) => value == Math.Floor(value) && Math.Abs(value) < 1e15 ? JsonValue.Create((long)value) : JsonValue.Create(value);

    private static IEnumerable<(string[] Path, JsonObject Schema)> Of(JsonObject schema, string[] path)
    {
        foreach (var (name, value) in schema["properties"]!.AsObject())
        {
            var said = value!.AsObject();
            var inner = Resolved(said);
            if (inner["properties"] is null || said["items"] is not null)
            {
                yield return ([.. path, name], said["items"] is null ? inner : said);
            }

            if (inner["properties"] is not null)
            {
                foreach (var found in Of(inner, [.. path, name]))
                {
                    yield return found;
                }
            }
        }
    }
}
