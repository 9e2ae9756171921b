using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Foramen.Journal.Bodies;
using Foramen.Journal.Tests.TestKit;

namespace Foramen.Journal.Tests.Bodies;

/// <summary>The published schemas and the code draw the same limits for texts, words and lists, and a complaint says what lies outside of them.</summary>
public partial class LimitTests
{
    // The format puts units into the names of members (docs/journal-format.md); sentences say them as the SI writes them, or in words.
    private static readonly (string Ending, string[] Units)[] UnitsByName =
    [
        ("SquareMetresPerLitre", ["m²/l"]), ("GramsPerLitre", ["g/l"]), ("MetresPerSecond", ["m/s"]), ("PerInch", ["dpi", "dots an inch"]), ("Metres", ["m"]), ("CdM2", ["cd/m²"]),
        ("Candelas", ["cd"]), ("Lux", ["lx"]), ("Kelvin", ["K"]), ("Celsius", ["°C"]), ("Ml", ["ml"]), ("Mm", ["mm"]), ("Degrees", ["degrees", "°"]), ("Percent", ["%"]), ("Stops", ["stops"]),
        ("Pixels", ["pixels"]), ("Days", ["days"]), ("ByteCount", ["bytes"]), ("Seconds", ["s"]), ("SecondsAgo", ["s"]), ("SecondsAtOneSecond", ["s"]), ("seconds", ["s"]),
    ];

