using System.Text;
using System.Text.Json.Nodes;
using CsCheck;
using Foramen.Journal.Bodies;
using Foramen.Journal.Entries;
using Foramen.Journal.Exchange;
using Foramen.Journal.Tests.TestKit;
using static Foramen.Journal.Tests.TestKit.Make;

namespace Foramen.Journal.Tests.Bodies;

/// <summary>The published schemas and the code say the same: members, which are required, and the ranges of numbers.</summary>
public class SchemaTests
{
    public static TheoryData<string> Kinds => BodyJsonTests.Kinds;

    [Theory]
    [MemberData(nameof(Kinds))]
    public void The_full_example_of_a_kind_fits_its_schema_and_the_schema_has_no_other_members(string kind)
    {
        var json = Example(kind);
        var schema = Schemas.Body(kind);
        Schemas.AssertValid(schema, json.ToJsonString());
        AssertSameMembers(json, Schemas.Bodies[kind]!.AsObject(), kind);
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void What_the_schema_requires_the_code_requires(string kind)
    {
        var schema = Schemas.Body(kind);
        foreach (var member in Example(kind).Select(pair => pair.Key).ToList())
        {
            var without = Example(kind);
            without.Remove(member);
            AssertAgree(schema, kind, without);
            var nulled = Example(kind);
            nulled[member] = null;
            AssertAgree(schema, kind, nulled);
        }
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Numbers_at_the_edge_of_a_range_are_taken_and_beyond_it_refused_by_both(string kind)
    {
        var schema = Schemas.Body(kind);
        foreach (var (path, range) in SchemaMembers.Of(kind).Where(member => member.Schema["minimum"] is not null))
        {
            foreach (var edge in new[] { range["minimum"]!.GetValue<double>(), range["maximum"]!.GetValue<double>() })
            {
                var within = Example(kind);
                SchemaMembers.Set(within, path, SchemaMembers.Number(edge));
                Schemas.AssertValid(schema, within.ToJsonString());
                Assert.Null(BodyJson.Read(kind, 1, within.ToJsonString()).Complaint);

                var beyond = Example(kind);
                SchemaMembers.Set(beyond, path, SchemaMembers.Number(edge == range["minimum"]!.GetValue<double>() ? edge - 1 : edge + 1));
                Assert.False(Schemas.Accepts(schema, beyond.ToJsonString()), $"{kind} {string.Join('.', path)}");
                Assert.NotNull(BodyJson.Read(kind, 1, beyond.ToJsonString()).Complaint);
            }
        }
    }

    [Fact]
    public void Every_kind_is_in_both_schemas()
    {
        var byKind = JsonNode.Parse(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "schemas", "journal-entry.schema.json")))!["allOf"]!.AsArray()
            .Select(rule => rule!["if"]!["properties"]!["kind"]!["const"]!.GetValue<string>());
        Assert.Equal(OneOfEach.Bodies.Select(body => body.Kind).Order(), byKind.Order());
    }

    [Fact]
    public void Exported_files_fit_the_schemas_line_by_line()
    {
        AssertFile(JournalFile.Write(EntrySet.Of(OneOfEach.Bodies.Select((body, i) => By(Phone, i + 1, i, body)))));
        AssertFile(JournalFile.Write(EntrySet.Of(OneOfEach.Bodies.Select((body, i) => By(Phone, i + 1, i, body))), withoutPlaces: true));
        Assert.False(Schemas.Accepts(Schemas.Entry, EntryLine.Write(Entry.CreateRaw(Id(1), Phone, 1, Noon, EntryKind.ToneRemoved, 1, "{}"))));
        Assert.True(Schemas.Accepts(Schemas.Entry, EntryLine.Write(Entry.CreateRaw(Id(1), Phone, 1, Noon, EntryKind.ToneRemoved, 2, "{}"))));
    }

    [Fact]
    public void Envelopes_of_any_history_fit_the_schema()
        => GenHistory.Histories.Where(history => history.Length > 0).Sample(
            history =>
            {
                foreach (var entry in history.Where(entry => entry.ReadBody().Complaint is null))
                {
                    Schemas.AssertValid(Schemas.Entry, EntryLine.Write(entry));
                }
            },
            iter: Samples.Of(20));

    private static void AssertFile(byte[] file)
    {
        var lines = Encoding.UTF8.GetString(file).TrimEnd('\n').Split('\n');
        Schemas.AssertValid(Schemas.Header, lines[0]);
        Assert.All(lines[1..], line => Schemas.AssertValid(Schemas.Entry, line));
    }

    private static void AssertAgree(Json.Schema.JsonSchema schema, string kind, JsonObject json)
    {
        var text = json.ToJsonString();
        var read = BodyJson.Read(kind, 1, text);
        Assert.True(Schemas.Accepts(schema, text) == (read.Body is not null), $"{kind}: {text}: {read.Complaint}");
    }

    private static void AssertSameMembers(JsonObject json, JsonObject schema, string where)
    {
        var properties = schema["properties"]!.AsObject();
        // The examples set every member that a body has, so both lists are complete; but a paper has one kind of speed and one law of failure.
        string[] other = where.StartsWith("paper.defined.", StringComparison.Ordinal) ? ["isoSpeed", "extraSecondsAtOneSecond", "rows"] : [];
        var expected = properties.Select(pair => pair.Key).Except(other).Order();
        Assert.Equal(expected, json.Select(pair => pair.Key).Order());
        foreach (var (name, value) in json)
        {
            var inner = SchemaMembers.Resolved(properties[name]!.AsObject());
            if (value is JsonObject nested && inner["properties"] is not null)
            {
                AssertSameMembers(nested, inner, where + "." + name);
            }
        }
    }

    private static JsonObject Example(string kind)
        => JsonNode.Parse(BodyJson.Write(OneOfEach.Bodies.Single(body => body.Kind == kind)))!.AsObject();
}
