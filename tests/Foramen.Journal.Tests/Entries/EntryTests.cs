using System.Security.Cryptography;
using System.Text;
using Foramen.Engine.Quantities;
using Foramen.Journal.Bodies;
using Foramen.Journal.Entries;
using static Foramen.Journal.Tests.TestKit.Make;

namespace Foramen.Journal.Tests.Entries;

public class EntryTests
{
    [Fact]
    public void The_hash_is_sha_256_over_the_documented_bytes()
    {
        const string Body = """{"sheet":"01JTAMR500000000000000000R","lightStops":-2,"light":"cloud"}""";
        var entry = Entry.CreateRaw(Ulid.Parse("01JTAMR500000000000000000R"), Phone, 7, Noon, "light.changed", 1, Body);
        // docs/journal-format.md, "The hash", written out by hand. Noon of 3 May 2026 at +02:00 is 1777802400 s after 1970 (date -d).
        var bytes = Encoding.UTF8.GetBytes(
            "foramen-entry-1\n01JTAMR500000000000000000R\nphone\n7\n1777802400000\n120\nlight.changed\n1\n\n" + Body);
        Assert.Equal(Convert.ToHexStringLower(SHA256.HashData(bytes)), entry.Hash);
    }

    [Fact]
    public void Instants_are_cut_to_milliseconds_and_keep_their_offset()
    {
        var entry = Entry.CreateRaw(Id(1), Phone, 1, Noon.AddTicks(12_345_678), "a.b", 1, "{}");
        Assert.Equal(Noon.AddMilliseconds(1234), entry.At);
        Assert.Equal(TimeSpan.FromHours(2), entry.At.Offset);
    }

    [Theory]
    [InlineData("")]
    [InlineData("[]")]
    [InlineData("{")]
    [InlineData("{} ")]
    [InlineData("{}{}")]
    [InlineData("{\"a\":\n1}")]
    [InlineData("{\"a\":NaN}")]
    public void A_body_is_one_json_object_on_one_line(string body)
        => Assert.Throws<RefusalException>(() => Entry.CreateRaw(Id(1), Phone, 1, Noon, "a.b", 1, body));

    [Fact]
    public void Half_a_character_pair_is_no_text()
        => Assert.Contains("half of a character pair", Assert.Throws<RefusalException>(() => Raw("{\"a\":\"\ud800\"}")).Message);

    [Fact]
    public void A_body_has_bounds()
    {
        Assert.Throws<RefusalException>(() => Raw("{\"a\":\"" + new string('x', Entry.MaxBodyBytes) + "\"}"));
        Assert.Throws<RefusalException>(() => Raw(Nested(Entry.MaxDepth)));
        Assert.Equal(Nested(Entry.MaxDepth - 1), Raw(Nested(Entry.MaxDepth - 1)).Body);

        static string Nested(int levels) => string.Concat(Enumerable.Repeat("{\"a\":", levels - 1)) + "{}" + new string('}', levels - 1);
    }

    [Fact]
    public void The_envelope_has_bounds()
    {
        Assert.Throws<RefusalException>(() => Entry.CreateRaw(Id(1), Phone, 0, Noon, "a.b", 1, "{}"));
        Assert.Throws<RefusalException>(() => Entry.CreateRaw(Id(1), Phone, 1, Noon, "a b", 1, "{}"));
        Assert.Throws<RefusalException>(() => Entry.CreateRaw(Id(1), Phone, 1, Noon, "", 1, "{}"));
        Assert.Throws<RefusalException>(() => Entry.CreateRaw(Id(1), Phone, 1, Noon, "a.b", 0, "{}"));
        Assert.Throws<RefusalException>(() => Entry.CreateRaw(Id(1), Phone, 1, DateTimeOffset.MinValue, "a.b", 1, "{}"));
        Assert.Throws<RefusalException>(() => Entry.CreateRaw(Id(1), Phone, 1, Noon.AddYears(500), "a.b", 1, "{}"));
        Assert.Throws<RefusalException>(() => Entry.CreateRaw(Id(1), Phone, 1, Noon, "a.b", 1, "{}", "abc"));
        Assert.Throws<RefusalException>(() => DeviceId.Parse("my phone"));
    }

