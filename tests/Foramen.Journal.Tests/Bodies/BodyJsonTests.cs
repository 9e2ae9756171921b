using System.Reflection;
using System.Text.Json.Nodes;
using Foramen.Engine.Quantities;
using Foramen.Journal.Bodies;
using Foramen.Journal.Tests.TestKit;
using static Foramen.Journal.Tests.TestKit.Make;

namespace Foramen.Journal.Tests.Bodies;

public class BodyJsonTests
{
    public static TheoryData<string> Kinds => [.. OneOfEach.Bodies.Select(body => body.Kind)];

    [Fact]
    public void There_is_an_example_of_every_kind()
    {
        var declared = typeof(EntryKind).GetFields(BindingFlags.Public | BindingFlags.Static).Select(field => (string)field.GetRawConstantValue()!);
        Assert.Equal(declared.Order(), OneOfEach.Bodies.Select(body => body.Kind).Order());
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_body_reads_back_as_it_was_written(string kind)
    {
        var body = Example(kind);
        var json = BodyJson.Write(body);
        var read = BodyJson.Read(kind, 1, json);
        Assert.Null(read.Complaint);
        Assert.IsType(body.GetType(), read.Body);
        Assert.Equal(json, BodyJson.Write(read.Body!));
        // Every member of the example is set, so none may be missing from the text.
        AssertAllMembersWritten(body, JsonNode.Parse(json)!.AsObject());
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Members_that_are_not_known_do_no_harm(string kind)
    {
        var json = BodyJson.Write(Example(kind));
        var more = json[..^1] + ""","tint":{"hue":[1,2]},"x":null}""";
        var read = BodyJson.Read(kind, 1, more);
        Assert.Equal(json, BodyJson.Write(read.Body!));
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_newer_version_is_left_alone(string kind)
        => Assert.True(BodyJson.Read(kind, 2, """{"everything":"different"}""").IsUnknown);

    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_body_that_lacks_what_it_needs_is_complained_of(string kind)
    {
        var read = BodyJson.Read(kind, 1, "{}");
        Assert.Null(read.Body);
        Assert.NotNull(read.Complaint);
    }

    [Theory]
    [InlineData("""{"sheet":"01JTAMR500000000000000000R","lightStops":1e999,"light":"sun"}""")]
    [InlineData("""{"sheet":"01JTAMR500000000000000000R","lightStops":21,"light":"sun"}""")]
    [InlineData("""{"sheet":"01JTAMR500000000000000000R","lightStops":"1","light":"sun"}""")]
    [InlineData("""{"sheet":"01JTAMR500000000000000000R","lightStops":1,"light":"moon"}""")]
    [InlineData("""{"sheet":"01JTAMR500000000000000000R","lightStops":1,"light":0}""")]
    [InlineData("""{"sheet":"not an id","lightStops":1,"light":"sun"}""")]
    [InlineData("""{"sheet":"01JTAMR500000000000000000R","lightStops":1,"light":"\ud800"}""")]
    [InlineData("""{"sheet":"01JTAMR500000000000000000R","lightStops":1,"light":null}""")]
    [InlineData("""{"sheet":null,"lightStops":1,"light":"sun"}""")]
    public void Absurd_values_are_complained_of_in_one_sentence(string json)
    {
        var read = BodyJson.Read(EntryKind.LightChanged, 1, json);
        Assert.Null(read.Body);
        Assert.NotNull(read.Complaint);
        Assert.DoesNotContain('\n', read.Complaint);
    }

    [Theory]
    [InlineData("""{"sheet":"01JTAMR500000000000000000R","exposureSeconds":10,"tones":[null]}""", EntryKind.PlanMade)]
    [InlineData("""{"sheet":"01JTAMR500000000000000000R","keeper":true,"causes":[null]}""", EntryKind.PrintJudged)]
    [InlineData("""{"sheet":"01JTAMR500000000000000000R","contentHash":"AB","widthPixels":1,"heightPixels":1,"mediaType":"image/png"}""", EntryKind.ScanAdded)]
    [InlineData("""{"sheet":"01JTAMR500000000000000000R","contentHash":null,"widthPixels":1,"heightPixels":1,"mediaType":"image/png"}""", EntryKind.ScanAdded)]
    [InlineData("""{"sheet":"01JTAMR500000000000000000R","tone":"01JTAMR500000000000000000R","name":"\udc00","luminanceCdM2":1,"rendering":"mid"}""", EntryKind.ToneRead)]
    [InlineData("""{"entry":"01JTAMR500000000000000000R","body":3}""", EntryKind.EntryAmended)]
    [InlineData("""{"camera":"01JTAMR500000000000000000R","definition":null}""", EntryKind.CameraDefined)]
    [InlineData("""{"paper":"01JTAMR500000000000000000R","definition":{"name":"a","kind":"lithographic","speed":{}}}""", EntryKind.PaperDefined)]
    [InlineData("""{"paper":"01JTAMR500000000000000000R","definition":{"name":"a","kind":"negative","speed":{},"failure":{"law":"table","rows":[null]}}}""", EntryKind.PaperDefined)]
    public void Holes_in_lists_and_wrong_words_are_complained_of(string json, string kind)
    {
        var read = BodyJson.Read(kind, 1, json);
        Assert.Null(read.Body);
        Assert.NotNull(read.Complaint);
    }

    [Fact]
    public void A_body_of_nothing_is_complained_of_by_its_kind()
        => Assert.Equal("The body of this hole.closed is empty.", BodyJson.Read(EntryKind.HoleClosed, 1, "null").Complaint);

    [Fact]
    public void A_body_that_does_not_fit_is_complained_of_by_its_kind_and_with_where_it_does_not()
    {
        var complaint = BodyJson.Read(EntryKind.HoleClosed, 1, """{"sheet":"01JTAMR500000000000000000R","secondsAgo":"long"}""").Complaint!;
        Assert.StartsWith("The body of this hole.closed does not fit its schema: ", complaint, StringComparison.Ordinal);
        Assert.Contains("$.secondsAgo", complaint, StringComparison.Ordinal);
    }

    // Whether a newer version fits today's records or not: today's code does not judge it.
    [Theory]
    [InlineData("""{"sheet":"01JTAMR500000000000000000R"}""")]
    [InlineData("""{"sheet":7}""")]
    [InlineData("""{"sheet":"01JTAMR500000000000000000R","secondsAgo":-1}""")]
    public void A_newer_version_is_neither_read_nor_complained_of(string json)
    {
        Assert.True(BodyJson.Read(EntryKind.HoleClosed, 2, json).IsUnknown);
        Assert.False(BodyJson.Read(EntryKind.HoleClosed, 1, json).IsUnknown);
        Assert.True(BodyJson.Read("moon.watched", 1, json).IsUnknown);
    }

    // docs/journal-format.md: a line nests at most 64 levels, so a body 63.
    [Theory]
    [InlineData(62, true)]
    [InlineData(63, false)]
    public void A_body_nests_at_most_sixty_three_levels(int lists, bool good)
    {
        var json = """{"sheet":"01JTAMR500000000000000000R","more":""" + new string('[', lists) + new string(']', lists) + "}";
        Assert.Equal(good, BodyJson.Read(EntryKind.HoleClosed, 1, json).Complaint is null);
    }

    [Fact]
    public void Letters_of_any_script_stay_readable()
    {
        var json = BodyJson.Write(new OutingStarted { Outing = Id(1), Name = "Vierkant-straße, 運河 \u2028 <b>" });
        Assert.Contains("straße, 運河", json);
        Assert.DoesNotContain('\u2028', json);
        Assert.DoesNotContain('<', json);
    }

    [Fact]
    public void A_body_outside_its_range_is_refused_before_it_becomes_an_entry()
    {
        var body = new LightChanged { Sheet = Id(1), LightStops = double.NaN, Light = LightWord.Sun };
        Assert.Contains("stops", Assert.Throws<RefusalException>(() => By(Phone, 1, 0, body)).Message);
    }

    private static EntryBody Example(string kind) => OneOfEach.Bodies.Single(body => body.Kind == kind);

    private static void AssertAllMembersWritten(object body, JsonObject json)
    {
        var members = body.GetType().GetProperties().Where(property => property.Name is not ("Kind" or "SchemaVersion") && property.GetValue(body) is not null);
        Assert.Equal(members.Count(), json.Count);
    }
}