    public static TheoryData<string> Kinds => BodyJsonTests.Kinds;

    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_complaint_of_a_number_says_of_what_how_much_and_in_which_unit(string kind)
    {
        foreach (var (path, range) in Members(kind, "minimum"))
        {
            foreach (var beyond in new[] { range["minimum"]!.GetValue<double>() - 1, range["maximum"]!.GetValue<double>() + 1 })
            {
                var complaint = Complaint(kind, path, SchemaMembers.Number(beyond));
                var said = NumberComplaint().Match(complaint);
                Assert.True(said.Success, $"{kind} {string.Join('.', path)}: {complaint}");
                var units = UnitsByName.FirstOrDefault(one => path[^1].EndsWith(one.Ending, StringComparison.OrdinalIgnoreCase)).Units;
                Assert.True(units is null || units.Contains(said.Groups["unit"].Value), $"{path[^1]}: {complaint}");
                Assert.Equal(said.Groups["unit"].Value, said.Groups["again"].Value);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_text_as_long_as_may_be_is_taken_and_a_longer_one_refused_by_both(string kind)
    {
        foreach (var (path, text) in Members(kind, "maxLength"))
        {
            var most = text["maxLength"]!.GetValue<int>();
            AssertTaken(kind, path, new string('x', most));
            AssertRefused(kind, path, new string('x', most + 1));
            Assert.Contains($"at most {most}", Complaint(kind, path, new string('x', most + 1)), StringComparison.Ordinal);
        }
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_text_that_must_say_something_is_refused_by_both_where_it_says_nothing(string kind)
    {
        foreach (var (path, _) in Members(kind, "minLength"))
        {
            AssertRefused(kind, path, "");
            AssertRefused(kind, path, " \t");
        }
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Every_published_word_is_taken_and_another_refused_by_both(string kind)
    {
        foreach (var (path, words) in Members(kind, "enum"))
        {
            var known = words["enum"]!.AsArray().Select(word => word?.GetValue<string>()).OfType<string>().ToList();
            Assert.All(known, word => AssertTaken(kind, path, word));
            AssertRefused(kind, path, "moonlit");
            AssertRefused(kind, path, "");
        }
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_list_as_long_as_may_be_is_taken_and_one_more_refused_by_both(string kind)
    {
        foreach (var (path, list) in Members(kind, "maxItems").Where(member => Has(kind, member.Path)))
        {
            var most = list["maxItems"]!.GetValue<int>();
            AssertTaken(kind, path, Listed(kind, path, most));
            AssertRefused(kind, path, Listed(kind, path, most + 1));
            Assert.Matches($"^(There are {most + 1} [a-z ]+, or .* at most {most} are|The number of [a-z ]+ is {most + 1}; it should be between \\d+ and {most}\\.$)", Complaint(kind, path, Listed(kind, path, most + 1)));
            var least = list["minItems"]?.GetValue<int>() ?? 0;
            AssertTaken(kind, path, Listed(kind, path, least));
            if (least > 0)
            {
                AssertRefused(kind, path, Listed(kind, path, least - 1));
            }
        }
    }

    [Theory]
    [InlineData(EntryKind.StripMade, "seconds", "[0.01,86400]", "[0.009,86400]", "[0.01,86401]")]
    [InlineData(EntryKind.StripRead, "densities", "[0,null,4]", "[-0.1]", "[0,null,4.1]")]
    [InlineData(EntryKind.KitPlanned, "lines", """["x"]""", """["x",""]""", """["x",null]""")]
    public void What_a_list_holds_is_held_to_its_limits_by_both(string kind, string member, string good, string low, string high)
    {
        AssertTaken(kind, [member], JsonNode.Parse(good));
        AssertRefused(kind, [member], JsonNode.Parse(low));
        AssertRefused(kind, [member], JsonNode.Parse(high));
    }

    [Theory]
    [InlineData("[[1,1],[1000000000,0]]", true)]
    [InlineData("[[1,-1]]", false)]
    [InlineData("[[1000000001,1]]", false)]
    public void The_rows_of_a_table_of_failure_are_held_to_their_limits(string rows, bool good)
    {
        var json = Example(EntryKind.PaperDefined);
        SchemaMembers.Set(json, ["definition", "failure", "rows"], JsonNode.Parse(rows));
        Assert.Equal(good, BodyJson.Read(EntryKind.PaperDefined, 1, json.ToJsonString()).Complaint is null);
    }

    [Fact]
    public void A_table_of_failure_has_at_most_a_thousand_rows()
    {
        var rows = new JsonArray([.. Enumerable.Range(0, 1_000).Select(i => (JsonNode)new JsonArray(1 + i, 1 + i))]);
        AssertTaken(EntryKind.PaperDefined, ["definition", "failure", "rows"], rows.DeepClone());
        rows.Add((JsonNode)new JsonArray(2_000, 2_000));
        Assert.StartsWith("There are 1001 rows of failure, ", Complaint(EntryKind.PaperDefined, ["definition", "failure", "rows"], rows.DeepClone()), StringComparison.Ordinal);
        AssertRefused(EntryKind.PaperDefined, ["definition", "failure", "rows"], rows);
    }

    // A strip is read from its lightest patch on, so the order of its times is the order of its patches.
    [Theory]
    [InlineData("[8,16,16]", 3)]
    [InlineData("[8,4,16]", 2)]
    public void The_patches_of_a_strip_are_listed_from_least_to_most_light(string seconds, int patch)
        => Assert.StartsWith($"Patch {patch} got no more light than patch {patch - 1}", Complaint(EntryKind.StripMade, ["seconds"], JsonNode.Parse(seconds)), StringComparison.Ordinal);

    [Theory]
    [InlineData(EntryKind.CameraDefined, "paperShape", "The paper's shape is “moonlit”; it should be flat or curved.")]
    [InlineData(EntryKind.PaperDefined, "sensitivity", "The paper's sensitivity is “moonlit”; it should be blue or variableContrast.")]
    public void A_complaint_of_a_word_says_which_words_there_are(string kind, string member, string expected)
        => Assert.Equal(expected, Complaint(kind, ["definition", member], "moonlit"));

    [Theory]
    [InlineData(40, false)]
    [InlineData(41, true)]
    public void A_long_wrong_word_is_shown_in_part(int length, bool cut)
    {
        var complaint = Complaint(EntryKind.CameraDefined, ["definition", "paperShape"], new string('z', length));
        Assert.Contains("“" + new string('z', 40) + (cut ? "…”" : "”"), complaint, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Every_complaint_begins_with_its_subject_and_is_one_sentence(string kind)
    {
        foreach (var (path, schema) in SchemaMembers.Of(kind).Where(member => Has(kind, member.Path) && (member.Schema["maxLength"] ?? member.Schema["maxItems"] ?? member.Schema["pattern"]) is not null))
        {
            JsonNode wrong = schema["maxItems"] is { } most ? Listed(kind, path, most.GetValue<int>() + 1) : new string('x', 300_000);
            Assert.Matches("^[A-Z][^\n]+[.]$", Complaint(kind, path, wrong).Replace(" Path: $", " path: $", StringComparison.Ordinal));
        }
    }

    private static IEnumerable<(string[] Path, JsonObject Schema)> Members(string kind, string limit) => SchemaMembers.Of(kind).Where(member => member.Schema[limit] is not null);

    private static bool Has(string kind, string[] path)
    {
        JsonNode? at = Example(kind);
        foreach (var name in path)
        {
            at = (at is JsonArray list ? list[0] : at)?[name];
        }

        return at is not null;
    }

    // The example's own first item, so many times; the times of a strip must rise.
    private static JsonArray Listed(string kind, string[] path, int count)
    {
        JsonNode at = Example(kind);
        foreach (var name in path)
        {
            at = at[name]!;
        }

        var first = at.AsArray()[0]!;
        return [.. Enumerable.Range(1, count).Select(i => kind == EntryKind.StripMade ? (JsonNode)JsonValue.Create(i) : first.DeepClone())];
    }

    private static void AssertTaken(string kind, string[] path, JsonNode? value)
    {
        var text = With(kind, path, value);
        Schemas.AssertValid(Schemas.Body(kind), text);
        Assert.Null(BodyJson.Read(kind, 1, text).Complaint);
    }

    private static void AssertRefused(string kind, string[] path, JsonNode? value)
    {
        var text = With(kind, path, value);
        Assert.False(Schemas.Accepts(Schemas.Body(kind), text), $"{kind} {string.Join('.', path)}");
        Assert.NotNull(BodyJson.Read(kind, 1, text).Complaint);
    }

    private static string Complaint(string kind, string[] path, JsonNode? value)
    {
        var read = BodyJson.Read(kind, 1, With(kind, path, value));
        Assert.Null(read.Body);
        Assert.NotNull(read.Complaint);
        return read.Complaint;
    }

    private static string With(string kind, string[] path, JsonNode? value)
    {
        var json = Example(kind);
        SchemaMembers.Set(json, path, value);
        return json.ToJsonString();
    }

    private static JsonObject Example(string kind) => JsonNode.Parse(BodyJson.Write(OneOfEach.Bodies.Single(body => body.Kind == kind)))!.AsObject();

    [GeneratedRegex("^[A-Z][^;]+ is -?[0-9.]+(?: (?<unit>[^;]+))?; it should be between -?[0-9.]+ and -?[0-9.]+(?: (?<again>[^;]+))?\\.$")]
    private static partial Regex NumberComplaint();
}