    // The ends that docs/journal-format.md allows, and the sentences beyond them.
    [Fact]
    public void The_ends_of_the_bounds_are_within_them()
    {
        var kind = new string('k', 64);
        Assert.Equal(kind, Entry.CreateRaw(Id(1), Phone, 1, Noon, kind, 1, "{}").Kind);
        Assert.False(Entry.IsKind(kind + "k"));
        Assert.All(["a", "A.b-9", "hole.opened"], text => Assert.True(Entry.IsKind(text)));
        Assert.All(["", "a_b", "a/b", "ä"], text => Assert.False(Entry.IsKind(text)));
        Assert.Equal(9_007_199_254_740_991, Entry.CreateRaw(Id(1), Phone, 9_007_199_254_740_991, Noon, "a.b", 1, "{}").Sequence);
        Assert.Throws<RefusalException>(() => Entry.CreateRaw(Id(1), Phone, 9_007_199_254_740_992, Noon, "a.b", 1, "{}"));
        var body = "{\"a\":\"" + new string('x', Entry.MaxBodyBytes - 8) + "\"}";
        Assert.Equal(body, Raw(body).Body);
        Assert.Throws<RefusalException>(() => Raw(body.Replace(":", ": ", StringComparison.Ordinal)));
        Assert.Throws<RefusalException>(() => Raw("{\"a\":\r1}"));
    }

    [Fact]
    public void Instants_are_those_of_1970_to_2199()
    {
        DateTimeOffset first = new(1970, 1, 1, 0, 0, 0, TimeSpan.Zero), last = new(2199, 12, 31, 23, 59, 59, TimeSpan.Zero);
        Assert.Equal(first, At(first).At);
        Assert.Equal(last, At(last).At);
        Assert.Throws<RefusalException>(() => At(first.AddMilliseconds(-1)));
        Assert.Throws<RefusalException>(() => At(last.AddSeconds(1)));

        static Entry At(DateTimeOffset at) => Entry.CreateRaw(Id(1), Phone, 1, at, "a.b", 1, "{}");
    }

    [Fact]
    public void A_typed_body_out_of_its_range_makes_no_entry()
        => Assert.Throws<RefusalException>(() => By(Phone, 1, 0, new HoleOpened { Sheet = Id(9), SecondsAgo = -1 }));

    [Fact]
    public void An_entry_is_itself_by_its_hash()
    {
        var entry = Raw("{}");
        Assert.True(entry.IsIntact());
        Assert.True(entry.Equals((object)Raw("{}")));
        Assert.False(entry.Equals((object?)null));
        Assert.False(entry.Equals(null));
        Assert.False(entry.Equals((object)"{}"));
        Assert.Equal(entry.GetHashCode(), Raw("{}").GetHashCode());
        Assert.Equal($"a.b phone#1 {Id(1)}", entry.ToString());
    }

    [Fact]
    public void Anything_that_differs_changes_the_hash()
    {
        var entry = Raw("{}");
        Entry[] others =
        [
            Raw("{ }"),
            Entry.CreateRaw(Id(2), Phone, 1, Noon, "a.b", 1, "{}"),
            Entry.CreateRaw(Id(1), Desk, 1, Noon, "a.b", 1, "{}"),
            Entry.CreateRaw(Id(1), Phone, 2, Noon, "a.b", 1, "{}"),
            Entry.CreateRaw(Id(1), Phone, 1, Noon.AddMilliseconds(1), "a.b", 1, "{}"),
            Entry.CreateRaw(Id(1), Phone, 1, Noon.ToOffset(TimeSpan.Zero), "a.b", 1, "{}"),
            Entry.CreateRaw(Id(1), Phone, 1, Noon, "a.c", 1, "{}"),
            Entry.CreateRaw(Id(1), Phone, 1, Noon, "a.b", 2, "{}"),
            Entry.CreateRaw(Id(1), Phone, 1, Noon, "a.b", 1, "{}", entry.Hash),
        ];
        Assert.Equal(others.Length + 1, others.Append(entry).Select(one => one.Hash).Distinct().Count());
        Assert.All(others, other => Assert.NotEqual(entry, other));
        Assert.Equal(entry, Raw("{}"));
    }

    [Fact]
    public void A_body_of_its_kind_is_read_once()
    {
        var entry = By(Phone, 1, 0, new HoleOpened { Sheet = Id(9) });
        Assert.Same(entry.ReadBody(), entry.ReadBody());
        Assert.Equal(Id(9), Assert.IsType<HoleOpened>(entry.ReadBody().Body).Sheet);
    }

    private static Entry Raw(string body) => Entry.CreateRaw(Id(1), Phone, 1, Noon, "a.b", 1, body);
}
